package fusetale.mna;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.decomposition.lu.LUDecompositionAlt_DDRM;

/**
 * A square dense system, factored once and solved for many right sides. The one class that talks to EJML.
 *
 * <p>Rows and columns are scaled to unit size by powers of two before factoring, so that micro-siemens beside mega-siemens
 * do no harm. EJML's own verdict is not used: its LU answers "solved" for exactly singular matrices, and its quality figure
 * is a product over all pivots that underflows for systems of a hundred unknowns; the smallest pivot of the scaled matrix
 * is looked at instead.
 */
final class LinearSystem {
    /** Below this the scaled matrix is singular to working accuracy: a few units of rounding of numbers near 1. */
    private static final double SMALLEST_PIVOT = 1e-15;

    private final int size;
    private final double[] rowScale;
    private final double[] columnScale;
    private final LUDecompositionAlt_DDRM lu;

    private LinearSystem(int size, double[] rowScale, double[] columnScale, LUDecompositionAlt_DDRM lu) {
        this.size = size;
        this.rowScale = rowScale;
        this.columnScale = columnScale;
        this.lu = lu;
    }

    /** What factoring found: a system ready to solve, or the unknown at which it broke down. */
    record Factored(LinearSystem system, int brokenUnknown) {
        boolean ok() {
            return brokenUnknown < 0;
        }
    }

    /**
     * Factors a matrix.
     *
     * @param matrix row-major, size × size. Modified.
     */
    static Factored factor(double[] matrix, int size) {
        double[] rowScale = new double[size];
        double[] columnScale = new double[size];
        scale(matrix, size, rowScale, columnScale);
        DMatrixRMaj a = DMatrixRMaj.wrap(size, size, matrix);
        LUDecompositionAlt_DDRM lu = new LUDecompositionAlt_DDRM();
        lu.decompose(a);
        LinearSystem system = new LinearSystem(size, rowScale, columnScale, lu);
        int worst = -1;
        double smallest = SMALLEST_PIVOT;
        DMatrixRMaj factors = lu.getLU();
        for (int k = 0; k < size; k++) {
            double pivot = Math.abs(factors.get(k, k));
            if (!(pivot >= smallest)) {
                smallest = pivot;
                worst = k;
            }
        }
        return new Factored(system, worst);
    }

    /**
     * Solves for one right side in place.
     *
     * @param b right side in, solution out. Modified.
     */
    void solve(double[] b) {
        double[] x = lu._getVV();
        for (int k = 0; k < size; k++) {
            x[k] = b[k] * rowScale[k];
        }
        lu._solveVectorInternal(x);
        for (int k = 0; k < size; k++) {
            b[k] = x[k] * columnScale[k];
        }
    }

    private static void scale(double[] a, int n, double[] rowScale, double[] columnScale) {
        for (int r = 0; r < n; r++) {
            double most = 0;
            for (int c = 0; c < n; c++) {
                most = Math.max(most, Math.abs(a[r * n + c]));
            }
            rowScale[r] = powerOfTwoNear(most);
            for (int c = 0; c < n; c++) {
                a[r * n + c] *= rowScale[r];
            }
        }
        for (int c = 0; c < n; c++) {
            double most = 0;
            for (int r = 0; r < n; r++) {
                most = Math.max(most, Math.abs(a[r * n + c]));
            }
            columnScale[c] = powerOfTwoNear(most);
            for (int r = 0; r < n; r++) {
                a[r * n + c] *= columnScale[c];
            }
        }
    }

    private static double powerOfTwoNear(double most) {
        return most == 0 || !Double.isFinite(most) ? 1 : Math.scalb(1.0, -Math.getExponent(most));
    }
}
