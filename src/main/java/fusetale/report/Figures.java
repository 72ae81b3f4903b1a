package fusetale.report;

import fusetale.bench.Reading;
import fusetale.explore.Compared;
import fusetale.quantity.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Figures as text: three digits that count, an SI prefix where it helps, a point for the decimals. */
final class Figures {
    /** What a display shows: sign, whole part, decimals, prefix with unit. */
    private static final Pattern DISPLAY = Pattern.compile("(-?)(\\d+)(?:\\.(\\d+))?\\s*(\\D*)");

    private static final String PREFIXES = "pnμm kMG";
    private static final int NO_PREFIX = 4;

    /** Less than this is rounding of the solver, whatever the unit. */
    private static final double NOTHING = 1e-10;

    private Figures() {}

    /** A pure number without trailing zeros, three digits at most. */
    static String plain(double value) {
        return new BigDecimal(value)
                .round(new MathContext(3))
                .stripTrailingZeros()
                .toPlainString();
    }

    /** {@code 4.70 kohm}, {@code 47.2 A}, {@code 0.00 V}. */
    static String of(double value, Unit unit) {
        if (Double.isInfinite(value)) {
            return "OL";
        }
        int thousand = Math.abs(value) < NOTHING ? 0 : (int) Math.floor(Math.log10(Math.abs(value) * 1.0005) / 3);
        // A repairer reads 0.58 V rather than 580 mV: volts and amperes keep their unit down to a hundredth.
        if (thousand < 0 && Math.abs(value) >= 0.01) {
            thousand = 0;
        }
        int index = Math.max(0, Math.min(PREFIXES.length() - 1, thousand + NO_PREFIX));
        double scaled = Math.abs(value) < NOTHING ? 0 : value / Math.pow(1000, index - NO_PREFIX);
        double size = Math.abs(scaled);
        int decimals = size >= 99.95 ? 0 : size >= 9.995 ? 1 : 2;
        String prefix = index == NO_PREFIX ? "" : PREFIXES.substring(index, index + 1);
        return String.format(Locale.ROOT, "%." + decimals + "f %s%s", scaled, prefix, unit.symbol())
                .trim();
    }

    /** {@code 0.050 to 0.80 s}, {@code 12 s or more}, in words a person says. */
    static String seconds(double value) {
        if (value < 1) {
            return String.format(Locale.ROOT, value < 0.1 ? "%.3f s" : "%.2f s", value);
        }
        if (value < 120) {
            return plain(Double.parseDouble(plain2(value))) + " s";
        }
        return value < 7200 ? plain2(value / 60) + " min" : plain2(value / 3600) + " h";
    }

    /** A value with the digits and prefix of a reading beside it, so that a column lines up. */
    static String like(Reading beside, double value) {
        Matcher shown = DISPLAY.matcher(beside.shows());
        if (Double.isInfinite(value)) {
            return "OL";
        }
        if (beside.overRange() || !shown.matches()) {
            return of(value, beside.check().function().unit());
        }
        String decimals = shown.group(3);
        String unit = shown.group(4).trim();
        String base = beside.check().function().unit().symbol();
        double scale = unit.length() > base.length() ? prefixScale(unit.charAt(0)) : 1;
        return String.format(
                Locale.ROOT, "%." + (decimals == null ? 0 : decimals.length()) + "f %s", value / scale, unit);
    }

    /** What healthy machines show of a reading, with the digits of the reading as built. */
    static String range(Compared row) {
        String low = like(row.asBuilt(), row.healthy().low());
        String high = like(row.asBuilt(), row.healthy().high());
        int space = low.indexOf(' ');
        boolean sameUnit = space > 0 && high.endsWith(low.substring(space));
        return low.equals(high) ? low : (sameUnit ? low.substring(0, space) : low) + " to " + high;
    }

    private static double prefixScale(char prefix) {
        int index = PREFIXES.indexOf(prefix == 'µ' || prefix == 'u' ? 'μ' : prefix);
        return index < 0 ? 1 : Math.pow(1000, index - NO_PREFIX);
    }

    private static String plain2(double value) {
        return new BigDecimal(value)
                .round(new MathContext(2))
                .stripTrailingZeros()
                .toPlainString();
    }
}
