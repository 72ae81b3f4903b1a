package fusetale.aftermath;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fusetale.bench.Arrangement;
import fusetale.bench.Bench;
import fusetale.bench.Meter;
import fusetale.bench.Seen;
import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitReader;
import fusetale.fault.Catalogue;
import fusetale.fault.FailureMode;
import fusetale.fault.Fault;
import fusetale.fault.Supposition;
import fusetale.mna.Solved;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** Where the heat of a transformer goes: energy is counted once. */
class LossesTest {
    private static final Circuit BOARD = Objects.requireNonNull(CircuitReader.withShippedParts()
            .read(Path.of("circuits/first-light.yaml"))
            .circuit());

    /** Turns that were shorted from the start are a body of their own; those that shorted since belong to the core, with its 2 W of iron. */
    @Test
    void shortedTurnsHeatTheCoreOnce() throws Exception {
        Circuit supposed = Catalogue.apply(
                BOARD, new Supposition(List.of(new Fault("T1", "sec", FailureMode.SHORTED_TURNS, null))));
        Seen seen = ((Solved.Found<Seen>) Bench.of(supposed, Arrangement.powered(BOARD), Meter.trueRms4000())
                        .look(List.of(), null, () -> false))
                .value();

        Heat fromTheStart = Losses.of(seen, BOARD, seen.circuit());
        Heat since = Losses.of(seen, BOARD, BOARD);
        double dead = since.watts().getOrDefault("T1.sec~shorted", 0.0);

        assertThat(dead).isGreaterThan(1);
        assertThat(fromTheStart.outerWatts().getOrDefault("T1", 0.0)).isCloseTo(2, within(1e-9));
        assertThat(since.outerWatts().getOrDefault("T1", 0.0)).isCloseTo(2 + dead, within(1e-9));
        assertThat(Bodies.of(seen.circuit())).extracting(Body::name).contains("T1.sec~shorted");
    }

    private static Seen look(Fault... faults) throws Exception {
        Circuit supposed = Catalogue.apply(BOARD, new Supposition(List.of(faults)));
        return ((Solved.Found<Seen>) Bench.of(supposed, Arrangement.powered(BOARD), Meter.trueRms4000())
                        .look(List.of(), null, () -> false))
                .value();
    }

    /** Ohm's law: what a leak of 100 Ω across a leg of the bridge turns to heat, it turns to heat in that leg. */
    @Test
    void aLeakWarmsTheJunctionItLeadsThrough() throws Exception {
        Quantity ohms = new Quantity(100, Unit.OHM);
        Seen leaky = look(new Fault("BR1", "leg1", FailureMode.LEAKY, ohms));
        double rms = leaky.amps("BR1.leg1~leaky").rms();

        double watts = Losses.of(leaky, BOARD, leaky.circuit()).watts().getOrDefault("BR1.leg1", 0.0);

        assertThat(rms * rms * 100).isGreaterThan(0.5);
        assertThat(watts).isBetween(rms * rms * 100, rms * rms * 100 + 2);
    }

    /** A scrap of foil between the clips is no part of the fuse: its heat is not theirs. */
    @Test
    void aBridgeOverAFuseWarmsNoClips() throws Exception {
        Seen bridged = look(new Fault("F1", "", FailureMode.SHORT, null));

        double clips = Losses.of(bridged, BOARD, bridged.circuit()).watts().getOrDefault("F1", 0.0);

        assertThat(clips).isLessThan(0.1);
    }
}
