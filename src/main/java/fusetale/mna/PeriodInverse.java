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
        int n = stepper.carried();
        double[] a = new double[n * n];
        for (int j = 0; j < n; j++) {
            for (int k = 0; k < n; k++) {
                a[j * n + k] = (j == k ? 1 : 0) - stepper.sensitivity(j, k);
            }
        }
        LinearSystem.Factored f = LinearSystem.factor(a, n);
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
     * Learns from a step s that changed the residual: H += (s − H·y)(sᵀ·H)/(sᵀ·H·y) with y = residual before − after.
     *
     * @param step Newton's step. Not modified.
     * @param part how much of it was taken
     * @param before residual it started from. Not modified.
     * @param after residual it led to. Not modified.
     */
    void learn(double[] step, double part, double[] before, double[] after) {
        int n = step.length;
        double[] hy = new double[n];
        double[] sh = new double[n];
        double shy = 0;
        for (int j = 0; j < n; j++) {
            for (int k = 0; k < n; k++) {
                hy[j] += rows[j][k] * (before[k] - after[k]);
                sh[k] += part * step[j] * rows[j][k];
            }
        }
        for (int j = 0; j < n; j++) {
            shy += part * step[j] * hy[j];
        }
        if (shy == 0 || !Double.isFinite(shy)) {
            return;
        }
        for (int j = 0; j < n; j++) {
            double factor = (part * step[j] - hy[j]) / shy;
            for (int k = 0; k < n; k++) {
                rows[j][k] += factor * sh[k];
            }
        }
    }
}
