package fusetale.circuit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CopperTest {
    /** IEC 60228, annex on temperature correction: exact for copper is k = 254.5/(234.5 + t); its table has three digits of it. */
    @ParameterizedTest
    @CsvSource({"10, 1.041", "15, 1.020", "30, 0.962", "40, 0.927"})
    void followsTheCorrectionToTwentyDegrees(double celsius, double factor) {
        assertThat(1 / Copper.ratio(20, celsius)).isCloseTo(254.5 / (234.5 + celsius), within(1e-12));
        assertThat(1 / Copper.ratio(20, celsius)).isCloseTo(factor, within(5e-4));
    }

    /** IEC 60028: 0.00393 per kelvin at 20 °C. */
    @Test
    void growsByTheCoefficientAtTwentyDegrees() {
        assertThat(Copper.ratio(20, 21) - 1).isCloseTo(0.00393, within(5e-6));
    }

    /**
     * A plunger asks for ampere turns, so for the same current hot and cold: √(30 W/7 Ω) = 2.07 A and √(4 W/7 Ω) = 0.756 A. At
     * 105 °C the winding has 1.308 times the resistance (IEC 60034-1).
     */
    @Test
    void aHotCoilAsksForTheCurrentOfAColdOne() {
        String coil = "C1: {is: coil, between: [out, gnd], ohms: 7 ohm, inductance: 20 mH, temperature: 105 °C}";
        String two = "C1: {is: dual coil, between: [out, gnd], power: {ohms: 7 ohm, inductance: 6 mH},"
                + " hold: {ohms: 7 ohm, inductance: 0.4 H}, temperature: 105 °C}";
        Coil hot = (Coil) part(coil);
        DualCoil dual = (DualCoil) part(two);

        assertThat(hot.ohms().si()).isCloseTo(7 * 1.308, within(0.01));
        assertThat(hot.pullsInFromAmps()).isCloseTo(2.070, within(1e-3));
        assertThat(hot.holdsFromAmps()).isCloseTo(0.756, within(1e-3));
        assertThat(dual.pullsInFromAmps()).isCloseTo(2.070, within(1e-3));
        assertThat(dual.holdsFromAmps()).isCloseTo(0.756, within(1e-3));
    }

    /** One current stated, the other by the proportion of the powers, √(30/4) = 2.739: it never holds with more than pulls in. */
    @ParameterizedTest
    @CsvSource({"pull-in: 0.3 A, 0.3, 0.1095", "hold: 5 A, 13.69, 5"})
    void theOtherCurrentOfAPlungerKeepsToTheStatedOne(String stated, double pullIn, double hold) {
        Coil coil = (Coil) part("C1: {is: coil, between: [out, gnd], ohms: 7 ohm, inductance: 20 mH, " + stated + "}");

        assertThat(coil.pullsInFromAmps()).isCloseTo(pullIn, within(5e-3 * pullIn));
        assertThat(coil.holdsFromAmps()).isCloseTo(hold, within(5e-3 * hold));
    }

    private static Part part(String written) {
        String text = Sample.with("C1: {is: capacitor, between: [out, gnd], value: 100 nF, volts: 63 V}", written);
        return Objects.requireNonNull(Sample.read(text).circuit()).part("C1").orElseThrow();
    }
}
