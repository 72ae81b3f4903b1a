package fusetale.bench;

import static fusetale.model.PartsBox.circuit;
import static fusetale.model.PartsBox.net;
import static fusetale.model.PartsBox.quantity;
import static fusetale.model.PartsBox.resistor;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fusetale.circuit.About;
import fusetale.circuit.Battery;
import fusetale.circuit.Circuit;
import fusetale.circuit.MeterFunction;
import fusetale.mna.NotSolved;
import fusetale.mna.Solved;
import fusetale.quantity.Unit;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BenchTest {
    private static final Meter METER = Meter.trueRms4000();

    private static Reading off(Circuit circuit, String from, String to, MeterFunction function) {
        return BridgeSupplyTest.look(circuit, Arrangement.unpowered(), METER, List.of(new Check(from, to, function)))
                .readings()
                .get(0);
    }

    private static Reading on(Circuit circuit, String from, String to, MeterFunction function) {
        return BridgeSupplyTest.look(
                        circuit, Arrangement.powered(circuit), METER, List.of(new Check(from, to, function)))
                .readings()
                .get(0);
    }

    /** Ohm's law and 0.2 ohm of leads. */
    @ParameterizedTest
    @CsvSource({
        "0.1, 0.3 Ω",
        "4.7, 4.9 Ω",
        "470, 0.470 kΩ",
        "4700, 4.70 kΩ",
        "47000, 47.0 kΩ",
        "2.2e6, 2.200 MΩ",
        "22e6, 22.00 MΩ",
        "1e8, OL"
    })
    void resistorReadsItsValue(double ohms, String shows) {
        assertThat(off(circuit(120, 1, resistor("R1", "a", "gnd", ohms)), "a", "gnd", MeterFunction.OHMS)
                        .shows())
                .isEqualTo(shows);
    }

    /** 1 kohm beside 1 kohm in series with 1 kohm: 666.7 ohm. */
    @Test
    void resistorInCircuitReadsWithWhatLiesBesideIt() {
        Circuit circuit = circuit(
                120,
                1,
                resistor("R1", "a", "gnd", 1000),
                resistor("R2", "a", "b", 1000),
                resistor("R3", "b", "gnd", 1000));

        assertThat(off(circuit, "a", "gnd", MeterFunction.OHMS).value()).isCloseTo(666.87, within(0.01));
    }

    @Test
    void leadsTogetherReadTheirOwnResistance() {
        assertThat(off(circuit(120, 1, resistor("R1", "a", "gnd", 5)), "a", "a", MeterFunction.OHMS)
                        .shows())
                .isEqualTo("0.2 Ω");
    }

    /** 10 Mohm behind 1 Mohm: 9.09 % of the voltage is lost (divider). */
    @Test
    void meterLoadsASourceOfHighResistance() {
        Circuit circuit = circuit(100, 1, resistor("R1", "line", "a", 1e6), resistor("R2", "a", "gnd", 1e12));

        assertThat(on(circuit, "a", "gnd", MeterFunction.AC_VOLTS).value()).isCloseTo(100 / 1.1, within(0.01));
    }

    @Test
    void meterDoesNotLoadTheMains() {
        Circuit circuit = circuit(100, 1, resistor("R1", "line", "neutral", 100));

        assertThat(on(circuit, "line", "neutral", MeterFunction.AC_VOLTS).value())
                .isCloseTo(100 * 100 / 101.0, within(1e-3));
    }

    @Test
    void ohmsWithThePowerOnAreRefusedWithTheReason() throws UnfitArrangement {
        Circuit circuit = circuit(100, 1, resistor("R1", "line", "neutral", 100));
        Bench bench = Bench.of(circuit, Arrangement.powered(circuit), METER);
        Check check = new Check("line", "neutral", MeterFunction.OHMS);

        assertThat(bench.refusal(check)).hasValueSatisfying(r -> assertThat(r).contains("not with the power on"));
        assertThatThrownBy(() -> bench.look(List.of(check), null, () -> false)).hasMessageContaining("pull the plug");
    }

    @Test
    void unknownPointIsRefusedWithTheNearest() throws UnfitArrangement {
        Circuit circuit = circuit(100, 1, resistor("R1", "line", "neutral", 100));
        Bench bench = Bench.of(circuit, Arrangement.powered(circuit), METER);

        assertThat(bench.refusal(new Check("lien", "neutral", MeterFunction.AC_VOLTS)))
                .hasValueSatisfying(r -> assertThat(r).contains("no point lien").contains("line"));
    }

    @Test
    void floatingPointsAreRemarkedUpon() {
        Circuit circuit = circuit(100, 1, resistor("R1", "line", "neutral", 100), resistor("R2", "a", "b", 100));

        Seen seen = BridgeSupplyTest.look(
                circuit, Arrangement.powered(circuit), METER, List.of(new Check("a", "gnd", MeterFunction.DC_VOLTS)));

        assertThat(seen.remarks()).singleElement().asString().contains("nothing but insulation");
    }

    @Test
    void batteryIsReadWithThePlugOut() {
        Battery battery = new Battery(
                "BT1", net("a"), net("gnd"), quantity(4.5, Unit.VOLT), quantity(1, Unit.OHM), About.NOTHING);

        assertThat(off(circuit(100, 1, battery), "a", "gnd", MeterFunction.DC_VOLTS)
                        .shows())
                .isEqualTo("4.50 V");
    }

    @Test
    void ohmsAcrossABatteryMisleadAndAreSaidTo() {
        Battery battery = new Battery(
                "BT1", net("a"), net("gnd"), quantity(4.5, Unit.VOLT), quantity(1, Unit.OHM), About.NOTHING);
        Seen seen = BridgeSupplyTest.look(
                circuit(100, 1, battery),
                Arrangement.unpowered(),
                METER,
                List.of(new Check("a", "gnd", MeterFunction.OHMS)));

        assertThat(seen.readings().get(0).overRange()).isTrue();
        assertThat(seen.remarks()).singleElement().asString().contains("4.50 V");
    }

    @Test
    void stoppedLookSaysSo() throws UnfitArrangement {
        Circuit circuit = circuit(100, 1, resistor("R1", "line", "neutral", 100));
        Bench bench = Bench.of(circuit, Arrangement.powered(circuit), METER);

        NotSolved.Kind kind = bench.look(List.of(), null, () -> true) instanceof Solved.Failed<Seen> failed
                ? failed.reason().kind()
                : NotSolved.Kind.SINGULAR;

        assertThat(kind).isEqualTo(NotSolved.Kind.STOPPED);
    }

    @Test
    void unknownCurrentIsRefused() {
        Circuit circuit = circuit(100, 1, resistor("R1", "line", "neutral", 100));
        Seen seen = BridgeSupplyTest.look(circuit, Arrangement.powered(circuit), METER, List.of());

        assertThatThrownBy(() -> seen.amps("R2")).hasMessageContaining("no current called R2");
    }
}
