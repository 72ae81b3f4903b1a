package fusetale.report;

import fusetale.bench.Climbing;
import fusetale.bench.Reading;
import fusetale.circuit.MeterFunction;
import fusetale.explore.Compared;
import fusetale.explore.Words;
import fusetale.quantity.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Figures as text: three digits that count, an SI prefix where it helps, a point for the decimals. */
public final class Figures {
    /** What a display shows: sign, whole part, decimals, prefix with unit. */
    private static final Pattern DISPLAY = Pattern.compile("(-?)(\\d+)(?:\\.(\\d+))?\\s*(\\D*)");

    /** What a display shows that still moves, in one unit. */
    private static final Pattern MOVING = Pattern.compile("^(\\S+) (\\S+) ([↑↓]) (\\S+) \\2$");

    private static final Words WORDS = Words.of(Figures.class);

    private static final String PREFIXES = "pnμm kMG";
    private static final int NO_PREFIX = 4;

    /** Less than this is rounding of the solver, whatever the unit. */
    private static final double NOTHING = 1e-10;

    /** What a meter shows where it cannot show a figure. */
    public static final String OVER_RANGE = "OL";

    private Figures() {}

    /** A pure number without trailing zeros, three digits at most. */
    public static String plain(double value) {
        return new BigDecimal(value)
                .round(new MathContext(3))
                .stripTrailingZeros()
                .toPlainString();
    }

    /**
     * {@code 47.2 A}, {@code 0.580 V}: three digits of the larger of a value and what it stands beside; below a tenth,
     * thousandths, as a meter shows them.
     */
    public static String beside(double value, double other, Unit unit) {
        double size = Math.max(Math.abs(value), Math.abs(other));
        int thousand = size < NOTHING ? 0 : (int) Math.floor(Math.log10(size * 1.0005) / 3);
        // A repairer reads 0.58 V rather than 580 mV: volts and amperes keep their unit down to a hundredth.
        if (thousand < 0 && size >= 0.01) {
            thousand = 0;
        }
        int index = Math.max(0, Math.min(PREFIXES.length() - 1, thousand + NO_PREFIX));
        double scale = Math.pow(1000, index - NO_PREFIX);
        double shown = size / scale;
        int decimals = shown >= 99.95 ? 0 : shown >= 9.995 ? 1 : shown >= 0.9995 || size < NOTHING ? 2 : 3;
        String prefix = index == NO_PREFIX ? "" : PREFIXES.substring(index, index + 1);
        return fixed(value / scale, decimals) + " " + prefix + unit.symbol();
    }

    /** {@code 0.438 V}, {@code 1.118 V}: what a diode test shows, in millivolts whatever the size. */
    public static String diodeTest(double volts) {
        return fixed(volts, 3) + " " + Unit.VOLT.symbol();
    }

    /** No minus before a zero. */
    private static String fixed(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value).replaceFirst("^-(?=[0.]+$)", "");
    }

    /** A value with the digits and prefix of a reading beside it, so that a column lines up. */
    public static String like(Reading beside, double value) {
        Matcher shown = DISPLAY.matcher(beside.shows());
        if (Double.isInfinite(value)) {
            return beside.overRange() ? beside.shows() : OVER_RANGE;
        }
        if (beside.overRange() || !shown.matches()) {
            return beside(value, value, beside.check().function().unit());
        }
        String decimals = shown.group(3);
        String unit = shown.group(4).trim();
        return fixed(value / scale(unit), decimals == null ? 0 : decimals.length()) + " " + unit;
    }

    /** What healthy machines show of a reading, with the digits of the reading as built. */
    public static String range(Compared row) {
        if (row.check().function() == MeterFunction.CONTINUITY) {
            return buzzer(row);
        }
        String low = like(row.asBuilt(), least(row));
        String high = like(row.asBuilt(), row.healthy().high());
        int space = low.indexOf(' ');
        boolean sameUnit = space > 0 && high.endsWith(low.substring(space));
        return low.equals(high) ? low : (sameUnit ? low.substring(0, space) : low) + " to " + high;
    }

    /**
     * The lower end of what healthy machines show. Of alternating voltage and of resistance there is no less than nothing, though the
     * meter's accuracy around nothing reaches below; where a charge makes ohms truly read below nothing, that is shown.
     */
    private static double least(Compared row) {
        MeterFunction function = row.check().function();
        boolean unsigned = function == MeterFunction.AC_VOLTS || function == MeterFunction.OHMS;
        double low = row.healthy().low();
        double high = row.healthy().high();
        // of ends as far below as above, rounding must not make the middle negative
        boolean around = row.asBuilt().value() >= 0 && high * (1 + NOTHING) >= -low;
        return unsigned && around ? Math.max(0, low) : low;
    }

    /** A buzzer has two things to say; over range it is silent. */
    private static String buzzer(Compared row) {
        boolean some = row.healthy().reachesOverRange();
        boolean all = Double.isInfinite(row.healthy().low());
        return WORDS.say(all ? "buzzer.silent" : some ? "buzzer.either" : "buzzer.beeps");
    }

    /** What a display shows: where it still moves, what it shows after a while, and where it ends. */
    public static String display(Reading reading) {
        Climbing climbing = reading.climbing();
        return climbing == null
                ? reading.shows()
                : WORDS.say(
                        climbing.falling() ? "climbing.falls" : "climbing.climbs",
                        climbing.after().shows(),
                        climbing.settled().shows());
    }

    /** As {@link #display}, a display that still moves naming its unit once: {@code 0.49 ↑ 0.96 kΩ}. */
    public static String shortDisplay(Reading reading) {
        return MOVING.matcher(display(reading)).replaceFirst("$1 $3 $4 $2");
    }

    /** 1000 for kΩ, 0.001 for mV, 1 for V. */
    private static double scale(String unit) {
        int index = unit.length() < 2 ? -1 : PREFIXES.indexOf(unit.charAt(0));
        return index < 0 ? 1 : Math.pow(1000, index - NO_PREFIX);
    }
}
