package fusetale.mna;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.signal.Waveform;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * That the error falls as the theory of a method of second order has it: with the square of a fixed step (E. Hairer, S. P.
 * Nørsett, G. Wanner, Solving Ordinary Differential Equations I, §II.3), and, where steps are chosen by their local error h³,
 * with the power 2/3 of what is allowed of it (ibid., §II.4). Observed order is log(error ratio)/log(step ratio).
 */
class OrderOfConvergenceTest {
    private static final double OMEGA = 2 * Math.PI * 60;

    /** Never bites: every step is the longest. */
    private static PeriodicSettings fixed(int steps) {
        return new PeriodicSettings(1.0 / 60, 1, 1e-12, 60, 10, steps);
    }

    private static PeriodicSettings adaptive(double accuracy) {
        return new PeriodicSettings(1.0 / 60, accuracy, 1e-11, 60, 10, 8);
    }

    private static double order(double coarse, double fine, double stepRatio) {
        return Math.log(coarse / fine) / Math.log(stepRatio);
    }

    /** Series R, L, C fed by a sine: C's voltage is that of the phasors, V/(1 − ω²LC + jωRC). */
    private static double resonantError(PeriodicSettings settings) {
        double ohms = 20;
        double henries = 80e-3;
        double farads = 60e-6;
        Network n = Network.builder("0")
                .voltage("E", "a", "0", new SourceShape.Sine(0, 10, 60, 0))
                .resistor("R", "a", "b", ohms)
                .inductor("L", "b", "c", henries)
                .capacitor("C", "c", "0", farads)
                .build();
        Waveform v = Solve.periodic(n, settings).volts(n.node("c"), 0);
        double real = 1 - OMEGA * OMEGA * henries * farads;
        double imaginary = OMEGA * ohms * farads;
        double most = 0;
        for (int k = 1; k < v.size(); k += 2) {
            double exact =
                    10 / Math.hypot(real, imaginary) * Math.sin(OMEGA * v.seconds(k) - Math.atan2(imaginary, real));
            most = Math.max(most, Math.abs(v.value(k) - exact));
        }
        return most;
    }

    @ParameterizedTest
    @ValueSource(ints = {64, 128, 256, 512})
    void smoothProblemIsOfSecondOrderInTheStep(int steps) {
        double order = order(resonantError(fixed(steps)), resonantError(fixed(2 * steps)), 2);

        assertThat(order).isBetween(1.9, 2.1);
    }

    @Test
    void smoothProblemFollowsTheAccuracyAskedFor() {
        double order = order(resonantError(adaptive(1e-4)), resonantError(adaptive(1e-7)), 1000);

        assertThat(order).isBetween(0.55, 0.8);
    }

    /** A half-wave rectifier with a reservoir; twice as many steps halve every step, so that samples stand at the same times. */
    private static Network rectifier() {
        return Network.builder("0")
                .voltage("E", "e", "0", new SourceShape.Sine(0, 30, 60, 0))
                .resistor("RS", "e", "a", 2)
                .port("D", "a", "out", new PlainJunction(1e-9, 0.05, 0))
                .capacitor("C", "out", "0", 300e-6)
                .resistor("RL", "out", "0", 80)
                .build();
    }

    private static double rectifierError(PeriodicSettings settings) {
        Network n = rectifier();
        Waveform v = Solve.periodic(n, settings).volts(n.node("out"), 0);
        Waveform exact = Solve.periodic(n, fixed(Reductions.GRAINS)).volts(n.node("out"), 0);
        double most = 0;
        for (int k = 1; k < v.size(); k += 2) {
            int grain = (int) Math.round(v.seconds(k) * 60 * Reductions.GRAINS);
            most = Math.max(most, Math.abs(v.value(k) - exact.value(2 * grain - 1)));
        }
        return most;
    }

    /**
     * A diode's corner falls anywhere within a step, so that single ratios scatter around four; over sixteen times the steps
     * the order shows.
     */
    @Test
    void rectifierIsOfSecondOrderInTheStep() {
        List<Double> errors = new ArrayList<>();
        for (int steps = 128; steps <= 2048; steps *= 2) {
            errors.add(rectifierError(fixed(steps)));
        }

        assertThat(order(errors.get(0), errors.get(4), 16)).isBetween(1.8, 2.3);
        assertThat(errors).isSortedAccordingTo((a, b) -> Double.compare(b, a));
    }

    @Test
    void rectifierFollowsTheAccuracyAskedFor() {
        double loose = rectifierError(adaptive(1e-3));
        double usual = rectifierError(adaptive(1e-4));
        double fine = rectifierError(adaptive(1e-6));

        assertThat(usual).isLessThan(loose);
        assertThat(order(usual, fine, 100)).isBetween(0.5, 0.9);
    }
}
