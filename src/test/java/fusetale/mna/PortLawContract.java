package fusetale.mna;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What a solver may take for granted of every law: slopes are derivatives. Source: the definition of a derivative (central
 * differences).
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class PortLawContract {
    private static final double H = 1e-6;

    /** Laws with the voltages to try them at. */
    record Case(String name, PortLaw law, List<double[]> volts) {
        @Override
        public String toString() {
            return name;
        }
    }

    abstract Stream<Case> cases();

    static PortPoint stage(PortLaw law, double stepSeconds, double start, double... volts) {
        PortPoint at = new PortPoint(law.ports(), law.states());
        System.arraycopy(volts, 0, at.volts, 0, volts.length);
        at.stepSeconds = stepSeconds;
        if (law.states() > 0) {
            at.start[0] = start;
        }
        law.evaluate(at);
        return at;
    }

    static PortPoint at(PortLaw law, double... volts) {
        return stage(law, Double.POSITIVE_INFINITY, 0, volts);
    }

    @ParameterizedTest
    @MethodSource("cases")
    void slopesAreTheDerivativesOfTheCurrents(Case c) {
        int n = c.law().ports();
        for (double[] volts : c.volts()) {
            PortPoint here = at(c.law(), volts);
            for (int j = 0; j < n; j++) {
                double[] up = volts.clone();
                double[] down = volts.clone();
                up[j] += H;
                down[j] -= H;
                PortPoint above = at(c.law(), up);
                PortPoint below = at(c.law(), down);
                for (int k = 0; k < n; k++) {
                    double expected = (above.amps[k] - below.amps[k]) / (2 * H);
                    double rounding = 1e-9 * Math.max(Math.abs(here.amps[k]), 1e-6);
                    assertThat(here.siemens[k * n + j])
                            .as("d i%d / d v%d at %s", k, j, Arrays.toString(volts))
                            .isCloseTo(expected, within(1e-4 * Math.abs(expected) + rounding));
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void withinItsReachNoSlopeMoreThanDoubles(Case c) {
        int n = c.law().ports();
        for (double[] volts : c.volts()) {
            PortPoint here = at(c.law(), volts);
            double largest = Arrays.stream(here.siemens).map(Math::abs).max().orElseThrow();
            for (int way = 0; way < 1 << n; way++) {
                double[] there = volts.clone();
                for (int k = 0; k < n; k++) {
                    there[k] += c.law().reachVolts(here, k) * ((way >> k & 1) == 0 ? 1 : -1);
                }
                double most = Arrays.stream(at(c.law(), there).siemens)
                        .map(Math::abs)
                        .max()
                        .orElseThrow();
                // exp(-40) of a slope is what a law may leave out
                assertThat(most)
                        .as("slopes %s from %s", Arrays.toString(there), Arrays.toString(volts))
                        .isLessThanOrEqualTo(2.0001 * largest + 1e-15);
            }
        }
    }
}
