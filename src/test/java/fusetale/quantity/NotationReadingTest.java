package fusetale.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import fusetale.quantity.NotationException.Kind;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class NotationReadingTest {
    // Values as the resistor and capacitor codes of IEC 60062 (BS 1852 before it) give them: a letter in place of the
    // decimal point, R for ohms, K and M, p, n, μ, m and F for farads.
    @ParameterizedTest
    @CsvSource({
        "R47,   OHM,   0.47",
        "0R47,  OHM,   0.47",
        "4R7,   OHM,   4.7",
        "470R,  OHM,   470",
        "4K7,   OHM,   4700",
        "4k7,   OHM,   4700",
        "47K,   OHM,   47000",
        "47K3,  OHM,   47300",
        "470K,  OHM,   470000",
        "4M7,   OHM,   4700000",
        "1M5,   OHM,   1500000",
        "1G,    OHM,   1e9",
        "p47,   FARAD, 0.47e-12",
        "4p7,   FARAD, 4.7e-12",
        "4n7,   FARAD, 4.7e-9",
        "100n,  FARAD, 100e-9",
        "4u7,   FARAD, 4.7e-6",
        "4μ7,   FARAD, 4.7e-6",
        "10m,   FARAD, 10e-3",
        "1F5,   FARAD, 1.5",
    })
    void readsTheLetterAndDigitCode(String text, Unit unit, double si) throws NotationException {
        assertThat(Notation.parse(text, unit)).isEqualTo(new Quantity(si, unit));
    }

    // The prefixes and their powers of ten: SI Brochure, 9th edition, table 7.
    @ParameterizedTest
    @CsvSource({
        "37.8 fA,    AMPERE,  37.8e-15",
        "4.7 pF,     FARAD,   4.7e-12",
        "37.8 nA,    AMPERE,  37.8e-9",
        "10000 uF,   FARAD,   0.01",
        "25 mH,      HENRY,   0.025",
        "1.2 kV,     VOLT,    1200",
        "10 MHz,     HERTZ,   10e6",
        "1 Gohm,     OHM,     1e9",
        "0.47 ohm,   OHM,     0.47",
        "5 A,        AMPERE,  5",
        "3.8e-8 A,   AMPERE,  3.8e-8",
        "1.5E3 W,    WATT,    1500",
        "20 ms,      SECOND,  0.02",
        "62.5 K/W,   KELVIN_PER_WATT, 62.5",
        "62.5 °C/W,  KELVIN_PER_WATT, 62.5",
        "60 A²s,     AMPERE_SQUARED_SECOND, 60",
        "60 A2s,     AMPERE_SQUARED_SECOND, 60",
        "62 dB,      DECIBEL, 62",
        "30 mJ,      JOULE, 0.03",
        "1.2 J/K,    JOULE_PER_KELVIN, 1.2",
        "60 g,       GRAM, 60",
        "1.5 kg,     GRAM, 1500",
        "2.5 mm,     METRE, 0.0025",
        "35 um,      METRE, 35e-6",
        "0.82 mm²,   SQUARE_MILLIMETRE, 0.82",
        "0.82 mm2,   SQUARE_MILLIMETRE, 0.82",
        "25 °C,      CELSIUS, 25",
        "25 C,       CELSIUS, 25",
        "-40 °C,     CELSIUS, -40",
        "12 %,       RATIO,   0.12",
        "40%,        RATIO,   0.4",
        "× 1.5,      RATIO,   1.5",
        "x1.5,       RATIO,   1.5",
        "1.5 ×,      RATIO,   1.5",
    })
    void readsPrefixAndUnit(String text, Unit unit, double si) throws NotationException {
        assertThat(Notation.parse(text, unit)).isEqualTo(new Quantity(si, unit));
    }

    // Common practice at the bench: what is printed on cans, typed on keyboards and lettered on schematics.
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "8 \u03a9     | OHM    | 8",
                "8 \u2126     | OHM    | 8",
                "8 ohms       | OHM    | 8",
                "8R           | OHM    | 8",
                "8 kohm       | OHM    | 8000",
                "4k7 ohm      | OHM    | 4700",
                "4k7\u03a9    | OHM    | 4700",
                "10 K         | OHM    | 10000",
                "4.7 \u00b5F  | FARAD  | 4.7e-6",
                "4.7 \u03bcF  | FARAD  | 4.7e-6",
                "10 UF        | FARAD  | 10e-6",
                "4u7F         | FARAD  | 4.7e-6",
                "1,5 A        | AMPERE | 1.5",
                "0,470 ohm    | OHM    | 0.47",
                "\u221212 V   | VOLT   | -12",
                "3.8e\u22128 A | AMPERE | 3.8e-8",
                "10 000 uF    | FARAD  | 0.01",
                "10\u202f000\u00a0uF | FARAD | 0.01",
                ".47 ohm      | OHM    | 0.47",
                "+5 V         | VOLT   | 5",
                "5V1          | VOLT   | 5.1",
                "2A5          | AMPERE | 2.5",
                "12 volts     | VOLT   | 12",
            })
    void readsTheSpellingsOfTheTrade(String text, Unit unit, double si) throws NotationException {
        assertThat(Notation.parse(text, unit)).isEqualTo(new Quantity(si, unit));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                // no unit
                "47     | OHM   | NO_UNIT       | '47' has no unit: write '47 ohm' or '47R'",
                "4.7    | OHM   | NO_UNIT       | '4.7' has no unit: write '4.7 ohm' or '4R7'",
                "47     | VOLT  | NO_UNIT       | '47' has no unit: write '47 V'",
                "47     | FARAD | NO_UNIT       | '47' has no unit: write, for example, '47 uF'",
                "1.5    | RATIO | NO_UNIT       | '1.5' is neither a per cent nor a factor: write '1.5 %' or '× 1.5'",
                "4k7    | VOLT  | NO_UNIT       | '4k7' has no unit: write '4.7 kV' if that is meant",
                "10k    | VOLT  | NO_UNIT       | '10k' has no unit: write '10 kV' if that is meant",
                // another unit
                "5 A    | OHM   | WRONG_UNIT    | '5 A' is in amps; ohms are expected, such as '12 ohm'",
                "5V1    | OHM   | WRONG_UNIT    | '5V1' is in volts; ohms are expected, such as '12 ohm'",
                "2R2    | VOLT  | WRONG_UNIT    | '2R2' is in ohms; volts are expected, such as '12 V'",
                "10 %   | OHM   | WRONG_UNIT    | '10 %' is a ratio; ohms are expected, such as '12 ohm'",
                "62 dB  | RATIO | WRONG_UNIT    | '62 dB' is in decibels; a ratio is expected, such as '12 %'",
                // no unit known
                "5 foo  | OHM   | UNKNOWN_UNIT  | '5 foo' ends in 'foo', which is no unit taken here; ohms are expected, such as '12 ohm'",
                "10 MF  | FARAD | UNKNOWN_UNIT  | '10 MF' ends in 'MF', which is no unit taken here; farads are expected, such as '12 uF'",
                // two readings a thousand or more apart
                "10,000 uF | FARAD | AMBIGUOUS  | '10,000 uF' can be read in two ways: write '10000 uF' or '10.000 uF'",
                "1,234.5 V | VOLT | NOT_A_NUMBER | '1,234.5 V' has commas that part thousands: write '1234.5 V'",
                "1,234,567 ohm | OHM | NOT_A_NUMBER | '1,234,567 ohm' has commas that part thousands: write '1234567 ohm'",
                "4m7    | OHM   | AMBIGUOUS     | '4m7' can be read in two ways: write '4.7 mohm' for thousandths or '4.7 Mohm' for millions of an ohm",
                "47m    | OHM   | AMBIGUOUS     | '47m' can be read in two ways: write '47 mohm' for thousandths or '47 Mohm' for millions of an ohm",
                // no number
                "''     | OHM   | EMPTY         | nothing is written where ohms are expected, such as '12 ohm'",
                "abc    | OHM   | NOT_A_NUMBER  | 'abc' is no number with a unit; ohms are expected, such as '12 ohm'",
                "NaN V  | VOLT  | NOT_A_NUMBER  | 'NaN V' is no number with a unit; volts are expected, such as '12 V'",
                // nothing to compute with
                "1e999 V  | VOLT | OUT_OF_BOUNDS | '1e999 V' is too large or too small to compute with",
                "1e-999 V | VOLT | OUT_OF_BOUNDS | '1e-999 V' is too large or too small to compute with",
            })
    void tellsWhatToWriteInstead(String text, Unit unit, Kind kind, String message) {
        NotationException refusal = catchThrowableOfType(NotationException.class, () -> Notation.parse(text, unit));

        assertThat(refusal)
                .hasMessage(message)
                .returns(kind, NotationException::kind)
                .returns(text, NotationException::found);
    }

    @Test
    void takesNoPrefixBeforeAmpereSquaredSeconds() {
        // SI Brochure, 9th edition, section 3: the prefix would be squared with the ampere
        NotationException refusal = catchThrowableOfType(
                NotationException.class, () -> Notation.parse("5 mA²s", Unit.AMPERE_SQUARED_SECOND));

        assertThat(refusal.kind()).isEqualTo(Kind.UNKNOWN_UNIT);
    }

    @Test
    void refusesATextOfAThousandDigitsAtOnce() {
        NotationException refusal = catchThrowableOfType(
                NotationException.class, () -> Notation.parse("9".repeat(1_000_000) + " V", Unit.VOLT));

        assertThat(refusal.kind()).isEqualTo(Kind.NOT_A_NUMBER);
    }

    @ParameterizedTest
    @EnumSource(Unit.class)
    void aUnitReadsItsOwnSymbol(Unit unit) throws NotationException {
        String symbol = unit == Unit.RATIO ? "%" : unit.symbol();

        assertThat(Unit.parse(symbol)).isEqualTo(unit);
    }

    @Test
    void aSymbolThatIsNoUnitIsRefusedWithTheKnownOnes() {
        NotationException refusal = catchThrowableOfType(NotationException.class, () -> Unit.parse("furlong"));

        assertThat(refusal)
                .hasMessage("'furlong' is no unit known here; known are V, A, ohm, F, H, W, Hz, s, °C, K/W, A²s, J,"
                        + " J/K, g, m, mm², dB, %");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"2|2", "1.05|1.05", "1,05|1.05", "-3|-3", "1e3|1000"})
    void readsPureNumbers(String text, double number) throws NotationException {
        assertThat(Notation.parseNumber(text)).isEqualTo(number);
    }

    @Test
    void aPureNumberHasNoUnit() {
        NotationException refusal = catchThrowableOfType(NotationException.class, () -> Notation.parseNumber("2 V"));

        assertThat(refusal).hasMessage("'2 V' is not a plain number: write digits alone, such as '1.5'");
    }

    @Test
    void sixtyDecibelsAreAThousandfoldVoltage() {
        // IEC 60027-3: 20 lg(1000) dB = 60 dB
        assertThat(new Quantity(60, Unit.DECIBEL).voltageRatio()).isEqualTo(1000);
    }

    @ParameterizedTest
    @CsvSource({"tr-TR", "ar-EG", "de-DE"})
    void readsAndPrintsAlikeInEveryLocale(String tag) throws NotationException {
        // Turkish has a dotted capital I, Egyptian Arabic its own digits, German a decimal comma
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag(tag));

            String printed = Notation.format(Notation.parse("4.75 KOHM", Unit.OHM));

            assertThat(printed).isEqualTo("4.75 kΩ");
        } finally {
            Locale.setDefault(before);
        }
    }
}
