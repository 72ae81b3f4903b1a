package fusetale.mna;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Figures: data sheets of the 5 V 1 A class: 2.0 V dropout at 1 A, 62 dB at 120 Hz, 4.2 mA, limit 2.2 A. */
class RegulatorLawTest extends PortLawContract {
    private static final double REJECTION = Math.pow(10, 62 / 20.0);
    private static final RegulatorLaw LAW = new RegulatorLaw(5, 0.02, 2, 0.0042, 2.2, REJECTION);

    @Override
    Stream<Case> cases() {
        double[][] volts = {
            {5, 4.98}, {1.75, 4.5}, {1.6, 4.0}, {1.62, 4.9}, {10, 0}, {5, 5.2}, {-0.8, 5}, {0, 0}, {1, 1}, {3, 4.96}
        };
        return Stream.of(new Case("5 V", LAW, List.of(volts)));
    }

    /** Output voltage found for a load current by halving: what a load line would do. */
    private static double output(double inputVolts, double loadAmps) {
        double low = 0;
        double high = inputVolts;
        for (int i = 0; i < 100; i++) {
            double out = (low + high) / 2;
            PortPoint at = at(LAW, inputVolts - out, out);
            double available = at.amps[0] - at.amps[1] - LAW.baselineSiemens(1) * out;
            if (available > loadAmps) {
                low = out;
            } else {
                high = out;
            }
        }
        return low;
    }

    @Test
    void regulatesAtItsStatedVoltage() {
        assertThat(output(10, 0.005)).isCloseTo(5, within(0.001));
    }

    @Test
    void outputFallsByItsResistanceTimesTheLoad() {
        assertThat(output(10, 0.1) - output(10, 1)).isCloseTo(0.9 * 0.02, within(1e-6));
    }

    @Test
    void inputRippleComesThroughDividedByTheRejection() {
        assertThat((output(11, 0.5) - output(9, 0.5)) * REJECTION).isCloseTo(2, within(0.01));
    }

    /** All but what the change of its own divider's current drops in the pass transistor: 0.1 mA/V × 0.2 ohm. */
    @Test
    void belowDropoutTheOutputFollowsTheInput() {
        assertThat(output(6, 1) - output(5.5, 1)).isCloseTo(0.5, within(1e-5));
    }

    /** Sheet: 2.0 V at 1 A, typical; ours may be lower at less than the limit current, never higher. */
    @Test
    void dropoutAtRatedLoadIsNotAboveTheSheet() {
        assertThat(6 - output(6, 1)).isBetween(1.6, 2.0);
    }

    @Test
    void shortedOutputDrawsTheLimitCurrent() {
        assertThat(at(LAW, 12, 0).amps[0]).isCloseTo(2.2, within(0.005));
    }

    @Test
    void quiescentCurrentFlowsIntoTheGroundPin() {
        PortPoint at = at(LAW, 5, 5);

        assertThat(at.amps[1] + LAW.baselineSiemens(1) * 5).isCloseTo(0.0042, within(1e-9));
    }

    @Test
    void outputAboveInputFeedsBackThroughADiode() {
        assertThat(at(LAW, -0.75, 5).amps[0]).isBetween(-2.0, -0.5);
    }

    @Test
    void unpoweredRegulatorPassesNothing() {
        assertThat(at(LAW, 0, 0).amps[0]).isZero();
    }
}
