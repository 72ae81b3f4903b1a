package fusetale.explore;

import java.math.BigDecimal;
import java.math.MathContext;

/** Spans of time as a person says them. */
public final class Times {
    private static final double MINUTE = 60;
    private static final double HOUR = 3600;

    /** From here on two figures of seconds read as two minutes. */
    private static final double LONGEST_IN_SECONDS = 115;

    private Times() {}

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
