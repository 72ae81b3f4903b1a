package fusetale.mna;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fusetale.signal.Waveform;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A run that begins at a state at rest, or with a charge given, beside the closed forms of RC and RL circuits. */
class RunFromRestTest {
    private static final PeriodicSettings GRID = PeriodicSettings.mains(60).withAccuracy(1e-6);

    private static Network.Builder rc() {
        return Network.builder("0").resistor("R", "a", "0", 1000).capacitor("C", "a", "0", 1e-3);
    }

    private static OperatingPoint rest(Solver solver) {
        return solver.operatingPoint(null).orElse(reason -> {
            throw new AssertionError(reason);
        });
    }

    private static double end(Solved<Run> run, int one, int two) {
        Waveform volts = run.orElse(reason -> {
                    throw new AssertionError(reason);
                })
                .volts(one, two);
        return volts.value(volts.size() - 1);
    }

    /** v = V0·e^(−t/RC), RC = 1 s. */
    @Test
    void chargedCapacitorDischarges() {
        Network network = rc().build();

        assertThat(end(new Solver(network).run(GRID, 2, null, Map.of("C", 10.0)), 1, 0))
                .isCloseTo(10 * Math.exp(-2), within(2e-4));
    }

    /** Nothing has changed since it came to rest: it stays. */
    @Test
    void stateAtRestStays() {
        Network network = rc().voltage("V", "b", "0", new SourceShape.Constant(6))
                .resistor("S", "b", "a", 500)
                .inductor("L", "b", "c", 0.1)
                .resistor("T", "c", "0", 30)
                .build();
        Solver solver = new Solver(network);
        OperatingPoint rest = rest(solver);

        Solved<Run> run = solver.run(GRID, 0.5, rest, Map.of());

        assertThat(end(run, network.node("a"), 0)).isCloseTo(4, within(1e-6));
        assertThat(end(run, network.node("c"), 0)).isCloseTo(6, within(1e-6));
    }

    /** Sixty cycles of a sine with nothing behind it that stores anything: r.m.s. peak/√2, half-wave mean peak/π·1/R. */
    @Test
    void nothingSlowDoesNotHideASine() {
        Network network = Network.builder("0")
                .voltage("V", "a", "0", new SourceShape.Sine(0, 1000, 60, 0))
                .resistor("R", "a", "b", 10)
                .port("D", "b", "0", JunctionLaw.of(1e-9, 1))
                .build();

        Run run = new Solver(network).run(PeriodicSettings.mains(60), 1).orElse(reason -> {
            throw new AssertionError(reason);
        });

        assertThat(run.volts(network.node("a"), 0).rms()).isCloseTo(1000 / Math.sqrt(2), within(1.0));
        assertThat(run.amps("R").mean()).isCloseTo(1000 / Math.PI / 10, within(0.2));
    }

    /** A meter's source laid across a machine at rest: from 0 V towards 3 V·1000/4000 with τ = 750 ohm·1 mF. */
    @Test
    void sourceLaidOnARestingNetworkCharges() {
        Network network = rc().build();
        Solver solver = new Solver(network);
        OperatingPoint rest = rest(solver);

        Solved<Run> run = solver.with(new Norton(1, 0, 1 / 3000.0, 1e-3)).run(GRID, 0.6, rest, Map.of());

        assertThat(end(run, 1, 0)).isCloseTo(0.75 * (1 - Math.exp(-0.6 / 0.75)), within(1e-4));
    }

    @Test
    void onlyCapacitorsTakeACharge() {
        Network network = rc().build();

        assertThatThrownBy(() -> new Solver(network).run(GRID, 1, null, Map.of("R", 1.0)))
                .hasMessageContaining("no capacitor R");
    }
}
