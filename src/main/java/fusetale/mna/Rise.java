package fusetale.mna;

/**
 * From 0 to 1 between two places on the smooth step 3x² − 2x³, flat outside; value and slope are continuous.
 *
 * @param from where it leaves 0
 * @param to where it reaches 1, above {@code from}
 */
record Rise(double from, double to) {
    double at(double place) {
        double x = part(place);
        return x * x * (3 - 2 * x);
    }

    double slope(double place) {
        double x = part(place);
        return 6 * x * (1 - x) / (to - from);
    }

    private double part(double place) {
        return Math.max(0, Math.min(1, (place - from) / (to - from)));
    }
}
