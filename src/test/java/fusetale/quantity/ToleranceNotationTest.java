package fusetale.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ToleranceNotationTest {
    private static final Tolerance FALLBACK = new Tolerance(-0.07, 0.07);

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "±10 %        | -0.1   | 0.1",
                "+-10%        | -0.1   | 0.1",
                "+/-10 %      | -0.1   | 0.1",
                "10 %         | -0.1   | 0.1",
                "±2,5 %       | -0.025 | 0.025",
                "-20..+50 %   | -0.2   | 0.5",
                "\u221220\u2026+50 % | -0.2 | 0.5",
                "-20/+50 %    | -0.2   | 0.5",
                "+50/-20 %    | -0.2   | 0.5",
                "-10 % +100 % | -0.1   | 1",
                "0..+75 %     | 0      | 0.75",
            })
    void readsTolerances(String text, double low, double high) throws NotationException {
        assertThat(Notation.parseTolerance(text)).isEqualTo(new Tolerance(low, high));
    }

    // Letters of IEC 60062, from memory; F, G, J, K and M are also common practice on parts.
    @ParameterizedTest
    @CsvSource({
        "B, -0.001,  0.001",
        "C, -0.0025, 0.0025",
        "D, -0.005,  0.005",
        "F, -0.01,   0.01",
        "G, -0.02,   0.02",
        "H, -0.03,   0.03",
        "J, -0.05,   0.05",
        "K, -0.1,    0.1",
        "M, -0.2,    0.2",
        "N, -0.3,    0.3",
        "Q, -0.1,    0.3",
        "T, -0.1,    0.5",
        "S, -0.2,    0.5",
        "Z, -0.2,    0.8",
    })
    void readsToleranceLetters(String letter, double low, double high) throws NotationException {
        assertThat(Notation.parseTolerance(letter)).isEqualTo(new Tolerance(low, high));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "10          | '10' is no tolerance: write '±10 %' or '-20..+50 %'",
                "''          | nothing is written where a tolerance is expected: write '±10 %' or '-20..+50 %'",
                "+50 %       | '+50 %' is no tolerance: write '±10 %' or '-20..+50 %'",
                "± 5 ohm     | '± 5 ohm' is no tolerance: write '±10 %' or '-20..+50 %'",
                "+20..+50 %  | '+20..+50 %' is no tolerance: the lower end lies between -100 % and 0, the upper end is 0 or more, as in '-20..+50 %'",
                "-150..+10 % | '-150..+10 %' is no tolerance: the lower end lies between -100 % and 0, the upper end is 0 or more, as in '-20..+50 %'",
            })
    void tellsHowAToleranceIsWritten(String text, String message) {
        NotationException refusal = catchThrowableOfType(NotationException.class, () -> Notation.parseTolerance(text));

        assertThat(refusal).hasMessage(message);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "8 ohm ±10 %        | OHM   | 8       | -0.1  | 0.1",
                "8 ohm +-5%         | OHM   | 8       | -0.05 | 0.05",
                "8 ohm 5 %          | OHM   | 8       | -0.05 | 0.05",
                "5 mohm ±60 %       | OHM   | 0.005   | -0.6  | 0.6",
                "4k7 J              | OHM   | 4700    | -0.05 | 0.05",
                "4K7J               | OHM   | 4700    | -0.05 | 0.05",
                "4700 uF -20..+50 % | FARAD | 4700e-6 | -0.2  | 0.5",
                "4700uF-20..+50%    | FARAD | 4700e-6 | -0.2  | 0.5",
                "15.5 V ±10 %       | VOLT  | 15.5    | -0.1  | 0.1",
                "12 % ±10 %         | RATIO | 0.12    | -0.1  | 0.1",
                // a letter that belongs to the value is no tolerance
                "10 K               | OHM   | 10000   | -0.07 | 0.07",
                "8 ohm              | OHM   | 8       | -0.07 | 0.07",
                "12 %               | RATIO | 0.12    | -0.07 | 0.07",
            })
    void readsAValueWithItsTolerance(String text, Unit unit, double si, double low, double high)
            throws NotationException {
        assertThat(Notation.parseToleranced(text, unit, FALLBACK))
                .isEqualTo(new Toleranced(new Quantity(si, unit), new Tolerance(low, high)));
    }

    @Test
    void aTolerancedValueWithoutUnitIsRefusedAsAnyOther() {
        NotationException refusal = catchThrowableOfType(
                NotationException.class, () -> Notation.parseToleranced("8 ±5 %", Unit.OHM, FALLBACK));

        assertThat(refusal).hasMessage("'8' has no unit: write '8 ohm' or '8R'");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "110..126 V          | VOLT   | 110    | 126",
                "110 V..126 V        | VOLT   | 110    | 126",
                "110 \u2026 126 V    | VOLT   | 110    | 126",
                "110 to 126 V        | VOLT   | 110    | 126",
                "-5..+5 V            | VOLT   | -5     | 5",
                "1.5..2.5 mA         | AMPERE | 0.0015 | 0.0025",
                "500 mA..2.5 A       | AMPERE | 0.5    | 2.5",
                "4k7..10k            | OHM    | 4700   | 10000",
            })
    void readsRanges(String text, Unit unit, double low, double high) throws NotationException {
        assertThat(Notation.parseSpan(text, unit))
                .isEqualTo(new Span(new Quantity(low, unit), new Quantity(high, unit)));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "126..110 V | '126..110 V' has its ends in the wrong order: write the lower one first",
                "120 V      | '120 V' is no range: write, for example, '110..126 V'",
                "110..126   | '126' has no unit: write '126 V'",
            })
    void tellsHowARangeIsWritten(String text, String message) {
        NotationException refusal =
                catchThrowableOfType(NotationException.class, () -> Notation.parseSpan(text, Unit.VOLT));

        assertThat(refusal).hasMessage(message);
    }

    @ParameterizedTest
    @CsvSource({"109.9, false", "110, true", "126, true", "126.1, false"})
    void aSpanContainsItsEnds(double volts, boolean inside) throws NotationException {
        Span mains = Notation.parseSpan("110..126 V", Unit.VOLT);

        assertThat(mains.contains(new Quantity(volts, Unit.VOLT))).isEqualTo(inside);
    }

    @Test
    void aSpanOfTwoUnitsIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Span(new Quantity(1, Unit.VOLT), new Quantity(2, Unit.AMPERE)))
                .withMessage("no span from 1 V to 2 A");
    }

    @ParameterizedTest
    @CsvSource({"±10 %", "±2.5 %", "-20..+50 %", "0..+75 %", "±0 %", "-10..+100 %"})
    void printsAToleranceAsItIsRead(String text) throws NotationException {
        assertThat(Notation.format(Notation.parseTolerance(text))).isEqualTo(text);
    }

    @Test
    void printsAValueWithItsTolerance() throws NotationException {
        Toleranced coil = Notation.parseToleranced("8 ohm +-10%", Unit.OHM, FALLBACK);

        assertThat(Notation.format(coil)).isEqualTo("8 Ω ±10 %");
    }

    @Test
    void printsARangeAsItIsRead() throws NotationException {
        Span mains = Notation.parseSpan("110..126 V", Unit.VOLT);

        assertThat(Notation.format(mains)).isEqualTo("110 V..126 V");
    }
}
