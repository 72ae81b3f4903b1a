package fusetale.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rule of the product's settled point 8: steps of 5 between 10 and 90, "under 1", never above 99. */
class SharesTest {
    @ParameterizedTest
    @CsvSource({
        "0, under 1",
        "0.0099, under 1",
        "0.01, 1 of 100",
        "0.043, 4 of 100",
        "0.0951, 10 of 100",
        "0.1, 10 of 100",
        "0.124, 10 of 100",
        "0.126, 15 of 100",
        "0.51, 50 of 100",
        "0.88, 90 of 100",
        "0.93, 93 of 100",
        "0.996, 99 of 100",
        "1, 99 of 100",
    })
    void sharesAreSaidInSteps(double ratio, String said) {
        assertThat(Shares.said(ratio)).isEqualTo(said);
    }

    @Test
    void whatIsNoShareIsRefused() {
        assertThatThrownBy(() -> Shares.said(1.01)).isInstanceOf(IllegalArgumentException.class);
    }
}
