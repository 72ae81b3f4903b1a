package fusetale.mna;

/**
 * Gaussian elimination with partial pivoting for the few active ports of one stage (Golub and Van Loan, Matrix
 * Computations, ch. 3). Kept beside EJML because it runs a thousand times a cycle on systems of one to twenty unknowns in
 * buffers that never change (figures: DEVELOPERS.md, decisions).
 */
final class DensePivoting {
    private DensePivoting() {}

    /**
     * Factors in place.
     *
     * @param a column-major n × n. Modified: the reciprocals of the pivots stand on the diagonal.
     * @param pivots row taken at each step. Modified.
     * @return false where a pivot is zero or not finite
     */
    static boolean factor(double[] a, int n, int[] pivots) {
        for (int k = 0; k < n; k++) {
            int column = k * n;
            int best = k;
            double most = Math.abs(a[column + k]);
            for (int r = k + 1; r < n; r++) {
                double candidate = Math.abs(a[column + r]);
                if (candidate > most) {
                    most = candidate;
                    best = r;
                }
            }
            pivots[k] = best;
            if (!(most > 0) || most == Double.POSITIVE_INFINITY) {
                return false;
            }
            if (best != k) {
                for (int c = 0; c < n * n; c += n) {
                    double held = a[c + k];
                    a[c + k] = a[c + best];
                    a[c + best] = held;
                }
            }
            eliminate(a, n, k);
        }
        return true;
    }

    private static void eliminate(double[] a, int n, int k) {
        int column = k * n;
        double inverse = 1 / a[column + k];
        a[column + k] = inverse;
        for (int r = k + 1; r < n; r++) {
            a[column + r] *= inverse;
        }
        for (int c = column + n; c < n * n; c += n) {
            subtract(a, c, column, k + 1, n, a[c + k]);
        }
    }

    /** Takes {@code times} the entries of one column off those of another, from a row on. */
    private static void subtract(double[] a, int to, int from, int first, int n, double times) {
        if (times != 0) {
            for (int r = first; r < n; r++) {
                a[to + r] -= times * a[from + r];
            }
        }
    }

    /**
     * Solves with factors of {@link #factor}.
     *
     * @param b right side in, solution out. Modified.
     */
    static void solve(double[] a, int n, int[] pivots, double[] b) {
        if (n == 2) {
            // a bridge that conducts: two diodes awake, half of all stages
            double first = b[pivots[0]];
            double second = b[1 - pivots[0]] - first * a[1];
            b[1] = second * a[3];
            b[0] = (first - b[1] * a[2]) * a[0];
            return;
        }
        for (int k = 0; k < n; k++) {
            int p = pivots[k];
            double held = b[p];
            b[p] = b[k];
            b[k] = held;
        }
        for (int k = 0; k < n; k++) {
            double x = b[k];
            if (x != 0) {
                int column = k * n;
                for (int r = k + 1; r < n; r++) {
                    b[r] -= x * a[column + r];
                }
            }
        }
        for (int k = n - 1; k >= 0; k--) {
            int column = k * n;
            double x = b[k] * a[column + k];
            b[k] = x;
            if (x != 0) {
                for (int r = 0; r < k; r++) {
                    b[r] -= x * a[column + r];
                }
            }
        }
    }

    /**
     * Solves with factors of {@link #factor} for several right sides at once.
     *
     * @param b rows of right sides in, of solutions out. Modified.
     */
    static void solve(double[] a, int n, int[] pivots, double[][] b) {
        for (int k = 0; k < n; k++) {
            int p = pivots[k];
            double[] held = b[p];
            b[p] = b[k];
            b[k] = held;
        }
        for (int k = 0; k < n; k++) {
            for (int r = k + 1; r < n; r++) {
                Reduction.axpy(b[r], b[k], -a[k * n + r], b[k].length);
            }
        }
        for (int k = n - 1; k >= 0; k--) {
            double inverse = a[k * n + k];
            for (int c = 0; c < b[k].length; c++) {
                b[k][c] *= inverse;
            }
            for (int r = 0; r < k; r++) {
                Reduction.axpy(b[r], b[k], -a[k * n + r], b[k].length);
            }
        }
    }
}
