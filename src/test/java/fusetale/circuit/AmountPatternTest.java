package fusetale.circuit;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.quantity.Notation;
import fusetale.quantity.NotationException;
import fusetale.quantity.Tolerance;
import fusetale.quantity.Unit;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The patterns of the JSON Schema take what the notation takes, unit by unit, and nothing else. */
class AmountPatternTest {
    private static final List<String> NUMBERS =
            List.of("5", "12.6", "0.47", ".5", "1e3", "3.8e-8", "10 000", "1,5", "-100");
    private static final List<String> TAILS = List.of(
            "",
            " V",
            "V",
            " kV",
            " mV",
            " volts",
            " A",
            " mA",
            " uA",
            " nA",
            " fA",
            " amps",
            " ohm",
            " Ω",
            " kohm",
            " mohm",
            " Mohm",
            " Gohm",
            "R",
            "k",
            "M",
            "m",
            "u",
            "n",
            "p",
            " F",
            " uF",
            " µF",
            " μF",
            " nF",
            " pF",
            " H",
            " mH",
            " W",
            " mW",
            " Hz",
            " kHz",
            " s",
            " ms",
            " °C",
            " K/W",
            " A²s",
            " A2s",
            " J",
            " mJ",
            " J/K",
            " g",
            " kg",
            " mm",
            " um",
            " mm²",
            " mm2",
            " dB",
            " %",
            "%",
            " X",
            " ohms ohm");
    private static final List<String> CODES =
            List.of("4k7", "4K7", "0R47", "R47", "4u7", "4n7", "5V1", "2A5", "k", "R", "4k7k", "x1.5");

    @ParameterizedTest
    @EnumSource(Unit.class)
    void patternTakesWhatTheNotationTakes(Unit unit) {
        Pattern pattern = Pattern.compile(AmountPattern.amount(unit, true));

        assertThat(NUMBERS)
                .allSatisfy(number -> assertThat(TAILS)
                        .allSatisfy(tail -> assertThat(
                                        pattern.matcher(number + tail).find())
                                .as("'%s' in %s", number + tail, unit.words())
                                .isEqualTo(reads(number + tail, unit))));
        assertThat(CODES)
                .allSatisfy(code -> assertThat(pattern.matcher(code).find())
                        .as("'%s' in %s", code, unit.words())
                        .isEqualTo(reads(code, unit)));
    }

    private static boolean reads(String text, Unit unit) {
        try {
            return Double.isFinite(Notation.parse(text, unit).si());
        } catch (NotationException refused) {
            return false;
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "±5 %",
                "±5%",
                "+-5 %",
                "+/-5 %",
                "5 %",
                "-20..+50 %",
                "-20/+50 %",
                "J",
                "5",
                "±5",
                "5 ohm",
                "",
                "±x %"
            })
    void patternTakesTheTolerancesThatTheNotationTakes(String text) {
        assertThat(Pattern.compile(AmountPattern.tolerance()).matcher(text).find())
                .isEqualTo(readsTolerance(text));
    }

    private static boolean readsTolerance(String text) {
        try {
            return Notation.parseTolerance(text) != null;
        } catch (NotationException refused) {
            return false;
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "8 ohm",
                "8 ohm ±10 %",
                "8 ohm -20..+50 %",
                "4k7 J",
                "4k7 ±5%",
                "8 ±10 %",
                "8 V ±10 %",
                "8 ohm 10",
                "±10 %"
            })
    void patternTakesTheTolerancesBehindValuesThatTheNotationTakes(String text) {
        assertThat(Pattern.compile(AmountPattern.amountWithTolerance(Unit.OHM, false))
                        .matcher(text)
                        .find())
                .isEqualTo(readsBoth(text));
    }

    private static boolean readsBoth(String text) {
        try {
            return Notation.parseToleranced(text, Unit.OHM, Tolerance.EXACT).si() > 0;
        } catch (NotationException refused) {
            return false;
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"110..126 V", "110 V..126 V", "110 to 126 V", "110..126", "110 V", "110..126 A", "0.1..0.2 kV"})
    void patternTakesTheRangesThatTheNotationTakes(String text) {
        assertThat(Pattern.compile(AmountPattern.span(Unit.VOLT)).matcher(text).find())
                .isEqualTo(readsRange(text));
    }

    private static boolean readsRange(String text) {
        try {
            return Notation.parseSpan(text, Unit.VOLT).low().si() > 0;
        } catch (NotationException refused) {
            return false;
        }
    }
}
