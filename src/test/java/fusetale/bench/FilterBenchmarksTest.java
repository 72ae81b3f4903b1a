package fusetale.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fusetale.circuit.BenchSetting;
import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitReader;
import fusetale.circuit.MeterFunction;
import java.nio.file.Path;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Filters of the literature beside their transfer functions, at 1 V r.m.s. Sallen-Key with two capacitors of C:
 *
 * <pre>K·s/(R1·C) / [s² + (s/C)·(1/R1 + 2/R3 + (1 − K)/R2) + (R1 + R2)/(R1·R2·R3·C²)]</pre>
 *
 * State-variable with R1 to R5 alike: band-pass s·τ/(s²·τ² + s·τ·3·R6/(R6 + R7) + 1), τ = R·C. Both follow from Kirchhoff's
 * laws with ideal amplifiers (any textbook of active filters, from memory).
 */
class FilterBenchmarksTest {
    private static final double F = 5e-9;
    private static final Meter METER = Meter.trueRms4000();

    private static Circuit circuit(String name) {
        return Objects.requireNonNull(CircuitReader.withShippedParts()
                .read(Path.of("benchmarks", name + ".yaml"))
                .circuit());
    }

    private static double volts(Circuit circuit, Arrangement arrangement, String point) throws UnfitArrangement {
        Check check = new Check(point, "neutral", MeterFunction.AC_VOLTS);
        Bench bench = Bench.of(circuit, arrangement, METER);
        return bench.lookWithoutLoad(java.util.List.of(check), null, () -> false)
                .orElse(reason -> {
                    throw new AssertionError(reason);
                })
                .readings()
                .get(0)
                .value();
    }

    private static double volts(Circuit circuit, double hertz, String point) {
        try {
            return volts(circuit, Arrangement.powered(circuit).withMainsHertz(hertz), point);
        } catch (UnfitArrangement e) {
            throw new AssertionError(e);
        }
    }

    private static double sallenKey(double r1, double r2, double r3, double hertz) {
        double w = 2 * Math.PI * hertz;
        double k = 2;
        double damping = (1 / r1 + 2 / r3 + (1 - k) / r2) / F;
        double square = (r1 + r2) / (r1 * r2 * r3 * F * F);
        return k * w / (r1 * F) / Math.hypot(square - w * w, w * damping);
    }

    @ParameterizedTest
    @CsvSource({"sallen-key-a, 1e3, 3e3, 2e3", "sallen-key-b, 5.18e3, 1e3, 2e3"})
    void sallenKeyFollowsItsTransferFunctionAtEveryFrequencyOfItsFile(String name, double r1, double r2, double r3)
            throws UnfitArrangement {
        Circuit filter = circuit(name);

        assertThat(filter.settings()).hasSize(9);
        for (BenchSetting setting : filter.settings()) {
            double hertz = Objects.requireNonNull(setting.mainsHertz()).si();
            double expected = sallenKey(r1, r2, r3, hertz);
            assertThat(volts(filter, Arrangement.of(filter, setting), "TP1"))
                    .as("at %s Hz", hertz)
                    .isCloseTo(expected, within(1e-3 * expected));
        }
    }

    /** The three outputs: s²τ², s·τ and 1 over the same denominator. */
    @Test
    void stateVariableFilterFollowsItsTransferFunctionsAtEveryFrequencyOfItsFile() throws UnfitArrangement {
        Circuit filter = circuit("state-variable");

        assertThat(filter.settings()).hasSize(9);
        for (BenchSetting setting : filter.settings()) {
            double x =
                    2 * Math.PI * Objects.requireNonNull(setting.mainsHertz()).si() * 10e3 * 20e-9;
            double denominator = Math.hypot(1 - x * x, 0.9 * x);
            Arrangement arrangement = Arrangement.of(filter, setting);
            double[] expected = {x * x / denominator, x / denominator, 1 / denominator};
            for (int k = 0; k < 3; k++) {
                assertThat(volts(filter, arrangement, "TP" + (k + 1)))
                        .as("TP%d, %s", k + 1, setting.name())
                        .isCloseTo(expected[k], within(1e-3 * expected[k]));
            }
        }
    }

    /**
     * Middle, Q and gain of the band-pass outputs: closed forms of the transfer functions above. Middle is where both edges
     * at 1/√2 meet geometrically, Q the middle over what lies between them.
     */
    @ParameterizedTest
    @CsvSource({
        "sallen-key-a, TP1, 25990, 0.490, 1.20",
        "sallen-key-b, TP1, 24585, 4.00, 2.00",
        "state-variable, TP2, 795.77, 1.111, 1.111"
    })
    void middleQualityAndGainAreThoseOfTheLiterature(
            String name, String point, double hertz, double quality, double gain) {
        Circuit filter = circuit(name);
        DoubleUnaryOperator measured = at -> volts(filter, at, point);
        double peak = measured.applyAsDouble(hertz);
        double lower = edge(measured, hertz / 4, hertz, peak / Math.sqrt(2));
        double upper = edge(measured, 4 * hertz, hertz, peak / Math.sqrt(2));

        assertThat(peak).isCloseTo(gain, within(1e-3 * gain));
        assertThat(measured.applyAsDouble(0.98 * hertz)).isLessThan(peak);
        assertThat(measured.applyAsDouble(1.02 * hertz)).isLessThan(peak);
        assertThat(Math.sqrt(lower * upper)).isCloseTo(hertz, within(1e-3 * hertz));
        assertThat(Math.sqrt(lower * upper) / (upper - lower)).isCloseTo(quality, within(2e-3 * quality));
    }

    /** Where the volts cross a level between a frequency outside the pass-band and one inside (bisection). */
    private static double edge(DoubleUnaryOperator volts, double outside, double inside, double level) {
        double out = outside;
        double in = inside;
        for (int k = 0; k < 14; k++) {
            double middle = Math.sqrt(out * in);
            if (volts.applyAsDouble(middle) < level) {
                out = middle;
            } else {
                in = middle;
            }
        }
        return Math.sqrt(out * in);
    }
}
