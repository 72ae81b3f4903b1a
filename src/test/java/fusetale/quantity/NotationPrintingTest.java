package fusetale.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class NotationPrintingTest {
    // Prefixes: SI Brochure, 9th edition, table 7. Capacitances in μF up to a farad: common practice.
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "4700     | OHM             | 4.7 kΩ    | 4.7 kohm",
                "0.47     | OHM             | 470 mΩ    | 470 mohm",
                "8        | OHM             | 8 Ω       | 8 ohm",
                "1.5e6    | OHM             | 1.5 MΩ    | 1.5 Mohm",
                "0.01     | FARAD           | 10000 μF  | 10000 uF",
                "4.7e-6   | FARAD           | 4.7 μF    | 4.7 uF",
                "1e-7     | FARAD           | 100 nF    | 100 nF",
                "1.5      | FARAD           | 1.5 F     | 1.5 F",
                "0.025    | HENRY           | 25 mH     | 25 mH",
                "-0.52    | VOLT            | -520 mV   | -520 mV",
                "1200     | VOLT            | 1.2 kV    | 1.2 kV",
                "1e-16    | AMPERE          | 0.1 fA    | 0.1 fA",
                "1e-25    | AMPERE          | 1e-25 A   | 1e-25 A",
                "7200     | SECOND          | 7200 s    | 7200 s",
                "62.5     | KELVIN_PER_WATT | 62.5 K/W  | 62.5 K/W",
                "1500     | AMPERE_SQUARED_SECOND | 1500 A²s | 1500 A²s",
                "0.03     | JOULE           | 30 mJ     | 30 mJ",
                "60       | GRAM            | 60 g      | 60 g",
                "0.0025   | METRE           | 2.5 mm    | 2.5 mm",
                "0.82     | SQUARE_MILLIMETRE | 0.82 mm² | 0.82 mm²",
                "25       | CELSIUS         | 25 °C     | 25 °C",
                "0.4      | RATIO           | 40 %      | 40 %",
                "1        | RATIO           | 100 %     | 100 %",
                "1.5      | RATIO           | × 1.5     | x1.5",
                "0        | VOLT            | 0 V       | 0 V",
            })
    void printsAsARepairerSaysIt(double si, Unit unit, String printed, String typed) {
        Quantity quantity = new Quantity(si, unit);

        assertThat(Notation.format(quantity)).isEqualTo(printed);
        assertThat(Notation.typed(quantity)).isEqualTo(typed);
    }

    @ParameterizedTest
    @CsvSource({
        "4712,   3, 4.71 kΩ",
        "4712,   2, 4.7 kΩ",
        "4700,   4, 4.7 kΩ",
        "999.96, 4, 1 kΩ",
        "999.94, 4, 999.9 Ω",
        "1.005,  3, 1 Ω",
        "12345,  2, 12 kΩ",
        "123456, 1, 100 kΩ"
    })
    void roundsBeforeItChoosesThePrefix(double ohms, int digits, String printed) {
        // 1.005 lies below its decimal as a double, so that it rounds down
        assertThat(Notation.format(new Quantity(ohms, Unit.OHM), digits)).isEqualTo(printed);
    }

    // Codes as in IEC 60062, with the small k of the bench.
    @ParameterizedTest
    @CsvSource({
        "0.47,    OHM,   0R47",
        "4.7,     OHM,   4R7",
        "47,      OHM,   47R",
        "470,     OHM,   470R",
        "4700,    OHM,   4k7",
        "10000,   OHM,   10k",
        "47300,   OHM,   47k3",
        "1500000, OHM,   1M5",
        "4.7e-12, FARAD, 4p7",
        "4.7e-9,  FARAD, 4n7",
        "4.7e-6,  FARAD, 4u7",
        "0.01,    FARAD, 10m",
        "1.5,     FARAD, 1F5"
    })
    void printsTheLetterAndDigitCode(double si, Unit unit, String code) {
        assertThat(Notation.formatCode(new Quantity(si, unit))).isEqualTo(code);
    }

    @Test
    void onlyOhmsAndFaradsHaveACode() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Notation.formatCode(new Quantity(5.1, Unit.VOLT)))
                .withMessage("only ohms and farads have a code: 5.1 V");
    }

    @ParameterizedTest
    @EnumSource(Unit.class)
    void everyPreferredValueInEveryDecadeReadsBackAsTheSameDouble(Unit unit) throws NotationException {
        for (double step : PreferredValues.E96.decade()) {
            for (int power = -15; power <= 9; power++) {
                Quantity quantity = new Quantity(Double.parseDouble(step + "e" + power), unit);

                assertThat(Notation.parse(Notation.format(quantity), unit)).isEqualTo(quantity);
                assertThat(Notation.parse(Notation.typed(quantity), unit)).isEqualTo(quantity);
            }
        }
    }

    @ParameterizedTest
    @EnumSource(
            value = Unit.class,
            names = {"OHM", "FARAD"})
    void everyPreferredValueReadsBackFromItsCode(Unit unit) throws NotationException {
        for (double step : PreferredValues.E96.decade()) {
            for (int power = -12; power <= 9; power++) {
                Quantity quantity = new Quantity(Double.parseDouble(step + "e" + power), unit);

                assertThat(Notation.parse(Notation.formatCode(quantity), unit)).isEqualTo(quantity);
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Unit.class)
    void anyDoubleReadsBackAsItself(Unit unit) throws NotationException {
        Random random = new Random(1978);
        for (int i = 0; i < 2000; i++) {
            double si = Double.longBitsToDouble(random.nextLong());
            if (Double.isFinite(si) && Math.abs(si) > 1e-290) {
                Quantity quantity = new Quantity(si, unit);

                assertThat(Notation.parse(Notation.format(quantity), unit)).isEqualTo(quantity);
            }
        }
    }
}
