package fusetale.circuit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

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
}
