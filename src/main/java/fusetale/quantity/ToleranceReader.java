package fusetale.quantity;

import fusetale.quantity.NotationException.Kind;
import java.math.BigDecimal;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads tolerances. */
final class ToleranceReader {
    /**
     * Letters for tolerances, IEC 60062, from memory. The symmetric ones are in per cent of nominal (for capacitors below
     * 10 pF the standard gives B to G another meaning, in picofarads, which no part of our machines needs).
     */
    private static final Map<String, Tolerance> LETTERS = Map.ofEntries(
            Map.entry("B", both("0.1")),
            Map.entry("C", both("0.25")),
            Map.entry("D", both("0.5")),
            Map.entry("F", both("1")),
            Map.entry("G", both("2")),
            Map.entry("H", both("3")),
            Map.entry("J", both("5")),
            Map.entry("K", both("10")),
            Map.entry("M", both("20")),
            Map.entry("N", both("30")),
            Map.entry("Q", new Tolerance(-0.1, 0.3)),
            Map.entry("T", new Tolerance(-0.1, 0.5)),
            Map.entry("S", new Tolerance(-0.2, 0.5)),
            Map.entry("Z", new Tolerance(-0.2, 0.8)));

    private static final String NUMBER = "(\\d+(?:[.,]\\d+)?|[.,]\\d+)";
    private static final Pattern BOTH_SIDES = Pattern.compile("(?:±|\\+-|\\+/-|)\\s*" + NUMBER + "\\s*%");
    private static final Pattern TWO_ENDS =
            Pattern.compile("([+-]?)\\s*" + NUMBER + "\\s*%?\\s*(?:\\.\\.|/|\\s|to)\\s*([+-]?)\\s*" + NUMBER + "\\s*%");

    private ToleranceReader() {}

    static Tolerance read(String text) throws NotationException {
        String plain = Lettering.plain(text);
        Tolerance letter = LETTERS.get(plain);
        if (letter != null) {
            return letter;
        }
        Matcher both = BOTH_SIDES.matcher(plain);
        if (both.matches()) {
            return tolerance(text, "-" + both.group(1), both.group(1));
        }
        Matcher ends = TWO_ENDS.matcher(plain);
        if (ends.matches()) {
            String one = ends.group(1) + ends.group(2);
            String two = ends.group(3) + ends.group(4);
            return one.startsWith("+") ? tolerance(text, two, one) : tolerance(text, one, two);
        }
        String advice = "write '±10 %' or '-20..+50 %'";
        if (plain.isEmpty()) {
            throw new NotationException(
                    Kind.EMPTY, text, "nothing is written where a tolerance is expected: " + advice);
        }
        throw refusal(text, Kind.NOT_A_NUMBER, "is no tolerance: " + advice);
    }

    private static Tolerance tolerance(String text, String lowPerCent, String highPerCent) throws NotationException {
        double low = ratio(lowPerCent);
        double high = ratio(highPerCent);
        if (!(low >= -1 && low <= 0 && high >= 0 && Double.isFinite(high))) {
            throw refusal(
                    text,
                    Kind.OUT_OF_BOUNDS,
                    "is no tolerance: the lower end lies between -100 % and 0, the upper end is 0 or more, as in '-20..+50 %'");
        }
        return new Tolerance(low, high);
    }

    private static double ratio(String perCent) {
        double ratio =
                new BigDecimal(perCent.replace(',', '.')).movePointLeft(2).doubleValue();
        return ratio == 0 ? 0 : ratio;
    }

    private static Tolerance both(String perCent) {
        return new Tolerance(-ratio(perCent), ratio(perCent));
    }

    private static NotationException refusal(String text, Kind kind, String what) {
        return new NotationException(kind, text, "'" + text.strip() + "' " + what);
    }
}
