package fusetale.match;

import org.hipparchus.special.Erf;

/** The cumulative normal law, from a table: a list of checks asks for it some hundred thousand times. */
final class Normal {
    private static final double END = 6;
    private static final int STEPS = 1200;
    private static final double STEP = 2 * END / STEPS;

    private final double[] table = new double[STEPS + 2];

    Normal() {
        for (int k = 0; k < table.length; k++) {
            table[k] = 0.5 * (1 + Erf.erf((k * STEP - END) / Math.sqrt(2)));
        }
    }

    /** Probability of less than {@code x} standard deviations above the mean, to 10⁻⁵. */
    double below(double x) {
        if (x <= -END) {
            return 0;
        }
        if (x >= END) {
            return 1;
        }
        double at = (x + END) / STEP;
        int k = (int) at;
        return table[k] + (at - k) * (table[k + 1] - table[k]);
    }
}
