package fusetale.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Peaks between samples against curves whose peak is known. */
class WaveformTest {
    /** Pairs of unequal steps, as a two-stage method leaves them. */
    private static Waveform sampled(DoubleUnaryOperator curve, int steps) {
        double[] seconds = new double[2 * steps];
        double[] values = new double[2 * steps];
        double[] weights = new double[2 * steps];
        for (int k = 0; k < 2 * steps; k++) {
            int step = k / 2;
            seconds[k] = (step + (k % 2 == 0 ? 0.3 : 1.0)) / steps;
            values[k] = curve.applyAsDouble(seconds[k]);
            weights[k] = (k % 2 == 0 ? 0.7 : 0.3) / steps;
        }
        return new Waveform(seconds, values, weights);
    }

    /**
     * A sine of one volt in 32 steps, its top anywhere between samples: the samples alone miss up to (0.35·2π/32)²/2 = 0.24 %.
     * Error of a parabola: a third derivative that vanishes at the top leaves the fourth, (2π/32)⁴/24·(0.7)² = 3e-5.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.05, 0.1, 0.15, 0.2, 0.25, 0.3, 0.35, 0.7, 1.1})
    void topOfASineIsFoundBetweenSamples(double phase) {
        Waveform sine = sampled(t -> Math.sin(2 * Math.PI * t - phase), 32);

        assertThat(sine.highest()).isCloseTo(1, within(2e-4));
        assertThat(sine.lowest()).isCloseTo(-1, within(2e-4));
    }

    /** Three points determine a parabola: 3 − 50·(t − 0.41)², topped at 3. */
    @Test
    void topOfAParabolaIsExact() {
        Waveform curve = sampled(t -> 3 - 50 * (t - 0.41) * (t - 0.41), 16);

        assertThat(curve.highest()).isCloseTo(3, within(1e-12));
    }

    /** A triangle's corner at a sample: nothing may be added to it. */
    @Test
    void cornerKeepsItsSample() {
        Waveform triangle = sampled(t -> -Math.abs(t - 0.5), 16);

        assertThat(triangle.highest()).isZero();
    }

    /** A pulse that stands at nothing and rises at once: its lowest value is nothing, not less. */
    @Test
    void footOfAPulseIsNotUndercut() {
        Waveform pulse = sampled(t -> t < 0.5 ? 0 : Math.sin(2 * Math.PI * (t - 0.5)), 64);

        assertThat(pulse.lowest()).isCloseTo(0, within(1e-12));
    }

    /** A square wave has no top between its samples. */
    @Test
    void squareWaveIsAsHighAsItsSamples() {
        Waveform square = sampled(t -> t < 0.5 ? 5 : -5, 16);

        assertThat(square.peakToPeak()).isEqualTo(10);
    }
}
