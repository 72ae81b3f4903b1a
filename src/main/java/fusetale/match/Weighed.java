package fusetale.match;

/**
 * One piece of evidence beside what a supposition lets expect.
 *
 * @param evidence what was read or seen
 * @param expected what the supposition gives; in words of the display, {@code 17.45 V}, {@code OL}, {@code dark}
 * @param middle middle of what it gives, SI; NaN where it is no figure
 * @param low lowest of what parts in tolerance, mains and meter let it show (95 of 100), SI; NaN where it is no figure
 * @param high highest, SI
 * @param away how far off the reading is in standard deviations, given all other readings; infinite where an OL, or a
 *     sight, stands against another
 * @param bits how much the reading speaks for (positive) or against the supposition, beside all others together
 * @param mistakeShare probability that the reading is a slip, were the supposition true
 * @param index place among all readings, from 0; of one that was repeated that of the newest
 */
public record Weighed(
        Evidence evidence,
        String expected,
        double middle,
        double low,
        double high,
        double away,
        double bits,
        double mistakeShare,
        int index) {
    private static final double FITS_WITHIN = 3;

    /**
     * Whether the reading lies in the range it would have alone; where it does not {@link #fits fit} none the less, it is the
     * readings together that cannot be.
     */
    public boolean possibleAlone() {
        return evidence.shown() instanceof Shown.Figure figure && figure.si() >= low && figure.si() <= high;
    }

    /** Whether the reading lies where the supposition lets it lie: within three standard deviations. */
    public boolean fits() {
        return Math.abs(away) <= FITS_WITHIN;
    }
}
