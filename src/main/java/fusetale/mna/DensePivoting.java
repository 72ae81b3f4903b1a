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
     * @param a row-major n × n. Modified.
     * @param pivots row taken at each step. Modified.
     * @return false where a pivot is zero or not finite
     */
    static boolean factor(double[] a, int n, int[] pivots) {
        for (int k = 0; k < n; k++) {
            int best = k;
            double most = Math.abs(a[k * n + k]);
            for (int r = k + 1; r < n; r++) {
                double candidate = Math.abs(a[r * n + k]);
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
                for (int c = 0; c < n; c++) {
                    double held = a[k * n + c];
                    a[k * n + c] = a[best * n + c];
                    a[best * n + c] = held;
                }
            }
            eliminate(a, n, k);
        }
        return true;
    }

    private static void eliminate(double[] a, int n, int k) {
        double inverse = 1 / a[k * n + k];
        for (int r = k + 1; r < n; r++) {
            double factor = a[r * n + k] * inverse;
            a[r * n + k] = factor;
            if (factor != 0) {
                for (int c = k + 1; c < n; c++) {
                    a[r * n + c] -= factor * a[k * n + c];
                }
            }
        }
    }

    /**
     * Solves with factors of {@link #factor}.
     *
     * @param b right side in, solution out. Modified.
     */
    static void solve(double[] a, int n, int[] pivots, double[] b) {
        for (int k = 0; k < n; k++) {
            int p = pivots[k];
            double held = b[p];
            b[p] = b[k];
            b[k] = held;
        }
        for (int r = 1; r < n; r++) {
            double sum = b[r];
            for (int c = 0; c < r; c++) {
                sum -= a[r * n + c] * b[c];
            }
            b[r] = sum;
        }
        for (int r = n - 1; r >= 0; r--) {
            double sum = b[r];
            for (int c = r + 1; c < n; c++) {
                sum -= a[r * n + c] * b[c];
            }
            b[r] = sum / a[r * n + r];
        }
    }
}
