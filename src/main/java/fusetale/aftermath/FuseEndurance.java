package fusetale.aftermath;

import fusetale.circuit.FuseLink;

/** What a link surely lives through in a given time, read off its time-current band. */
public final class FuseEndurance {
    /** No link is looked at beyond this multiple of its rating. */
    private static final double GREATEST_MULTIPLE = 1e4;

    private static final int HALVINGS = 60;

    private FuseEndurance() {}

    /**
     * The smallest I²t [A²s] at which a link may melt within a time; below it a pulse of that length leaves it whole.
     *
     * @param seconds length of the pulse [s], above 0
     */
    public static double ampsSquaredSeconds(FuseLink link, double seconds) {
        FuseBand band = FuseBand.of(link);
        double low = link.ratedAmps().si();
        double high = GREATEST_MULTIPLE * low;
        for (int k = 0; k < HALVINGS; k++) {
            double middle = Math.sqrt(low * high);
            if (band.melting(middle).minSeconds() > seconds) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low * low * seconds;
    }
}
