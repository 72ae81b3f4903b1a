package fusetale.report;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.bench.Check;
import fusetale.bench.Reading;
import fusetale.circuit.MeterFunction;
import fusetale.explore.Compared;
import fusetale.explore.HealthyRange;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures as text. */
class FiguresTest {
    /**
     * A root-mean-square value is a root of squares (IEC 60050-103), and parts that only take energy have no resistance below nothing:
     * neither has a sign. A charge left on a capacitor can drive a meter on ohms below nothing, and then that is what it shows:
     * judgement.
     */
    @ParameterizedTest
    @CsvSource({
        "AC_VOLTS, 0, -0.005, 0.005, 0.000 to 0.005 V",
        "AC_VOLTS, 0.001, -0.004, 0.006, 0.000 to 0.006 V",
        "AC_VOLTS, 0.044, 0.018, 0.065, 0.018 to 0.065 V",
        "OHMS, 0.2, -0.100, 0.500, 0.000 to 0.500 ohm",
        "OHMS, -40, -48, 3, -48.000 to 3.000 ohm",
        "OHMS, 1, -48, 3, -48.000 to 3.000 ohm",
        "DC_VOLTS, 0, -0.005, 0.005, -0.005 to 0.005 V",
        "DIODE_TEST, 0.001, -0.002, 0.004, -0.002 to 0.004 V",
    })
    void whatHasNoSignIsNotSaidToGoBelowNothing(
            MeterFunction function, double built, double low, double high, String said) {
        Reading reading = new Reading(
                new Check("TP2", "gnd", function),
                built,
                false,
                String.format(Locale.ROOT, "%.3f %s", built, function.unit().symbol()),
                0);

        assertThat(Figures.range(Compared.of(reading, reading, new HealthyRange(low, high))))
                .isEqualTo(said);
    }

    @Test
    void aZeroHasNoMinus() {
        assertThat(Figures.range(Made.row("TP2", MeterFunction.DC_VOLTS, 0, 0, -0.0002, 0.004)))
                .isEqualTo("0.000 to 0.004 V");
    }
}
