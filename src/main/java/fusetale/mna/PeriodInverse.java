package fusetale.mna;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * (1 − M)⁻¹ of a period map with sensitivities M: exact where it is made, brought along by Broyden's rank-one formula
 * ("A class of methods for solving nonlinear simultaneous equations", Math. Comp. 19, 577-593, 1965) as the state moves.
 * Belongs to one thread; copies go to neighbours.
 */
final class PeriodInverse {
    private final double[][] rows;

    private PeriodInverse(double[][] rows) {
        this.rows = rows;
    }

    /** From the sensitivities that a stepper has carried over a whole period; null where 1 − M is singular. */
    static @Nullable PeriodInverse of(Stepper stepper) {
        PeriodMatrix matrix = PeriodMatrix.of(stepper);
        int n = matrix.size();
        LinearSystem.Factored f = matrix.factor(Double.POSITIVE_INFINITY);
        if (!f.ok()) {
            return null;
        }
        double[][] rows = new double[n][n];
        double[] column = new double[n];
        for (int k = 0; k < n; k++) {
            Arrays.fill(column, 0);
            column[k] = 1;
            f.system().solve(column);
            for (int j = 0; j < n; j++) {
                rows[j][k] = column[j];
            }
        }
        return new PeriodInverse(rows);
    }

    /** Number of carried states it is for. */
    int size() {
        return rows.length;
    }

    PeriodInverse copy() {
        return new PeriodInverse(Arrays.stream(rows).map(double[]::clone).toArray(double[][]::new));
    }

    /** The inverse times a vector: Newton's step from a residual. {@code vector}: Not modified. */
    double[] times(double[] vector) {
        double[] product = new double[vector.length];
        for (int j = 0; j < product.length; j++) {
            double sum = 0;
            for (int k = 0; k < product.length; k++) {
                sum += rows[j][k] * vector[k];
            }
            product[j] = sum;
        }
        return product;
    }

    /**
     * Learns from a step s that changed the residual: H += (s − H·y)(sᵀW·H)/(sᵀW·H·y) with y = residual before − after and W
     * the inverse squares of full scales: kelvins of a lamp must not outweigh amperes of a winding.
     *
     * @param step the step taken. Not modified.
     * @param full full scale of each state. Not modified.
     * @param before residual it started from. Not modified.
     * @param after residual it led to. Not modified.
     */
    void learn(double[] step, double[] full, double[] before, double[] after) {
        int n = step.length;
        double[] hy = new double[n];
        double[] sh = new double[n];
        double shy = 0;
        for (int j = 0; j < n; j++) {
            for (int k = 0; k < n; k++) {
                hy[j] += rows[j][k] * (before[k] - after[k]);
                sh[k] += step[j] / (full[j] * full[j]) * rows[j][k];
            }
        }
        for (int j = 0; j < n; j++) {
            shy += step[j] / (full[j] * full[j]) * hy[j];
        }
        if (shy == 0 || !Double.isFinite(shy)) {
            return;
        }
        for (int j = 0; j < n; j++) {
            double factor = (step[j] - hy[j]) / shy;
            for (int k = 0; k < n; k++) {
                rows[j][k] += factor * sh[k];
            }
        }
    }
}
