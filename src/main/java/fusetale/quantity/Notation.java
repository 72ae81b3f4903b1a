package fusetale.quantity;

import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The way values are written at the bench, read and printed.
 *
 * <p>Read: a number, then a prefix and unit ({@code 1.2 kV}, {@code 0.47 ohm}, {@code 10000 uF}, {@code 3.8e-8 A}), or
 * the letter-and-digit code of IEC 60062, in which a letter takes the place of the decimal point ({@code 4k7}, {@code
 * 0R47}, {@code 4u7}); by common practice also {@code 5V1} and {@code 2A5}. Decimal point or comma; a space may part
 * groups of three digits; a comma before exactly three digits is refused, for it may part thousands. {@code u}, {@code µ}
 * and {@code μ} are micro; {@code ohm}, {@code Ω} and {@code R} are ohms; {@code K} and {@code U} are taken for k and u,
 * as schematics lettered in capitals have them; all other prefixes are told apart by case, as SI does. Ratios are written
 * {@code 12 %} or {@code × 1.5}. Nothing depends on the locale.
 *
 * <p>Printed: a prefix such that one to three digits stand before the point, but capacitances in {@code pF}, {@code nF}
 * and, up to a farad, {@code μF} ({@code 10000 μF}, as printed on the can). Micro is U+03BC and the ohm U+03A9; {@link
 * #typed} keeps to what a keyboard has. Minus is a hyphen. What is printed in full reads back as the same double.
 */
public final class Notation {
    private static final Pattern TRAILING_TOLERANCE = Pattern.compile(
            "(.*?\\S)\\s*((?:±|\\+-|\\+/-).*|(?<=[\\sa-zA-Z])[-+]?\\d[\\d.,]*\\s*%?\\s*(?:\\.\\.|/)\\s*[-+]?\\d[\\d.,]*\\s*%"
                    + "|(?<=\\s)\\d[\\d.,]*\\s*%)");
    private static final Pattern TRAILING_LETTER = Pattern.compile("(.*\\S)\\s*([A-Z])");
    private static final Pattern ENDS = Pattern.compile("(.*?\\S)\\s*(?:\\.\\.|\\bto\\b)\\s*(.+)");
    private static final Pattern BARE = Pattern.compile("[-+]?[\\d.,]*\\d\\.?(?:[eE][-+]?\\d+)?");
    private static final Pattern UNIT_BEHIND = Pattern.compile("[-+]?[\\d.,]*\\d\\.?(?:[eE][-+]?\\d+)?\\s*(\\D+)");

    private Notation() {}

    /**
     * Reads a quantity.
     *
     * @throws NotationException where it is none, or none in {@code expected}; a bare number is none
     */
    public static Quantity parse(String text, Unit expected) throws NotationException {
        return new QuantityReader(text, expected).read();
    }

    /**
     * Reads a pure number, such as a gain or an ideality: digits, decimal point or comma, power of ten, no unit.
     *
     * @throws NotationException where it is none
     */
    public static double parseNumber(String text) throws NotationException {
        double number = new QuantityReader(text, Unit.RATIO).bareNumber().doubleValue();
        if (!Double.isFinite(number)) {
            throw new NotationException(
                    NotationException.Kind.OUT_OF_BOUNDS, text, "'" + text + "' is too large to compute with");
        }
        return number;
    }

    /**
     * Reads a tolerance: {@code ±10 %}, {@code +-10%}, {@code 10 %}, {@code -20..+50 %}, {@code -20/+50 %}, or a letter of
     * IEC 60062 ({@code F} 1 %, {@code G} 2 %, {@code J} 5 %, {@code K} 10 %, {@code M} 20 %, {@code S} −20/+50 %).
     *
     * @throws NotationException where it is none
     */
    public static Tolerance parseTolerance(String text) throws NotationException {
        return ToleranceReader.read(text);
    }

    /**
     * Reads a quantity that may have its tolerance behind it: {@code 8 ohm ±10 %}, {@code 4700 uF -20..+50 %}, {@code
     * 4k7 J}.
     *
     * @param fallback the tolerance where none is written
     * @throws NotationException where either cannot be read
     */
    public static Toleranced parseToleranced(String text, Unit expected, Tolerance fallback) throws NotationException {
        String plain = Lettering.plain(text);
        Matcher tolerance = TRAILING_TOLERANCE.matcher(plain);
        if (tolerance.matches()) {
            return new Toleranced(parse(tolerance.group(1), expected), parseTolerance(tolerance.group(2)));
        }
        try {
            return new Toleranced(parse(text, expected), fallback);
        } catch (NotationException asAWhole) {
            Matcher letter = TRAILING_LETTER.matcher(plain);
            if (!letter.matches()) {
                throw asAWhole;
            }
            try {
                return new Toleranced(parse(letter.group(1), expected), parseTolerance(letter.group(2)));
            } catch (NotationException inParts) {
                throw asAWhole;
            }
        }
    }

    /**
     * Reads a range: {@code 110..126 V}, {@code 110 V..126 V}, {@code 110 to 126 V}. A unit behind the upper end stands
     * for both.
     *
     * @throws NotationException where it is none, or its ends are in the wrong order
     */
    public static Span parseSpan(String text, Unit expected) throws NotationException {
        Matcher ends = ENDS.matcher(Lettering.plain(text));
        if (!ends.matches()) {
            throw new NotationException(
                    NotationException.Kind.NOT_A_NUMBER,
                    text,
                    "'" + text.strip() + "' is no range: write, for example, '110..126 " + expected.habit() + "'");
        }
        Quantity high = parse(ends.group(2), expected);
        String lower = ends.group(1);
        Matcher unit = UNIT_BEHIND.matcher(ends.group(2));
        if (BARE.matcher(lower).matches() && unit.matches()) {
            lower = lower + " " + unit.group(1);
        }
        Quantity low = parse(lower, expected);
        if (low.si() > high.si()) {
            throw new NotationException(
                    NotationException.Kind.OUT_OF_BOUNDS,
                    text,
                    "'" + text.strip() + "' has its ends in the wrong order: write the lower one first");
        }
        return new Span(low, high);
    }

    /** In full, so that it reads back as the same double: {@code 4.7 kΩ}, {@code 10000 μF}, {@code 40 %}, {@code × 1.5}. */
    public static String format(Quantity quantity) {
        return QuantityPrinter.print(QuantityPrinter.shortest(quantity.si()), quantity.unit(), false);
    }

    /**
     * Rounded, without zeros at the end: 4712 Ω in three digits is {@code 4.71 kΩ}.
     *
     * @param significantDigits 1 or more
     */
    public static String format(Quantity quantity, int significantDigits) {
        return QuantityPrinter.print(QuantityPrinter.rounded(quantity.si(), significantDigits), quantity.unit(), false);
    }

    /** {@code ±10 %} or {@code -20..+50 %}. */
    public static String format(Tolerance tolerance) {
        BigDecimal low = QuantityPrinter.shortest(tolerance.lowRatio());
        BigDecimal high = QuantityPrinter.shortest(tolerance.highRatio());
        if (low.negate().compareTo(high) == 0) {
            return "±" + QuantityPrinter.print(high, Unit.RATIO, false);
        }
        return perCent(low) + "..+" + perCent(high) + " %";
    }

    /** {@code 8 Ω ±10 %}. */
    public static String format(Toleranced toleranced) {
        return format(toleranced.nominal()) + " " + format(toleranced.tolerance());
    }

    /** {@code 110 V..126 V}. */
    public static String format(Span span) {
        return format(span.low()) + ".." + format(span.high());
    }

    /** As {@link #format(Quantity)}, in what a keyboard has: {@code 4.7 kohm}, {@code 10000 uF}, {@code x1.5}. */
    public static String typed(Quantity quantity) {
        return QuantityPrinter.print(QuantityPrinter.shortest(quantity.si()), quantity.unit(), true);
    }

    /**
     * The letter-and-digit code of IEC 60062: {@code 4k7}, {@code 0R47}, {@code 4u7}.
     *
     * @param quantity in ohms or farads
     */
    public static String formatCode(Quantity quantity) {
        if (quantity.unit() != Unit.OHM && quantity.unit() != Unit.FARAD) {
            throw new IllegalArgumentException("only ohms and farads have a code: " + quantity);
        }
        return QuantityPrinter.code(QuantityPrinter.shortest(quantity.si()), quantity.unit());
    }

    private static String perCent(BigDecimal ratio) {
        return ratio.signum() == 0
                ? "0"
                : ratio.movePointRight(2).stripTrailingZeros().toPlainString();
    }
}
