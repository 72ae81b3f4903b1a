package fusetale.aftermath;

/**
 * When a link melts at a steady current: no earlier than, no later than.
 *
 * @param minSeconds shortest time [s]; infinite where it surely holds
 * @param maxSeconds longest time [s]; infinite where it may hold for ever
 */
public record Melting(double minSeconds, double maxSeconds) {
    /** It carries this current for ever. */
    public static final Melting NEVER = new Melting(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);

    /** Refuses times that are negative or the wrong way round. */
    public Melting {
        if (!(minSeconds >= 0 && minSeconds <= maxSeconds)) {
            throw new IllegalArgumentException("melting from " + minSeconds + " s to " + maxSeconds + " s");
        }
    }

    /** What may last for good is taken to last no longer than a day [s] where one of several machines is drawn. */
    private static final double FOR_GOOD_SECONDS = 86_400;

    /** No process is told sooner than this [s]. */
    private static final double LEAST_SECONDS = 1e-6;

    /**
     * The time of one machine out of many, evenly in the logarithm.
     *
     * @param even where in the range it lies, 0 to 1
     */
    double at(double even) {
        if (surelyHolds()) {
            return Double.MAX_VALUE;
        }
        double least = Math.max(minSeconds, LEAST_SECONDS);
        double most = Math.max(least, Math.min(maxSeconds, FOR_GOOD_SECONDS));
        return least * Math.pow(most / least, even);
    }

    /** Whether it surely carries this current for ever. */
    public boolean surelyHolds() {
        return minSeconds == Double.POSITIVE_INFINITY;
    }

    /** Whether it may carry this current for ever. */
    public boolean mayHold() {
        return maxSeconds == Double.POSITIVE_INFINITY;
    }

    /** Whether it has surely melted after so many seconds. */
    public boolean surelyMeltedAfter(double seconds) {
        return maxSeconds <= seconds;
    }

    /** Whether it may have melted after so many seconds. */
    public boolean mayHaveMeltedAfter(double seconds) {
        return minSeconds <= seconds;
    }
}
