package fusetale.quantity;

/**
 * Shares as people say them: "88 of 100". Steps of 5 between 10 and 90, since nobody knows them better; whole numbers
 * beyond; "under 1" and never above 99, since nothing is certain.
 */
public final class Shares {
    private static final int COARSE_FROM = 10;
    private static final int COARSE_TO = 90;
    private static final int STEP = 5;
    private static final int MOST = 99;

    private Shares() {}

    /**
     * A share in words.
     *
     * @param ratio 0 to 1
     * @throws IllegalArgumentException outside that
     */
    public static String said(double ratio) {
        if (!(ratio >= 0 && ratio <= 1)) {
            throw new IllegalArgumentException("a share of " + ratio);
        }
        double hundredths = 100 * ratio;
        if (hundredths < 1) {
            return "under 1";
        }
        boolean coarse = hundredths >= COARSE_FROM && hundredths <= COARSE_TO;
        long rounded = coarse ? STEP * Math.round(hundredths / STEP) : Math.round(hundredths);
        return Math.min(rounded, MOST) + " of 100";
    }
}
