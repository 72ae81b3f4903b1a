package fusetale.explore;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Collections;
import java.util.NavigableMap;
import java.util.SortedMap;
import java.util.TreeMap;

/** Spans of time as a person says them. */
public final class Times {
    private static final double MINUTE = 60;
    private static final double HOUR = 3600;

    /** From here on two figures of seconds read as two minutes. */
    private static final double LONGEST_IN_SECONDS = 115;

    /** Times [s] a person counts in, for the marks of an axis, and how they are called. */
    private static final NavigableMap<Double, String> MARKS = marks();

    private Times() {}

    /** Times [s] within two that a person counts in, in order, with what they are called: {@code 10 s}, {@code 1 min}. */
    public static SortedMap<Double, String> marks(double least, double most) {
        return MARKS.subMap(least, true, most, true);
    }

    private static NavigableMap<Double, String> marks() {
        NavigableMap<Double, String> marks = new TreeMap<>();
        marks.put(0.001, "1 ms");
        marks.put(0.01, "10 ms");
        marks.put(0.1, "0.1 s");
        marks.put(1.0, "1 s");
        marks.put(10.0, "10 s");
        marks.put(MINUTE, "1 min");
        marks.put(10 * MINUTE, "10 min");
        marks.put(HOUR, "1 h");
        marks.put(8 * HOUR, "8 h");
        marks.put(24 * HOUR, "1 day");
        return Collections.unmodifiableNavigableMap(marks);
    }

    /** {@code 0.05 s}, {@code 12 s}, {@code 4 min}, {@code 2 h}: two figures. */
    public static String of(double seconds) {
        if (seconds < LONGEST_IN_SECONDS) {
            return figures(seconds) + " s";
        }
        return seconds < 2 * HOUR ? figures(seconds / MINUTE) + " min" : figures(seconds / HOUR) + " h";
    }

    /** {@code 0.05 to 0.8 s}, {@code 50 s to 4 min}; {@code 53 s} where two figures cannot tell them apart. */
    public static String between(double least, double most) {
        String low = of(least);
        String high = of(most);
        if (low.equals(high)) {
            return high;
        }
        String unit = high.substring(high.indexOf(' '));
        return (low.endsWith(unit) ? low.substring(0, low.length() - unit.length()) : low) + " to " + high;
    }

    private static String figures(double value) {
        return new BigDecimal(value)
                .round(new MathContext(2))
                .stripTrailingZeros()
                .toPlainString();
    }
}
