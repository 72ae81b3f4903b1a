package fusetale.aftermath;

/**
 * What a standard asks of a link at one current.
 *
 * @param multiple current over the rating
 * @param minSeconds it must hold so long [s]; 0 where nothing is asked
 * @param maxSeconds it must have melted by then [s]; infinite where nothing is asked
 */
record FuseGate(double multiple, double minSeconds, double maxSeconds) {
    static FuseGate holds(double multiple, double seconds) {
        return new FuseGate(multiple, seconds, Double.POSITIVE_INFINITY);
    }

    static FuseGate melts(double multiple, double seconds) {
        return new FuseGate(multiple, 0, seconds);
    }

    boolean setsMin() {
        return minSeconds > 0;
    }

    boolean setsMax() {
        return maxSeconds < Double.POSITIVE_INFINITY;
    }
}
