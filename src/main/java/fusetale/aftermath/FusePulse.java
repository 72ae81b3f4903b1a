package fusetale.aftermath;

import fusetale.circuit.FuseLink;

/**
 * A pulse through a fuse against what melts it, as I²t. A pulse that ends before the link loses heat melts it where its I²t
 * reaches the link's melting I²t; how many it withstands before it ages follows from the share (makers' application notes,
 * "fuseology": 22, 29, 38 and 48 % of the nominal melting I²t for 100 000, 10 000, 1000 and 100 pulses at least 10 s apart).
 * Here the share is of the least melting I²t that the link's band allows, so that what is said is on the safe side.
 *
 * @param ampsSquaredSeconds I²t of the pulse [A²s], 0 or more
 * @param meltingAmpsSquaredSeconds least I²t that melts the link in such a time [A²s], above 0
 */
public record FusePulse(double ampsSquaredSeconds, double meltingAmpsSquaredSeconds) {
    /** Far beyond the last gate of every standard, where I²t no longer depends on the current. */
    private static final double FAR_BEYOND_RATIO = 1e4;

    private static final double[] SHARE_RATIOS = {0.22, 0.29, 0.38, 0.48};
    private static final int[] PULSES = {100_000, 10_000, 1000, 100};

    /** Refuses figures that are none. */
    public FusePulse {
        if (!(ampsSquaredSeconds >= 0) || !(meltingAmpsSquaredSeconds > 0)) {
            throw new IllegalArgumentException(
                    "a pulse of " + ampsSquaredSeconds + " A²s against " + meltingAmpsSquaredSeconds + " A²s");
        }
    }

    /**
     * A pulse of so many A²s through a link.
     *
     * @param seconds how long it lasts [s], above 0: one of a second loses much of its heat, and what melts the link in that time is more
     */
    public static FusePulse of(FuseLink link, double ampsSquaredSeconds, double seconds) {
        double amps = FAR_BEYOND_RATIO * link.ratedAmps().si();
        double atOnce = FuseBand.of(link).melting(amps).minSeconds() * amps * amps;
        return new FusePulse(ampsSquaredSeconds, Math.max(atOnce, FuseEndurance.ampsSquaredSeconds(link, seconds)));
    }

    /** Share of the least melting I²t: from 1 on the link may melt in one pulse. */
    public double shareRatio() {
        return ampsSquaredSeconds / meltingAmpsSquaredSeconds;
    }

    /** Pulses withstood at least: 100 000, 10 000, 1000 or 100; 1 where fewer than 100, 0 where one may melt it. */
    public int withstood() {
        for (int k = 0; k < PULSES.length; k++) {
            if (shareRatio() <= SHARE_RATIOS[k]) {
                return PULSES[k];
            }
        }
        return shareRatio() < 1 ? 1 : 0;
    }
}
