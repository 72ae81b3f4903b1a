package fusetale.quantity;

import fusetale.quantity.NotationException.Kind;
import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads one number with its unit. Works on decimal digits throughout, so that 10 uF is 1e-5 and not nearly so. */
final class QuantityReader {
    private static final int LONGEST = 64;

    /** Sign, whole part (digits, or groups of three parted by spaces), fraction, power of ten, what follows. */
    private static final Pattern NUMBER = Pattern.compile(
            "([+-]?)((?:\\d{1,3}(?: \\d{3})+(?!\\d))|\\d*)(?:[.,](\\d*))?(?:[eE]([+-]?\\d{1,3})(?!\\d))?(.*)");

    /** A letter in place of the decimal point, the unit perhaps behind: 4k7, R47, 4u7F. Not an e: 1e5 is a number. */
    private static final Pattern CODE = Pattern.compile("([+-]?)(\\d*)([A-DF-Za-df-z])(\\d+) ?(\\D*)");

    private static final Pattern TIMES = Pattern.compile("[×xX*] ?(.*)|(.*?) ?[×xX*]");

    private static final Pattern THOUSANDS =
            Pattern.compile("([+-]?[1-9]\\d{0,2}),(\\d{3}(?:,\\d{3})*)(?:([^\\d,].*)|$)");

    private final String text;
    private final String plain;
    private final Unit expected;

    QuantityReader(String text, Unit expected) {
        this.text = text.strip();
        this.plain = Lettering.plain(text);
        this.expected = expected;
    }

    Quantity read() throws NotationException {
        if (plain.isEmpty()) {
            throw new NotationException(Kind.EMPTY, text, "nothing is written where " + wanted());
        }
        if (plain.length() > LONGEST) {
            throw refusal(Kind.NOT_A_NUMBER, "is too long for a number with a unit");
        }
        Matcher code = CODE.matcher(plain);
        if (code.matches()) {
            Quantity coded = coded(code);
            if (coded != null) {
                return coded;
            }
        }
        Matcher times = TIMES.matcher(plain);
        if (expected == Unit.RATIO && times.matches()) {
            String factor = times.group(1) == null ? times.group(2) : times.group(1);
            return quantity(new QuantityReader(factor, expected).bareNumber(), 0);
        }
        return withUnit();
    }

    /** A pure number, without any unit. */
    BigDecimal bareNumber() throws NotationException {
        Matcher number = number();
        if (!number.group(5).isBlank()) {
            throw refusal(Kind.NOT_A_NUMBER, "is not a plain number: write digits alone, such as '1.5'");
        }
        return value(number);
    }

    /** Letter-and-digit code; null where the letter stands for no decimal point here. */
    private @Nullable Quantity coded(Matcher code) throws NotationException {
        String letter = Lettering.letter(code.group(3));
        String unit = code.group(5).strip();
        String digits = code.group(1) + (code.group(2).isEmpty() ? "0" : code.group(2)) + "." + code.group(4);
        boolean spelt = !unit.isEmpty() && expected.prefixExponent(letter + unit) != null;
        if (spelt || (unit.isEmpty() && expected.codeLetters().contains(letter))) {
            return quantity(new BigDecimal(digits), Lettering.exponent(letter));
        }
        if (!unit.isEmpty()) {
            return null;
        }
        if (Lettering.isPrefix(letter)) {
            throw prefixAlone(digits, letter);
        }
        for (Unit other : Unit.values()) {
            if (other.codeLetters().contains(letter)) {
                throw wrongUnit(other);
            }
        }
        return null;
    }

    private Quantity withUnit() throws NotationException {
        Matcher number = number();
        BigDecimal value = value(number);
        String unit = number.group(5).strip();
        if (unit.isEmpty()) {
            throw noUnit(written(number));
        }
        Integer exponent = expected.prefixExponent(unit);
        if (exponent != null) {
            return quantity(value, expected == Unit.RATIO ? -2 : exponent);
        }
        String letter = Lettering.letter(unit);
        if (unit.length() == 1 && expected.codeLetters().contains(letter)) {
            // 47k, 47R, 100n: the code with nothing behind its letter
            return quantity(value, Lettering.exponent(letter));
        }
        boolean loneLetter = Lettering.isPrefix(unit); // a lone m or G is a prefix that lacks its unit
        for (Unit other : Unit.values()) {
            boolean spelt =
                    other.prefixExponent(unit) != null && !(loneLetter && (other == Unit.METRE || other == Unit.GRAM));
            if (spelt || (unit.length() == 1 && other.onlyCodeLetter(letter))) {
                throw wrongUnit(other);
            }
        }
        if (Lettering.isPrefix(unit)) {
            throw prefixAlone(written(number), letter);
        }
        throw refusal(Kind.UNKNOWN_UNIT, "ends in '" + unit + "', which is no unit taken here; " + wanted());
    }

    private Matcher number() throws NotationException {
        Matcher thousands = THOUSANDS.matcher(plain);
        if (thousands.matches()) {
            String rest = thousands.group(3) == null ? "" : thousands.group(3);
            String digits = thousands.group(2).replace(",", "");
            String whole = "'" + thousands.group(1) + digits + rest + "'";
            // a second comma, or a point behind it: it parts thousands and nothing else
            boolean thousandsOnly = thousands.group(2).contains(",") || rest.startsWith(".");
            throw thousandsOnly
                    ? refusal(Kind.NOT_A_NUMBER, "has commas that part thousands: write " + whole)
                    : refusal(
                            Kind.AMBIGUOUS,
                            "can be read in two ways: write " + whole + " or '" + thousands.group(1) + "." + digits
                                    + rest + "'");
        }
        Matcher number = NUMBER.matcher(plain);
        if (!number.matches() || digits(number).isEmpty()) {
            throw refusal(Kind.NOT_A_NUMBER, "is no number with a unit; " + wanted());
        }
        return number;
    }

    private static BigDecimal value(Matcher number) {
        return new BigDecimal(written(number));
    }

    private static String written(Matcher number) {
        return number.group(1) + digits(number) + (number.group(4) == null ? "" : "e" + number.group(4));
    }

    private static String digits(Matcher number) {
        String whole = number.group(2).replace(" ", "");
        String fraction = number.group(3);
        if (fraction == null || fraction.isEmpty()) {
            return whole;
        }
        return (whole.isEmpty() ? "0" : whole) + "." + fraction;
    }

    private Quantity quantity(BigDecimal number, int powerOfTen) throws NotationException {
        double si = number.scaleByPowerOfTen(powerOfTen).doubleValue();
        if (!Double.isFinite(si) || (si == 0 && number.signum() != 0)) {
            throw refusal(Kind.OUT_OF_BOUNDS, "is too large or too small to compute with");
        }
        return new Quantity(si, expected);
    }

    private NotationException noUnit(String digits) {
        String advice = switch (expected) {
            case RATIO -> "is neither a per cent nor a factor: write '" + digits + " %' or '× " + digits + "'";
            case OHM -> "has no unit: write '" + digits + " ohm' or '" + Lettering.coded(digits, 'R') + "'";
            case FARAD, HENRY -> "has no unit: write, for example, '" + digits + " " + expected.habit() + "'";
            default -> "has no unit: write '" + digits + " " + expected.habit() + "'";
        };
        return refusal(Kind.NO_UNIT, advice);
    }

    private NotationException prefixAlone(String digits, String letter) {
        if (expected == Unit.OHM && letter.equals("m")) {
            // milli by SI, but many a schematic means megohms; IEC 60062 has no small m for resistors
            return refusal(
                    Kind.AMBIGUOUS,
                    "can be read in two ways: write '" + digits + " mohm' for thousandths or '" + digits
                            + " Mohm' for millions of an ohm");
        }
        if (expected.prefixes().contains(letter)) {
            return refusal(
                    Kind.NO_UNIT,
                    "has no unit: write '" + digits + " " + letter + expected.symbol() + "' if that is meant");
        }
        return refusal(Kind.NO_UNIT, "has no unit; " + wanted());
    }

    private NotationException wrongUnit(Unit other) {
        return refusal(Kind.WRONG_UNIT, "is " + (other == Unit.RATIO ? "" : "in ") + other.words() + "; " + wanted());
    }

    private String wanted() {
        return (expected == Unit.RATIO ? "a ratio is" : expected.words() + " are") + " expected, such as '12 "
                + expected.habit() + "'";
    }

    private NotationException refusal(Kind kind, String what) {
        return new NotationException(kind, text, "'" + text + "' " + what);
    }
}
