package fusetale.fault;

import fusetale.circuit.FuseLink;
import fusetale.circuit.PartLibrary;

/**
 * Cold resistance of links of one size over their rating: quick 6.3 × 25 mm, nominal, from a maker's published table. Used
 * only for ratios: a link of another rating resists as much more or less than the marked one as the table says.
 */
final class LinkResistance {
    private static final double[] AMPS = {0.25, 0.5, 1, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10, 15, 20, 25, 30};
    private static final double[] MILLIOHMS = {
        2790, 478.5, 162.5, 94.0, 68.25, 49.3, 38.25, 27.0, 20.5, 14.75, 11.0, 8.67, 5.10, 3.58, 2.75, 2.15
    };

    private LinkResistance() {}

    /** Cold resistance [Ω] for a rating [A]: straight lines in log-log, the outer ones prolonged. */
    static double ohms(double ratedAmps) {
        int k = 1;
        while (k < AMPS.length - 1 && ratedAmps > AMPS[k]) {
            k++;
        }
        double slope = Math.log(MILLIOHMS[k] / MILLIOHMS[k - 1]) / Math.log(AMPS[k] / AMPS[k - 1]);
        return 1e-3 * MILLIOHMS[k] * Math.pow(ratedAmps / AMPS[k], slope);
    }

    /**
     * Cold resistance [Ω] of a link: of its own table where there is one; else of the other standard's links of its size and
     * speed, which are as long and as thick; else so much more or less than {@code like} as the ratings say.
     *
     * @param link its own cold resistance is not looked at
     * @param like the link it replaces
     */
    static double ohms(FuseLink link, FuseLink like) {
        PartLibrary library = PartLibrary.shipped();
        double amps = link.ratedAmps().si();
        Double own = library.coldOhms(link.standard(), link.speed(), link.size(), amps);
        if (own != null) {
            return own;
        }
        for (FuseLink.Standard other : FuseLink.Standard.values()) {
            Double alike = library.coldOhms(other, link.speed(), link.size(), amps);
            if (alike != null) {
                return alike;
            }
        }
        return like.coldOhms().si() * ohms(amps) / ohms(like.ratedAmps().si());
    }
}
