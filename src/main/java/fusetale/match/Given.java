package fusetale.match;

import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.jspecify.annotations.Nullable;

/**
 * What the readings taken say of the next one, on one board: the conditional normal law. With c the covariance of the next
 * reading with those taken, mean moves by cᵀK⁻¹(y − μ) and variance falls by cᵀK⁻¹c.
 */
final class Given {
    private final int[] at;
    private final Expectation[] expected;
    private final RealMatrix inverse;
    private final double[] z;

    private Given(int[] at, Expectation[] expected, RealMatrix inverse, double[] z) {
        this.at = at;
        this.expected = expected;
        this.inverse = inverse;
        this.z = z;
    }

    /** Of a board's fit; null where it has no figure to compare. */
    static @Nullable Given of(Fit fit, Common common) {
        int[] places = new int[common.size()];
        int q = 0;
        for (int j = 0; j < common.size(); j++) {
            // a reading that is a slip on this board says nothing of the next
            if (common.isFigure(j, fit.expectations()[j]) && fit.mistake()[j] < 0.5) {
                places[q++] = j;
            }
        }
        if (q == 0) {
            return null;
        }
        int[] at = java.util.Arrays.copyOf(places, q);
        RealMatrix k = Fit.covariance(fit.expectations(), common, at);
        RealMatrix inverse =
                new CholeskyDecomposition(k, 1e-9, 1e-14).getSolver().getInverse();
        double[] off = new double[q];
        for (int a = 0; a < q; a++) {
            off[a] = common.axis(at[a]) - fit.expectations()[at[a]].middle();
        }
        return new Given(at, fit.expectations(), inverse, inverse.operate(off));
    }

    /**
     * How the law of the next reading moves.
     *
     * @param shift of its mean [axis]
     * @param explained what falls off its variance [axis²]
     */
    record Law(double shift, double explained) {}

    /**
     * The law of the next reading.
     *
     * @param shared its covariance with every evidence over drawn machines
     * @param machines how many were drawn for it; 0 where that is not known
     * @param slope over one place of the amount
     */
    Law law(double[] shared, int machines, double slope) {
        int q = at.length;
        double[] c = new double[q];
        double kept = machines == 0 ? 0 : 1 - (q + 1.0) / (machines + q + 1.0);
        double shift = 0;
        for (int a = 0; a < q; a++) {
            c[a] = kept * shared[at[a]] + slope * expected[at[a]].slope() / 12;
            shift += c[a] * z[a];
        }
        double explained = MatrixUtils.createRealVector(c).dotProduct(inverse.operate(MatrixUtils.createRealVector(c)));
        return new Law(shift, explained);
    }
}
