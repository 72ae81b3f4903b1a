package fusetale.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fusetale.circuit.MeterFunction;
import fusetale.circuit.MeterModel;
import fusetale.signal.Waveform;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MeterTest {
    private static final Meter TRUE_RMS = Meter.trueRms4000();
    private static final Meter AVERAGE = Meter.averageResponding();

    private static Waveform wave(String shape) {
        DoubleUnaryOperator f = switch (shape) {
            case "sine" -> x -> Math.sin(2 * Math.PI * x);
            case "full-wave" -> x -> Math.abs(Math.sin(2 * Math.PI * x));
            case "half-wave" -> x -> Math.max(0, Math.sin(2 * Math.PI * x));
            case "square" -> x -> x < 0.5 ? 1 : -1;
            case "triangle" -> x -> 1 - 4 * Math.abs(x - 0.5);
            default -> x -> x; // saw-tooth of 1 V peak to peak
        };
        int n = 100_000;
        double[] seconds = new double[n];
        double[] values = new double[n];
        double[] weights = new double[n];
        for (int k = 0; k < n; k++) {
            seconds[k] = (k + 0.5) / n;
            values[k] = f.applyAsDouble(seconds[k]);
            weights[k] = 1.0 / n;
        }
        return new Waveform(seconds, values, weights);
    }

    /** Per volt of peak, exact integrals (form factor π/(2√2) for the average-responding meter). */
    @ParameterizedTest
    @CsvSource({
        "sine, 0, 0.70711, 0.70711",
        "full-wave, 0.63662, 0.30776, 0.29771",
        "half-wave, 0.31831, 0.38559, 0.38969",
        "square, 0, 1, 1.11072",
        "triangle, 0, 0.57735, 0.55536",
        "saw-tooth, 0.5, 0.28868, 0.27768"
    })
    void showsWhatItsDetectorMakesOfTheWave(String shape, double direct, double trueRms, double average) {
        Waveform wave = wave(shape);

        assertThat(TRUE_RMS.volts(MeterFunction.DC_VOLTS, wave)).isCloseTo(direct, within(1e-5));
        assertThat(TRUE_RMS.volts(MeterFunction.AC_VOLTS, wave)).isCloseTo(trueRms, within(1e-5));
        assertThat(AVERAGE.volts(MeterFunction.AC_VOLTS, wave)).isCloseTo(average, within(1e-5));
    }

    /** A meter without a blocking capacitor reads a full-wave with its mean: rms 0.70711, average-responding 0.70711. */
    @Test
    void withoutABlockingCapacitorTheMeanCounts() {
        Meter direct = Meter.of(TRUE_RMS.model().with(new MeterModel.Alternating(MeterModel.Detector.TRUE_RMS, false)));

        assertThat(direct.volts(MeterFunction.AC_VOLTS, wave("full-wave"))).isCloseTo(0.70711, within(1e-5));
    }

    /** Arithmetic of accuracy statements: ±(1 % + 2) at 100.0 V is 98.8 to 101.2; ±(0.5 % + 2) at 5.00 V is ±0.045. */
    @ParameterizedTest
    @CsvSource({"199.9, 0.1, 0.01, 2, 100, 1.2", "19.99, 0.01, 0.005, 2, 5, 0.045"})
    void accuracyIsPerCentOfReadingAndCounts(
            double full, double step, double ratio, int counts, double value, double halfWidth) {
        assertThat(new MeterRange(full, step, ratio, counts).halfWidth(value)).isCloseTo(halfWidth, within(1e-12));
    }

    /** Displays of 4000 and of 2000 counts. */
    @ParameterizedTest
    @CsvSource({
        "12.341, 12.34 V, 12.34 V",
        "0.4804, 0.480 V, 0.480 V",
        "0.0501, 50.1 mV, 50.1 mV",
        "-5.0, -5.00 V, -5.00 V",
        "25.0, 25.00 V, 25.0 V",
        "3.9996, 4.00 V, 4.00 V",
        "170.44, 170.4 V, 170.4 V",
        "0, 0.0 mV, 0.0 mV",
        "1200, OL, OL"
    })
    void printsDirectVoltsAsItsDisplayDoes(double volts, String good, String cheap) {
        Check check = new Check("a", "b", MeterFunction.DC_VOLTS);

        assertThat(TRUE_RMS.voltsReading(check, volts).shows()).isEqualTo(good);
        assertThat(AVERAGE.voltsReading(check, volts).shows()).isEqualTo(cheap);
    }

    @Test
    void alternatingVoltsHaveNoMillivoltRange() {
        Check check = new Check("a", "b", MeterFunction.AC_VOLTS);

        assertThat(TRUE_RMS.voltsReading(check, 0.2773).shows()).isEqualTo("0.277 V");
    }

    /** 4000 counts of ohms with prefixes. */
    @ParameterizedTest
    @CsvSource({"4, 4700, 4.70 kΩ", "1, 4.7, 4.7 Ω", "2, 470, 0.470 kΩ", "5, 1e6, 1.000 MΩ", "6, 22e6, 22.00 MΩ"})
    void printsOhmsWithTheirPrefix(int range, double ohms, String shows) {
        int index = range == 4 ? 2 : range == 1 ? 0 : range == 2 ? 1 : range - 1;

        assertThat(TRUE_RMS.ohmsRanges().get(index).display().shows(ohms, MeterFunction.OHMS))
                .isEqualTo(shows);
    }
}
