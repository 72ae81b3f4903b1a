package fusetale.mna;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fusetale.journeys.Balance;
import fusetale.signal.Waveform;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;

/** The periodic state is one: it repeats, it agrees with finer steps, and no winding carries d.c. */
class PeriodicityTest {
    // Balance of charge and of volt-seconds, any textbook: no capacitor is left charged by the cycle, and no winding
    // magnetised.
    @Test
    void endsAsItBeganToAMillionthOfFullScale() {
        Network n = Supplies.transformer(120, 20);
        PeriodicState p = Solve.periodic(n);
        assertThat(p.work().method()).isEqualTo("shooting");
        assertThat(Balance.of(n, p).drifting(1e-6)).isEmpty();
    }

    // A step errs by the third power of its length: at an accuracy 10,000 times finer there are up to 21 times as many.
    @Test
    void meansAgreeWithEightTimesTheSteps() {
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

    // A state known with its slope and bend by the mains puts a neighbour where it is: the start is off by the third
    // power of a
    // hundredth.
    @Test
    void neighbourOfAnotherMainsTakesOneCycle() {
        PeriodicState p = Solve.periodic(Supplies.bridge(28, 20, 0));
        PeriodicState q = Solve.found(
                new Solver(Supplies.bridge(28.2, 20, 0)).periodicState(PeriodicSettings.mains(60), p, () -> false));
        assertThat(q.work().passes()).isEqualTo(1);
        PeriodicState cold = Solve.periodic(Supplies.bridge(28.2, 20, 0));
        double mean = cold.volts(1, 0).mean();
        assertThat(q.volts(1, 0).mean()).isCloseTo(mean, within(1e-5 * Math.abs(mean)));
    }

    // Definition of a derivative, central differences of three states that are each found from rest. Their steps
    // differ,
    // which moves the states by some 1e-5.
    @Test
    void slopeAndBendByTheMainsAreDifferencesOfStates() {
        double part = 0.02;
        SampledRun.Restart here = restart(120);
        SampledRun.Restart above = restart(120 * (1 + part));
        SampledRun.Restart below = restart(120 * (1 - part));
        int capacitor = here.layout.stateNamed("C");
        int carried = 0;
        while (here.carriedStates[carried] != capacitor) {
            carried++;
        }
        AlongMains.Curve along = Objects.requireNonNull(here.alongMains).carried;
        double slope = (above.x[capacitor] - below.x[capacitor]) / (2 * part);
        double bend = (above.x[capacitor] - 2 * here.x[capacitor] + below.x[capacitor]) / (2 * part * part);
        assertThat(along.slope[carried]).isCloseTo(slope, within(1e-4 * slope));
        assertThat(along.bend[carried]).isCloseTo(bend, within(0.1 * bend));
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

    /**
     * A choke and its capacitor that ring at 11.6 times the mains with a Q of 160, struck by a pulse each cycle: what one step
     * errs by is still there when the next cycle adds its own. Against Hipparchus ODE (Dormand-Prince 8(5,3)) over one period
     * from three starts, which is the whole map since the circuit is linear: x = A·x + b.
     */
    @Test
    void chokeThatRingsFromCycleToCycleIsToldToHalfAThousandth() {
        double henries = 2e-3;
        double farads = 26e-6;
        double ohms = 0.055;
        double grain = 1.0 / 60 / Reductions.GRAINS;
        List<Double> seconds = List.of(0.0, 2048 * grain, 2176 * grain, 6144 * grain, 6272 * grain);
        SourceShape.Corners pulse = new SourceShape.Corners(seconds, List.of(0.0, 0.0, 10.0, 10.0, 0.0));
        Network n = Network.builder("gnd")
                .voltage("V", "in", "gnd", pulse)
                .inductor("L", "in", "coil", henries)
                .resistor("R", "coil", "out", ohms)
                .capacitor("C", "out", "gnd", farads)
                .build();
        OrdinaryDifferentialEquation equation = new OrdinaryDifferentialEquation() {
            @Override
            public int getDimension() {
                return 2;
            }

            @Override
            public double[] computeDerivatives(double t, double[] y) {
                return new double[] {(pulse.at(t) - ohms * y[0] - y[1]) / henries, y[0] / farads};
            }
        };
        double[] b = oneCycle(equation, seconds, new double[2]);
        double[] one = oneCycle(equation, seconds, new double[] {1, 0});
        double[] two = oneCycle(equation, seconds, new double[] {0, 1});
        RealMatrix left = MatrixUtils.createRealMatrix(new double[][] {
            {1 - one[0] + b[0], b[0] - two[0]}, {b[1] - one[1], 1 - two[1] + b[1]}
        });
        double[] exact = new LUDecomposition(left)
                .getSolver()
                .solve(MatrixUtils.createRealVector(b))
                .toArray();

        PeriodicState p = Solve.periodic(n);

        Waveform amps = p.amps("L");
        double fullScale = Math.max(amps.highest(), -amps.lowest());
        assertThat(amps.value(amps.size() - 1)).isCloseTo(exact[0], within(5e-4 * fullScale));
        Waveform volts = p.volts(n.node("out"), 0);
        assertThat(volts.value(volts.size() - 1)).isCloseTo(exact[1], within(5e-4 * volts.highest()));
    }

    private static double[] oneCycle(OrdinaryDifferentialEquation equation, List<Double> corners, double[] start) {
        DormandPrince853Integrator integrator = new DormandPrince853Integrator(1e-12, 1e-4, 1e-11, 1e-11);
        double[] y = start;
        List<Double> ends = new ArrayList<>(corners.subList(1, corners.size()));
        ends.add(1.0 / 60);
        double from = 0;
        for (double to : ends) {
            y = integrator.integrate(equation, new ODEState(from, y), to).getPrimaryState();
            from = to;
        }
        return y;
    }
}
