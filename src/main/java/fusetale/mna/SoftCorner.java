package fusetale.mna;

/**
 * max(0, x) with its corner rounded by a parabola between −width and +width: value and slope are continuous, and outside
 * that stretch the straight lines are exact.
 *
 * @param width half-width of the rounding, in the unit of x, above 0
 */
record SoftCorner(double width) {
    /** The rounded max(0, x). */
    double above(double x) {
        if (x <= -width) {
            return 0;
        }
        if (x >= width) {
            return x;
        }
        double d = x + width;
        return d * d / (4 * width);
    }

    /** Its slope, 0 to 1. */
    double slope(double x) {
        if (x <= -width) {
            return 0;
        }
        if (x >= width) {
            return 1;
        }
        return (x + width) / (2 * width);
    }
}
