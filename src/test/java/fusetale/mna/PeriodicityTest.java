package fusetale.mna;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
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

    // A state known with its derivative by the mains puts a neighbour so near that one step of Newton's is enough: the
    // start is off by the square of a hundredth, and so is the step.
    @Test
    void neighbourOfAnotherMainsTakesTwoCycles() {
        PeriodicState p = Solve.periodic(Supplies.bridge(28, 20, 0));
        PeriodicState q = Solve.found(
                new Solver(Supplies.bridge(28.2, 20, 0)).periodicState(PeriodicSettings.mains(60), p, () -> false));
        assertThat(q.work().passes()).isEqualTo(2);
    }

    // Definition of a derivative, central difference of two states that are each found from rest. Their steps differ,
    // which
    // moves the states by some 1e-5.
    @Test
    void derivativeByTheMainsIsTheDifferenceOfTwoStates() {
        double part = 0.02;
        SampledRun.Restart here = restart(120);
        SampledRun.Restart above = restart(120 * (1 + part));
        SampledRun.Restart below = restart(120 * (1 - part));
        int capacitor = here.layout.stateNamed("C");
        int carried = 0;
        while (here.carriedStates[carried] != capacitor) {
            carried++;
        }
        double expected = (above.x[capacitor] - below.x[capacitor]) / (2 * part);
        assertThat(here.bySources[carried]).isCloseTo(expected, within(2e-3 * expected));
    }

    private static SampledRun.Restart restart(double rmsVolts) {
        return Objects.requireNonNull(((SampledRun) Solve.periodic(Supplies.transformer(rmsVolts, 20))).restart);
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
