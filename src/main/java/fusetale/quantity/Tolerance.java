package fusetale.quantity;

/**
 * How far a part may stray from its nominal value, as ratios of it: −20..+50 % is (−0.2, +0.5).
 *
 * @param lowRatio lower end, −1 to 0
 * @param highRatio upper end, 0 or more
 */
public record Tolerance(double lowRatio, double highRatio) {
    /** No stray at all. */
    public static final Tolerance EXACT = new Tolerance(0, 0);

    /** Refuses ends on the wrong side of nominal. */
    public Tolerance {
        if (!(lowRatio >= -1 && lowRatio <= 0 && highRatio >= 0 && Double.isFinite(highRatio))) {
            throw new IllegalArgumentException("tolerance from " + lowRatio + " to " + highRatio + " of nominal");
        }
    }
}
