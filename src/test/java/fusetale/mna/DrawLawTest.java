package fusetale.mna;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class DrawLawTest extends PortLawContract {
    private static final DrawLaw LAW = new DrawLaw(5, 1.2);

    @Override
    Stream<Case> cases() {
        double[][] volts = {{-3}, {0}, {1}, {2}, {2.75}, {3.9}, {5}, {9}};
        return Stream.of(new Case("5 V", LAW, List.of(volts)));
    }

    private static double amps(double volts) {
        return at(LAW, volts).amps[0] + LAW.baselineSiemens(0) * volts;
    }

    /** Definition of its rating. */
    @Test
    void ratedVoltageDrawsRatedCurrent() {
        assertThat(amps(5)).isCloseTo(1.2, within(1e-12));
    }

    @Test
    void nothingFlowsAtZero() {
        assertThat(amps(0)).isZero();
    }

    /** Common practice: the supply current of bipolar logic changes by a few per cent over its ±5 % of voltage. */
    @Test
    void currentHardlyChangesAroundTheRatedVoltage() {
        assertThat(amps(5.25) - amps(4.75)).isBetween(0.0, 0.02);
    }

    @Test
    void currentNeverFallsWithRisingVoltage() {
        double last = amps(-2);
        for (double v = -2; v < 8; v += 0.01) {
            assertThat(amps(v)).isGreaterThanOrEqualTo(last);
            last = amps(v);
        }
    }
}
