package fusetale.mna;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The periodic state is one: it repeats, it agrees with finer steps, and no winding carries d.c. */
class PeriodicityTest {
    @Test
    void endsAsItBeganToAMillionthOfFullScale() {
        PeriodicState p = Solve.periodic(Supplies.transformer(120, 20));
        assertThat(p.work().method()).isEqualTo("shooting");
        assertThat(p.work().residual()).isLessThan(1e-6);
    }

    // Independent of the shooting: from its answer, plain stepping for another cycle stays where it is, and the reading
    // agrees with a run of ten times as many steps (error of order 2: accuracy 1000 times finer).
    @Test
    void meansAgreeWithTenTimesTheSteps() {
        Network n = Supplies.transformer(120, 20);
        PeriodicState p = Solve.periodic(n);
        PeriodicState finer = Solve.periodic(n, PeriodicSettings.mains(60).withAccuracy(1e-8));
        int plus = n.node("plus");
        assertThat(finer.volts(plus, 0).size())
                .isGreaterThan(8 * p.volts(plus, 0).size());
        double mean = finer.volts(plus, 0).mean();
        assertThat(p.volts(plus, 0).mean()).isCloseTo(mean, within(1e-3 * mean));
    }

    // A healthy full-wave rectifier takes no d.c. from its winding: symmetry. Sixty cycles of plain stepping would not
    // show it: the magnetising offset of this core dies out with L/R = 3 s.
    @Test
    void windingThatFeedsNoDirectCurrentCarriesNone() {
        PeriodicState p = Solve.periodic(Supplies.transformer(120, 20));
        assertThat(Math.abs(p.amps("T.0").mean()))
                .isLessThan(1e-4 * p.amps("T.0").rms());
        assertThat(Math.abs(p.amps("T.1").mean()))
                .isLessThan(1e-4 * p.amps("T.1").rms());
    }

    @Test
    void neighbourTakesFewPasses() {
        PeriodicState p = Solve.periodic(Supplies.transformer(120, 20));
        PeriodicState q = Solve.found(
                new Solver(Supplies.transformer(121, 20)).periodicState(PeriodicSettings.mains(60), p, () -> false));
        // counted passes plus one, so that slower convergence fails a test
        assertThat(q.work().passes()).isLessThanOrEqualTo(5);
    }

    @Test
    void neighbourGivesTheSameAnswerAsAColdStart() {
        Network n = Supplies.transformer(126, 20);
        PeriodicState near = Solve.periodic(Supplies.transformer(110, 20));
        PeriodicState warm = Solve.found(new Solver(n).periodicState(PeriodicSettings.mains(60), near, () -> false));
        PeriodicState cold = Solve.periodic(n);
        double mean = cold.volts(n.node("plus"), 0).mean();
        assertThat(warm.volts(n.node("plus"), 0).mean()).isCloseTo(mean, within(2e-4 * mean));
    }
}
