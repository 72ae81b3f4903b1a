package fusetale.bench;

import org.jspecify.annotations.Nullable;

/**
 * What a meter shows. With the power off it is the settled value, unless the arrangement has charged capacitors: then it is
 * what stands after {@link Climbing#AFTER_SECONDS}.
 *
 * @param check what was measured
 * @param value in SI; where {@code overRange} the quantity the meter cannot show
 * @param overRange whether the meter shows OL; of continuity, whether it is silent
 * @param shows the display with its unit: {@code 12.34 V}, {@code OL}, {@code beeps}
 * @param halfWidth half-width of the meter's accuracy at this value, SI
 * @param climbing how the display moves while one waits; null where it stands still
 */
public record Reading(
        Check check,
        double value,
        boolean overRange,
        String shows,
        double halfWidth,
        @Nullable Climbing climbing) {
    /** A display that stands still. */
    public Reading(Check check, double value, boolean overRange, String shows, double halfWidth) {
        this(check, value, overRange, shows, halfWidth, null);
    }

    /** The same under another name of its points. */
    public Reading of(Check other) {
        return new Reading(other, value, overRange, shows, halfWidth, climbing);
    }

    /** The same with a display that moves. */
    Reading moving(Climbing how) {
        return new Reading(check, value, overRange, shows, halfWidth, how);
    }

    /** Whether the meter shows the same as in another reading of the check, or nearly: within its accuracy. */
    public boolean alike(Reading other) {
        if (overRange || other.overRange) {
            return overRange == other.overRange;
        }
        return shows.equals(other.shows) || Math.abs(value - other.value) <= Math.max(halfWidth, other.halfWidth);
    }
}
