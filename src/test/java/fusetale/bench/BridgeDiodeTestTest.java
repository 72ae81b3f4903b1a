package fusetale.bench;

import static fusetale.model.PartsBox.VT;
import static fusetale.model.PartsBox.bridge;
import static fusetale.model.PartsBox.circuit;
import static fusetale.model.PartsBox.diode;
import static fusetale.model.PartsBox.electrolytic;
import static fusetale.model.PartsBox.leg35;
import static fusetale.model.PartsBox.resistor;
import static fusetale.model.PartsBox.wire;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fusetale.circuit.Circuit;
import fusetale.circuit.MeterFunction;
import fusetale.circuit.Part;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Diode test over a bridge of 35 A (0.480 V a leg at 1 mA), in circuit and out of it. The voltages follow from the leg's
 * equation; two strings in parallel read N·VT·ln 2 = 36 mV less. A real meter's current falls to 0.84 mA at 0.9 V, which
 * costs up to 17 mV against a table for 1 mA.
 */
class BridgeDiodeTestTest {
    private static final double TABLE = 0.02;

    private static double diodeTest(Circuit circuit, String red, String black) {
        Check check = new Check(red, black, MeterFunction.DIODE_TEST);
        Reading reading = BridgeSupplyTest.look(circuit, Arrangement.unpowered(), Meter.trueRms4000(), List.of(check))
                .readings()
                .get(0);
        return reading.overRange() ? Double.POSITIVE_INFINITY : reading.value();
    }

    private static void assertShows(Circuit circuit, String red, String black, String expected) {
        double volts = diodeTest(circuit, red, black);
        if (expected.equals("OL")) {
            assertThat(volts).isInfinite();
        } else {
            assertThat(volts).isCloseTo(Double.parseDouble(expected), within(TABLE));
        }
    }

    private static Circuit isolated() {
        return circuit(120, 1, bridge("BR1", "ac1", "ac2", "plus", "gnd"));
    }

    /** A winding of some tenths of an ohm between the a.c. pins. */
    private static Circuit withWinding(Part... more) {
        Circuit circuit = isolated().plus(wire("W1", "ac1", "ac2", 0.3));
        for (Part part : more) {
            circuit = circuit.plus(part);
        }
        return circuit;
    }

    /** Where the lead is on, the pin is {@code ac1}. */
    private static Circuit withLeg1Open(String pin) {
        return circuit(
                120,
                1,
                diode("D2", "ac2", "plus", leg35()),
                diode("D3", "gnd", pin, leg35()),
                diode("D4", "gnd", "ac2", leg35()),
                wire("W1", "ac1", "ac2", 0.3));
    }

    @ParameterizedTest
    @CsvSource({
        "ac1, plus, 0.480",
        "ac2, plus, 0.480",
        "plus, ac1, OL",
        "plus, ac2, OL",
        "gnd, ac1, 0.480",
        "gnd, ac2, 0.480",
        "gnd, plus, 0.889",
        "plus, gnd, OL",
        "ac1, gnd, OL",
        "ac1, ac2, OL",
        "ac2, ac1, OL"
    })
    void goodBridgeOutOfCircuit(String red, String black, String shows) {
        assertShows(isolated(), red, black, shows);
    }

    @ParameterizedTest
    @CsvSource({
        "ac1, plus, 0.444",
        "ac2, plus, 0.444",
        "plus, ac1, OL",
        "plus, ac2, OL",
        "gnd, ac1, 0.444",
        "gnd, ac2, 0.444",
        "gnd, plus, 0.889",
        "plus, gnd, OL",
        "ac1, ac2, 0.000",
        "ac2, ac1, 0.000"
    })
    void goodBridgeWithTheWindingConnected(String red, String black, String shows) {
        assertShows(withWinding(), red, black, shows);
    }

    @ParameterizedTest
    @CsvSource({
        "ac1, plus, 0.000",
        "ac2, plus, 0.000",
        "plus, ac1, 0.000",
        "plus, ac2, 0.000",
        "gnd, ac1, 0.444",
        "gnd, ac2, 0.444",
        "gnd, plus, 0.444",
        "plus, gnd, OL",
        "ac1, ac2, 0.000"
    })
    void shortedLegWithTheWindingConnected(String red, String black, String shows) {
        assertShows(withWinding(wire("W2", "ac1", "plus", 0.02)), red, black, shows);
    }

    @ParameterizedTest
    @CsvSource({
        "ac1, plus, 0.480",
        "ac2, plus, 0.480",
        "plus, ac1, OL",
        "gnd, ac1, 0.444",
        "gnd, plus, 0.924",
        "plus, gnd, OL"
    })
    void openLegHidesWhileTheWindingIsConnected(String red, String black, String shows) {
        assertShows(withLeg1Open("ac1"), red, black, shows);
    }

    /** The leg's equation at the meter's own current: 3 V behind 2500 ohm and the leads. */
    @Test
    void singleLegFollowsItsEquation() {
        double volts = diodeTest(isolated(), "ac1", "plus");

        double amps = (3 - volts) / 2500;
        double leg = 2 * VT * Math.log1p(amps / 8.774e-8) + amps * (6.74e-3 + 0.2);
        assertThat(volts).isCloseTo(leg, within(1e-5));
    }

    /** A load of 20 ohm across the rail reads 1 mA × R: looks like a short, is none. */
    @Test
    void loadAcrossTheRailReadsLikeAShort() {
        Circuit circuit = withWinding(resistor("R1", "plus", "gnd", 20));

        assertShows(circuit, "gnd", "plus", "0.020");
    }

    @Test
    void liftedLeadPartsAGoodLegFromAnOpenOne() throws UnfitArrangement {
        Arrangement lifted = Arrangement.unpowered().withLiftedPin("BR1.ac1");
        Check check = new Check("BR1.ac1", "plus", MeterFunction.DIODE_TEST);

        Seen seen = BridgeSupplyTest.look(withWinding(), lifted, Meter.trueRms4000(), List.of(check));

        assertThat(seen.readings().get(0).value()).isCloseTo(0.480, within(0.002));
        // with the winding off the pin, no other leg leads from there to plus
        assertShows(withLeg1Open("pin"), "pin", "plus", "OL");
    }

    /**
     * 3 V behind 2500 ohm and 0.2 ohm of leads into 10 mF: v = 3 V·(1 − e^(−t/RC)), RC = 25.0 s, so 0.339 V after 3 s, a
     * tenth of a volt a second (1 mA into 10 mF), and OL, above 2 V, in the end.
     */
    @Test
    void reservoirCapacitorIsSaidToBeStillCharging() {
        Circuit circuit = withWinding(electrolytic("C1", "plus", "gnd", 0.01, 0.03));
        Check check = new Check("plus", "gnd", MeterFunction.DIODE_TEST);

        Seen seen = BridgeSupplyTest.look(circuit, Arrangement.unpowered(), Meter.trueRms4000(), List.of(check));

        Climbing climbing = Objects.requireNonNull(seen.readings().get(0).climbing());
        assertThat(seen.readings().get(0).shows()).isEqualTo("OL");
        assertThat(climbing.settled().overRange()).isTrue();
        assertThat(climbing.falling()).isFalse();
        assertThat(climbing.after().value()).isCloseTo(3 * (1 - Math.exp(-3 / 25.002)), within(0.001));
    }
}
