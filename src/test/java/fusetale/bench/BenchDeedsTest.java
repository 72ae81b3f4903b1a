package fusetale.bench;

import static fusetale.model.PartsBox.circuit;
import static fusetale.model.PartsBox.exactly;
import static fusetale.model.PartsBox.net;
import static fusetale.model.PartsBox.quantity;
import static fusetale.model.PartsBox.resistor;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fusetale.circuit.About;
import fusetale.circuit.Battery;
import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitReader;
import fusetale.circuit.Connector;
import fusetale.circuit.LogicOutput;
import fusetale.circuit.Part;
import fusetale.circuit.Switch;
import fusetale.mna.Solved;
import fusetale.quantity.Unit;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** Deeds of the bench against Ohm's law, and on the shipped table game. */
class BenchDeedsTest {
    private static final double VOLTS = 12;

    private static Battery battery() {
        return new Battery(
                "B1", net("plus"), net("gnd"), quantity(VOLTS, Unit.VOLT), quantity(0.1, Unit.OHM), About.NOTHING);
    }

    private static Seen look(Circuit circuit, Arrangement arrangement) throws UnfitArrangement {
        Solved<Seen> seen = Bench.of(circuit, arrangement, Meter.trueRms4000()).look(List.of(), null, () -> false);
        return ((Solved.Found<Seen>) seen).value();
    }

    private static Circuit withPinsInParallel() {
        Connector two = new Connector(
                "J1",
                List.of(
                        new Connector.Contact("1", net("plus"), net("load"), exactly(0.02, Unit.OHM)),
                        new Connector.Contact("2", net("plus"), net("load"), exactly(0.02, Unit.OHM))),
                null);
        return circuit(120, 0.1, battery(), resistor("R1", "load", "gnd", 10)).withConnectors(List.of(two));
    }

    /** Two contacts of 20 mΩ side by side are 10 mΩ: 12 V · 10/(10 + 0.1 + 0.01), half of the current through each. */
    @Test
    void pinsInParallelShareTheCurrent() throws UnfitArrangement {
        Seen seen = look(withPinsInParallel(), Arrangement.unpowered());

        assertThat(seen.volts("load", "gnd").mean()).isCloseTo(VOLTS * 10 / 10.11, within(1e-6));
        assertThat(seen.amps("J1.1").mean()).isCloseTo(VOLTS / 10.11 / 2, within(1e-6));
        assertThat(seen.amps("J1.2").mean()).isCloseTo(VOLTS / 10.11 / 2, within(1e-6));
    }

    @Test
    void oneLiftedPinOfTwoLeavesTheOther() throws UnfitArrangement {
        Seen seen = look(withPinsInParallel(), Arrangement.unpowered().withLiftedPin("J1.1"));

        assertThat(seen.volts("load", "gnd").mean()).isCloseTo(VOLTS * 10 / 10.12, within(1e-6));
        assertThat(seen.amps("J1.1").mean()).isCloseTo(0, within(1e-9));
    }

    @Test
    void unpluggedEveryPinIsApart() throws UnfitArrangement {
        Seen seen = look(withPinsInParallel(), Arrangement.unpowered().withUnplugged("J1"));

        assertThat(seen.volts("load", "gnd").mean()).isCloseTo(0, within(1e-6));
        assertThat(seen.volts("plus", "gnd").mean()).isCloseTo(VOLTS, within(1e-6));
    }

    /** A clip lead of 50 mΩ across 10 Ω in series with 2 Ω and 0.1 Ω: 12 V · r/(r + 2.1), r = 10 · 0.05/10.05. */
    @Test
    void clipLeadBridges() throws UnfitArrangement {
        Circuit divider =
                circuit(120, 0.1, battery(), resistor("R1", "plus", "mid", 2), resistor("R2", "mid", "gnd", 10));
        double bridged = 10 * 0.05 / 10.05;

        assertThat(look(divider, Arrangement.unpowered()).volts("mid", "gnd").mean())
                .isCloseTo(VOLTS * 10 / 12.1, within(1e-6));
        assertThat(look(divider, Arrangement.unpowered().withClip("mid", "gnd"))
                        .volts("mid", "gnd")
                        .mean())
                .isCloseTo(VOLTS * bridged / (bridged + 2.1), within(1e-6));
    }

    /** A switch of 50 mΩ before 10 Ω: 12 V · 10/10.15 closed, nothing open. */
    @Test
    void switchOpensAndCloses() throws UnfitArrangement {
        Switch open = new Switch("S1", net("plus"), net("load"), false, quantity(0.05, Unit.OHM), About.NOTHING);
        Circuit machine = circuit(120, 0.1, battery(), open, resistor("R1", "load", "gnd", 10));

        assertThat(look(machine, Arrangement.unpowered()).volts("load", "gnd").mean())
                .isCloseTo(0, within(1e-6));
        assertThat(look(machine, Arrangement.unpowered().withSwitch("S1", true))
                        .volts("load", "gnd")
                        .mean())
                .isCloseTo(VOLTS * 10 / 10.15, within(1e-6));
    }

    /** 470 Ω up, 50 Ω down, 1 kΩ to ground on 12 V: 12 V · 1000/1470.1 held on, nothing at rest. */
    @Test
    void heldOutputPullsUp() throws UnfitArrangement {
        Part output = new LogicOutput(
                "U1",
                net("out"),
                net("plus"),
                net("gnd"),
                quantity(470, Unit.OHM),
                quantity(50, Unit.OHM),
                LogicOutput.State.LOW,
                null,
                About.NOTHING);
        Circuit machine = circuit(120, 0.1, battery(), output, resistor("R1", "out", "gnd", 1000));

        assertThat(look(machine, Arrangement.unpowered()).volts("out", "gnd").mean())
                .isCloseTo(0, within(1e-5));
        // within what 100 MΩ of the side that is off and 0.1 Ω of the battery take
        assertThat(look(machine, Arrangement.unpowered().withHeldOn("U1"))
                        .volts("out", "gnd")
                        .mean())
                .isCloseTo(VOLTS * 1000 / 1470.1, within(1e-4));
    }

    private static Circuit ferry() {
        return Objects.requireNonNull(CircuitReader.withShippedParts()
                .read(Path.of("circuits/night-ferry.yaml"))
                .circuit());
    }

    /** With J2 off a coil under the table hangs on the rail and its driver on nothing; J3 takes 5 V and ground with it. */
    @Test
    void harnessSideIsIsolatedOnTheTableGame() throws UnfitArrangement {
        Circuit ferry = ferry();
        Arrangement on = Arrangement.powered(ferry);
        Seen coils = look(ferry, on.withUnplugged("J2"));

        double rail = coils.volts("sola", "gnd").mean();
        assertThat(rail).isGreaterThan(40);
        assertThat(coils.volts("coil1", "gnd").mean()).isCloseTo(rail, within(0.01));
        assertThat(coils.volts("coll1", "gnd").mean()).isLessThan(0.5 * rail);
        for (int pin = 1; pin <= 8; pin++) {
            assertThat(coils.amps("J2." + pin).highest()).isLessThan(1e-6);
        }

        Seen logic = look(ferry, on.withUnplugged("J3"));
        assertThat(logic.volts("v5", "gnd").mean()).isCloseTo(5, within(0.2));
        assertThat(logic.volts("v5c", "gndc").mean()).isLessThan(0.5);
        assertThat(logic.amps("J3.1").highest()).isLessThan(1e-6);
        assertThat(logic.amps("J3.2").highest()).isLessThan(1e-6);
    }

    @Test
    void whatCannotBePulsedIsToldAtOnce() {
        Circuit ferry = ferry();
        Arrangement off = Arrangement.unpowered().withPulse("L209", 0.04).withPulse("L201", 5);

        assertThatThrownBy(() -> off.appliedTo(ferry))
                .isInstanceOf(UnfitArrangement.class)
                .hasMessageContaining("nothing drives L209, so it cannot be pulsed")
                .hasMessageContaining("a pulse of 5 s for L201; it must be 100 μs to 1 s")
                .hasMessageContaining("with the power off");
    }

    @Test
    void aPulseOfTheFileFits() throws UnfitArrangement {
        Circuit ferry = ferry();
        Arrangement pulsed = Arrangement.of(
                ferry,
                ferry.settings().stream()
                        .filter(s -> s.name().equals("first coil pulsed"))
                        .findFirst()
                        .orElseThrow());

        assertThat(pulsed.pulsedSeconds()).containsEntry("L201", 0.04);
    }
}
