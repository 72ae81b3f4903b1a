package fusetale.aftermath;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fusetale.signal.Waveform;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ConductionTest {
    private static final int SAMPLES = 20_000;

    /** One cycle, 360° in 1 s. */
    private static Waveform cycle(DoubleUnaryOperator ampsAtDegrees) {
        double[] seconds = new double[SAMPLES];
        double[] values = new double[SAMPLES];
        double[] weights = new double[SAMPLES];
        for (int k = 0; k < SAMPLES; k++) {
            seconds[k] = (k + 0.5) / SAMPLES;
            values[k] = ampsAtDegrees.applyAsDouble(360 * seconds[k]);
            weights[k] = 1.0 / SAMPLES;
        }
        return new Waveform(seconds, values, weights);
    }

    /**
     * Schade's full-wave circuit with a capacitor without end (O. H. Schade, Proc. IRE 31, 1943): Vdc/Vp = cos θ with Rs/RL =
     * (2/π)(tan θ − θ); a leg conducts 2θ. Peak and r.m.s. over mean from the same closed form.
     */
    @ParameterizedTest
    @CsvSource({"0.9601, 16.64, 3.648", "0.9376, 13.30, 3.261", "0.8322, 8.07, 2.537", "0.7518, 6.60, 2.294"})
    void legBeforeAnEndlessCapacitorConductsTwiceTheta(double cosine, double peak, double rms) {
        double theta = Math.toDegrees(Math.acos(cosine));

        Conduction leg = Conduction.of(cycle(d -> Math.max(0, Math.cos(Math.toRadians(d - 90)) - cosine)));

        // above a hundredth of the peak: half a degree less on either side at most
        assertThat(leg.degrees()).isBetween(2 * theta - 1, 2 * theta);
        assertThat(leg.peakAmps() / leg.meanAmps()).isCloseTo(peak, within(0.005 * peak));
        assertThat(leg.formFactor()).isCloseTo(rms, within(0.002 * rms));
    }

    @Test
    void pulseAcrossTheEndOfTheCycleCountsOnce() {
        Conduction leg = Conduction.of(cycle(d -> d < 30 || d > 330 ? 1 : 0));

        assertThat(leg.degrees()).isCloseTo(60, within(0.1));
    }

    /** Half a sine: r.m.s. over mean π/2 (closed form). */
    @Test
    void halfSineHasTheFormFactorOfTheBooks() {
        Conduction leg = Conduction.of(SafeCurrent.halfSine(false));

        assertThat(leg.formFactor()).isCloseTo(Math.PI / 2, within(1e-4));
        assertThat(leg.degrees()).isBetween(178.5, 180.0);
    }

    @Test
    void leakageIsNoConduction() {
        assertThat(Conduction.of(cycle(d -> 1e-7)).degrees()).isZero();
    }

    /** I²t of half a sine is peak² · half a cycle / 2: the pulse ratings that data sheets of rectifiers print. */
    @ParameterizedTest
    @CsvSource({"30, 3.75", "200, 167", "250, 260", "300, 375", "400, 667"})
    void surgeOfHalfASineIsWhatDataSheetsPrint(double surgeAmps, double ampsSquaredSeconds) {
        int samples = 1000;
        double[] seconds = new double[samples];
        double[] values = new double[samples];
        double[] weights = new double[samples];
        for (int k = 0; k < samples; k++) {
            seconds[k] = 3 * (k + 0.5) / 120 / samples;
            double sine = Math.sin(2 * Math.PI * 60 * seconds[k]);
            // one half-cycle of three
            values[k] = seconds[k] < 1.0 / 120 ? surgeAmps * sine : 0;
            weights[k] = 3.0 / 120 / samples;
        }

        Surge surge = Surge.of(new Waveform(seconds, values, weights), 1.0 / 120);

        assertThat(surge.peakAmps()).isCloseTo(surgeAmps, within(0.001 * surgeAmps));
        assertThat(surge.ampsSquaredSeconds()).isCloseTo(ampsSquaredSeconds, within(0.01 * ampsSquaredSeconds));
    }

    @Test
    void surgeCountsNoMoreThanItsStretch() {
        assertThat(Surge.of(cycle(d -> 2), 0.25).ampsSquaredSeconds()).isCloseTo(1, within(0.001));
    }
}
