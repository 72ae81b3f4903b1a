package fusetale.match;

/**
 * How much a look is expected to tell. From J. de Kleer, B. C. Williams, Diagnosing multiple faults, Artificial Intelligence
 * 32(1), 1987: the entropy that is expected to be left after a probe, here of groups of hypotheses.
 */
final class Gain {
    private static final double LN2 = Math.log(2);

    private Gain() {}

    /** Entropy [bit] of probabilities; they need not add up to 1, but are taken in proportion. */
    static double entropy(double[] p) {
        double sum = 0;
        for (double x : p) {
            sum += x;
        }
        double bits = 0;
        for (double x : p) {
            bits += term(x / sum);
        }
        return bits;
    }

    private static double term(double p) {
        return p > 0 ? -p * Math.log(p) / LN2 : 0;
    }

    /**
     * Information [bit] that an outcome is expected to give about groups.
     *
     * @param joint {@code joint[group][outcome]}: probability of both; adds up to 1
     */
    static double expected(double[][] joint) {
        return Math.max(0, entropy(groups(joint)) - left(joint));
    }

    /**
     * Entropy [bit] of the groups that is expected to be left.
     *
     * @param joint as {@link #expected}
     */
    static double left(double[][] joint) {
        int outcomes = joint.length == 0 ? 0 : joint[0].length;
        double left = 0;
        double[] column = new double[joint.length];
        for (int b = 0; b < outcomes; b++) {
            double sum = 0;
            for (int g = 0; g < joint.length; g++) {
                column[g] = joint[g][b];
                sum += column[g];
            }
            if (sum > 0) {
                left += sum * entropy(column);
            }
        }
        return left;
    }

    private static double[] groups(double[][] joint) {
        double[] p = new double[joint.length];
        for (int g = 0; g < joint.length; g++) {
            for (double x : joint[g]) {
                p[g] += x;
            }
        }
        return p;
    }
}
