package fusetale.desk.match;

import fusetale.bench.Check;
import fusetale.quantity.Unit;
import java.util.List;

/**
 * The axis of one reading: linear near zero, logarithmic far from it (area hyperbolic sine), so that 0.2 Ω and 10 kΩ stand on
 * one line and 31 V and 34 V are still apart. Over range has a place of its own at the right end.
 *
 * @param low left end of the figures, in turns of the area sine
 * @param high right end
 * @param knee where linear turns to logarithmic, SI
 * @param over whether there is a place for over range
 */
record FitScale(double low, double high, double knee, boolean over) {
    /** Shares of the width: where figures end beside a place for over range, and that place. */
    private static final double FIGURES_END = 0.78;

    private static final double OVER_AT = 0.93;
    private static final double PADDING = 0.12;
    /** Less than this apart is one place. */
    private static final double LEAST = 0.12;

    /** An axis on which all of these can be seen. */
    static FitScale over(Check check, List<Double> values, boolean over) {
        double knee = check.function().unit() == Unit.OHM ? 0.5 : 0.05;
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (double value : values) {
            if (Double.isFinite(value)) {
                double turned = asinh(value / knee);
                low = Math.min(low, turned);
                high = Math.max(high, turned);
            }
        }
        if (low > high) {
            low = 0;
            high = 1;
        }
        double middle = (low + high) / 2;
        double half = Math.max(LEAST, high - low) / 2 * (1 + 2 * PADDING);
        return new FitScale(middle - half, middle + half, knee, over);
    }

    /** Where a value stands, 0 to 1; infinite is over range. */
    double share(double value) {
        if (Double.isInfinite(value)) {
            return OVER_AT;
        }
        double end = over ? FIGURES_END : 1;
        return end * Math.max(0, Math.min(1, (asinh(value / knee) - low) / (high - low)));
    }

    private static double asinh(double x) {
        return Math.copySign(Math.log(Math.abs(x) + Math.hypot(x, 1)), x);
    }
}
