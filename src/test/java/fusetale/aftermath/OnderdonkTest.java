package fusetale.aftermath;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fusetale.circuit.Conductor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OnderdonkTest {
    /** Worked from the printed equation with A in circular mils of ASTM B258, air 25 °C: gauge, current, seconds. */
    @ParameterizedTest
    @CsvSource({
        "16, 377.8, 1",
        "16, 169.0, 5",
        "18, 237.6, 1",
        "18, 751, 0.1",
        "22, 94.0, 1",
        "30, 14.7, 1",
        "30, 147, 0.01"
    })
    void gaugesMeltAsTheEquationSays(int gauge, double amps, double seconds) {
        assertThat(Onderdonk.seconds(Conductor.gaugeSquareMillimetres(gauge), amps, 25))
                .isCloseTo(seconds, within(0.006 * seconds));
    }

    /** A trace of 2.54 mm by 35 µm: 81 A for 0.1 s, 25.7 A for 1 s, 11.5 A for 5 s, the same equation. */
    @ParameterizedTest
    @CsvSource({"81, 0.1", "25.7, 1", "11.5, 5"})
    void tracesMeltAlike(double amps, double seconds) {
        assertThat(Onderdonk.seconds(2.54 * 0.035, amps, 25)).isCloseTo(seconds, within(0.01 * seconds));
    }

    @Test
    void nothingMeltsWithoutCurrent() {
        assertThat(Onderdonk.seconds(1, 0, 25)).isInfinite();
    }
}
