package fusetale.explore;

import fusetale.bench.Reading;
import fusetale.bench.Spread;

/**
 * What healthy machines may show: parts within tolerance, mains within its stated range, this meter.
 *
 * @param low lowest, SI; infinite where even the lowest is over the meter's range
 * @param high highest, SI; infinite where some show OL
 */
public record HealthyRange(double low, double high) {
    /** What {@link #moved} gives where one of two readings is OL and the other a figure: more than any two figures give. */
    public static final double TO_OR_FROM_OVER_RANGE = 10_000;

    private static final double MOST_BETWEEN_FIGURES = 9_999;

    /** Refuses ends in the wrong order. */
    public HealthyRange {
        if (!(low <= high)) {
            throw new IllegalArgumentException("a range from " + low + " to " + high);
        }
    }

    /** The range of a spread: ends that are OL become infinite. */
    static HealthyRange of(Spread.Range range) {
        return switch (range.over()) {
            case NEVER -> new HealthyRange(range.low(), range.high());
            case SOMETIMES -> new HealthyRange(range.low(), Double.POSITIVE_INFINITY);
            case ALWAYS -> new HealthyRange(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);
        };
    }

    /** Whether some healthy machines show OL. */
    public boolean reachesOverRange() {
        return Double.isInfinite(high);
    }

    /**
     * How far a reading moved: |as supposed − as built| over half of this range's width, a pure number; below 1 is too
     * close to tell. Never infinite: {@value #TO_OR_FROM_OVER_RANGE} where one of the two is OL, and 0 where both are, or
     * where the one that is OL lies within what healthy machines show.
     *
     * @param asBuilt what a healthy machine with nominal parts shows
     * @param asSupposed what the machine shows as supposed
     */
    public double moved(Reading asBuilt, Reading asSupposed) {
        if (asBuilt.overRange() && asSupposed.overRange()) {
            return 0;
        }
        if (asSupposed.overRange()) {
            return reachesOverRange() ? 0 : TO_OR_FROM_OVER_RANGE;
        }
        if (asBuilt.overRange()) {
            return asSupposed.value() >= low ? 0 : TO_OR_FROM_OVER_RANGE;
        }
        double away = Math.abs(asSupposed.value() - asBuilt.value());
        double halfWidth = reachesOverRange() ? belowNominal(asBuilt, asSupposed) : (high - low) / 2;
        // A range narrower than the meter can tell is no range: its own accuracy is the least that counts.
        double least = Math.max(asBuilt.halfWidth(), asSupposed.halfWidth());
        double ratio = away / Math.max(Math.max(halfWidth, least), Double.MIN_NORMAL);
        return Math.min(ratio, MOST_BETWEEN_FIGURES);
    }

    /** Half-width that counts where the upper end is OL: what lies below nominal; upwards nothing is too far. */
    private double belowNominal(Reading asBuilt, Reading asSupposed) {
        return asSupposed.value() >= asBuilt.value() ? Double.MAX_VALUE : asBuilt.value() - low;
    }
}
