package fusetale.mna;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class JunctionLawTest extends PortLawContract {
    /** 1N4742A, data sheet: 12 V at 21 mA, 9 ohm there. */
    private static final JunctionLaw ZENER = JunctionLaw.of(1.824e-10, 1.5).withBreakdown(12, 0.021, 9);

    @Override
    Stream<Case> cases() {
        double[][] volts = {{-1200}, {-1000.01}, {-30}, {-0.3}, {0}, {0.3}, {0.6}, {0.8}, {3}};
        double[][] zener = {{-14}, {-12}, {-11.85}, {-11.8}, {-11}, {0}, {0.7}};
        return Stream.of(
                new Case("rectifier", JunctionLaw.of(8.774e-8, 2).withBreakdown(1000, 1e-5, 1000), List.of(volts)),
                new Case("zener", ZENER, List.of(zener)));
    }

    /** Forward voltages less the drop in the series resistance; a table of fitted data-sheet points, N = 2, 25 °C. */
    @ParameterizedTest
    @CsvSource({
        "3.780e-8, 0.12177, 0.001, 0.523",
        "3.780e-8, 0.12177, 1, 1.000",
        "3.780e-8, 0.12177, 3, 1.300",
        "8.774e-8, 0.00674, 0.001, 0.480",
        "8.774e-8, 0.00674, 17.5, 1.100",
        "5.956e-8, 0.09623, 3, 1.200"
    })
    void forwardVoltageMeetsTheDataSheet(double saturationAmps, double seriesOhms, double amps, double volts) {
        JunctionLaw law = JunctionLaw.of(saturationAmps, 2);

        PortPoint at = at(law, volts - amps * seriesOhms);

        // half a unit in the last printed digit of the voltage, as a current
        assertThat(at.amps[0]).isCloseTo(amps, within(amps * 0.0005 / (2 * 0.0256926)));
    }

    /** On top of it flows the saturation current. */
    @Test
    void breakdownGoesThroughTheStatedPoint() {
        assertThat(at(ZENER, -12).amps[0] + 1.824e-10).isCloseTo(-0.021, within(1e-12));
    }

    @Test
    void breakdownHasTheStatedResistance() {
        assertThat(1 / at(ZENER, -12.09).siemens[0]).isCloseTo(9, within(1e-6));
    }

    /** 1N4742A: at most 5 µA at 9.1 V. */
    @Test
    void belowTheKneeOnlyTheSheetsReverseCurrentFlows() {
        assertThat(at(ZENER, -9.1).amps[0]).isBetween(-5e-6, 0.0);
    }

    @Test
    void wildForwardVoltageGivesFiniteNumbers() {
        PortPoint at = at(ZENER, 1e9);

        assertThat(at.amps[0]).isFinite().isPositive();
        assertThat(at.siemens[0]).isFinite().isPositive();
    }

    @Test
    void firmlyOffJunctionHasNoSlope() {
        assertThat(at(ZENER, -5).siemens[0]).isZero();
    }

    /** The current at the limited voltage is what the tangent at the old voltage promised: the rule's definition. */
    @Test
    void limitedStepCarriesTheCurrentTheTangentPromised() {
        JunctionLaw law = JunctionLaw.of(8.774e-8, 2);
        PortPoint old = at(law, 0.9);
        double promised = old.amps[0] + old.siemens[0] * 5;

        double limited = law.limited(0, 5.9, 0.9);

        assertThat(at(law, limited).amps[0]).isCloseTo(promised, within(1e-6 * promised));
    }

    @Test
    void smallStepIsNotLimited() {
        assertThat(JunctionLaw.of(8.774e-8, 2).limited(0, 0.65, 0.6)).isEqualTo(0.65);
    }

    @Test
    void stepDeepIntoBreakdownStopsAtTheKnee() {
        assertThat(ZENER.limited(0, -200, 0)).isBetween(-12.6, -11.8);
    }

    @Test
    void stepInsideBreakdownIsNotLimited() {
        assertThat(ZENER.limited(0, -30, -12)).isEqualTo(-30);
    }

    @Test
    void saturationCurrentOfZeroIsRefused() {
        assertThatThrownBy(() -> JunctionLaw.of(0, 1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("saturation current");
    }

    /**
     * A zener of 3.3 V whose voltage drifted to a tenth and to a hundredth, its 10 ohm and 76 mA those of the sheet: 0.76 V of
     * resistance are more than it has. Whatever the voltage, it takes power.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0.033, 0.1, 0.33, 0.7, 1.5, 3.3})
    void aJunctionGivesNoPowerOfItsOwn(double volts) {
        JunctionLaw law = JunctionLaw.of(1e-10, 1.5).withBreakdown(volts, 0.076, 10);

        for (double v = -4; v <= 0.8; v += 1e-3) {
            PortPoint at = at(law, v);
            assertThat(at.amps[0] * v).as("at %s V", v).isGreaterThanOrEqualTo(0);
            assertThat(at.siemens[0]).isGreaterThan(0);
        }
        assertThat(at(law, 0).amps[0]).isCloseTo(0, within(1e-15));
        assertThat(at(law, -volts).amps[0]).isCloseTo(-0.076, within(0.03 * 0.076));
    }
}
