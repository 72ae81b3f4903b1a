package fusetale.mna;

import java.util.Arrays;
import org.ejml.data.DMatrixSparseCSC;
import org.ejml.sparse.csc.decomposition.lu.LuUpLooking_DSCC;

/**
 * A square system, factored once and solved for many right sides. The one class that talks to EJML: its sparse LU with
 * partial pivoting, since nodal equations have four or five entries a row however large the machine.
 *
 * <p>Unknowns are in the order of a {@link SparsePattern}, and rows and columns are scaled to unit size by powers of two, so
 * that micro-siemens beside mega-siemens do no harm. EJML's own
 * verdict is not used: its LU answers "solved" for exactly singular matrices, and its quality figure is a product over all
 * pivots that underflows for systems of a hundred unknowns; the smallest pivot of the scaled matrix is looked at instead.
 */
final class LinearSystem {
    /** Below this the scaled matrix is singular to working accuracy: a few units of rounding of numbers near 1. */
    private static final double SMALLEST_PIVOT = 1e-15;

    /** A diagonal comes to 1 at once; each time takes half of what the exponents of the others are off. */
    private static final int SCALED_TIMES = 4;

    /** Right sides that are solved for at once. */
    private static final int AT_ONCE = 4;

    private final int size;
    private final SparsePattern pattern;
    private final double perSecond;
    private final int[] order;
    private final double[] scale;
    private final LuUpLooking_DSCC lu;

    private LinearSystem(SparsePattern pattern, double perSecond, double[] scale, LuUpLooking_DSCC lu) {
        this.size = pattern.size;
        this.pattern = pattern;
        this.perSecond = perSecond;
        this.order = pattern.order;
        this.scale = scale;
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
     * @param matrix row-major, size × size. Not modified.
     */
    static Factored factor(double[] matrix, int size) {
        return factor(new SparsePattern(matrix, new double[matrix.length], size), 0);
    }

    /** Factors G + C·perSecond. */
    static Factored factor(SparsePattern pattern, double perSecond) {
        int size = pattern.size;
        double[] values = pattern.values(perSecond);
        double[] scale = new double[size];
        int strange = scale(pattern, values, scale);
        LuUpLooking_DSCC lu = new LuUpLooking_DSCC(null);
        if (strange >= 0) {
            return new Factored(new LinearSystem(pattern, perSecond, scale, lu), pattern.order[strange]);
        }
        DMatrixSparseCSC m = new DMatrixSparseCSC(size, size, 0);
        m.col_idx = pattern.columnStart.clone();
        m.nz_rows = pattern.rows.clone();
        m.nz_values = values;
        m.nz_length = values.length;
        m.indicesSorted = true;
        boolean whole = lu.decompose(m);
        // made when all is done: what is final in it may be read by any thread
        LinearSystem system = new LinearSystem(pattern, perSecond, scale, lu);
        return new Factored(system, whole ? weakest(lu.getU(), pattern.order) : pattern.order[size - 1]);
    }

    /**
     * Scales in place, each row and its column by the same, so that the largest entry of both comes near 1 (D. Ruiz, A Scaling
     * Algorithm to Equilibrate Both Rows and Columns Norms in Matrices, RAL-TR-2001-034): were rows scaled alone, that of a node
     * which hangs on leakage would be as good a pivot for its neighbour as the neighbour's own, and a volt be told as the
     * difference of gigavolts.
     *
     * @return the first row with a value that is not finite, −1 where there is none
     */
    private static int scale(SparsePattern pattern, double[] values, double[] scale) {
        int size = pattern.size;
        for (int k = 0; k < values.length; k++) {
            if (!Double.isFinite(values[k])) {
                return pattern.rows[k];
            }
        }
        Arrays.fill(scale, 1);
        double[] most = new double[size];
        for (int time = 0; time < SCALED_TIMES; time++) {
            Arrays.fill(most, 0);
            for (int c = 0; c < size; c++) {
                for (int k = pattern.columnStart[c]; k < pattern.columnStart[c + 1]; k++) {
                    int r = pattern.rows[k];
                    double magnitude = Math.abs(values[k]) * scale[r] * scale[c];
                    most[r] = Math.max(most[r], magnitude);
                    most[c] = Math.max(most[c], magnitude);
                }
            }
            for (int r = 0; r < size; r++) {
                scale[r] *= most[r] == 0 ? 1 : Math.scalb(1.0, -(int) Math.rint(Math.getExponent(most[r]) / 2.0));
            }
        }
        for (int c = 0; c < size; c++) {
            for (int k = pattern.columnStart[c]; k < pattern.columnStart[c + 1]; k++) {
                values[k] *= scale[pattern.rows[k]] * scale[c];
            }
        }
        return -1;
    }

    private static int weakest(DMatrixSparseCSC upper, int[] order) {
        int worst = -1;
        double smallest = SMALLEST_PIVOT;
        for (int k = 0; k < order.length; k++) {
            // the diagonal entry is the last of its column
            double pivot = Math.abs(upper.nz_values[upper.col_idx[k + 1] - 1]);
            if (!(pivot >= smallest) || pivot == Double.POSITIVE_INFINITY) {
                smallest = pivot;
                worst = order[k];
            }
        }
        return worst;
    }

    /** Takes A·x off a right side, in place: what is left is missed by x. {@code y}: Modified. */
    void subtractProduct(double[] x, double[] y) {
        pattern.subtractProduct(perSecond, x, y);
    }

    /**
     * Solves for one right side in place. Several threads may do so at once.
     *
     * @param b right side in, solution out. Modified.
     */
    void solve(double[] b) {
        solve(new double[][] {b}, 0, 1);
    }

    /**
     * Solves for some of several right sides in place, going through the factors once for four of them. Several threads may do so
     * at once.
     *
     * @param b right sides in, solutions out. Modified.
     * @param from the first to solve for
     * @param end after the last
     */
    void solve(double[][] b, int from, int end) {
        double[] work = new double[AT_ONCE * size];
        for (int j = from; j < end; j += AT_ONCE) {
            four(b, j, Math.min(end, j + AT_ONCE), work);
        }
    }

    /** {@code work}: side by side, {@link #AT_ONCE} values a row. Modified. */
    private void four(double[][] b, int from, int end, double[] work) {
        Arrays.fill(work, 0);
        int[] rowOf = lu.getPinv();
        int first = size;
        for (int j = from; j < end; j++) {
            for (int k = 0; k < size; k++) {
                double value = b[j][order[k]];
                if (value != 0) {
                    work[AT_ONCE * rowOf[k] + j - from] = value * scale[k];
                    first = Math.min(first, rowOf[k]);
                }
            }
        }
        lower(lu.getL(), work, first);
        upper(lu.getU(), work);
        for (int j = from; j < end; j++) {
            for (int k = 0; k < size; k++) {
                b[j][order[k]] = work[AT_ONCE * k + j - from] * scale[k];
            }
        }
    }

    /** A unit of one input leaves most of the columns untouched: they are passed over. The diagonal comes first and is 1. */
    private static void lower(DMatrixSparseCSC l, double[] x, int first) {
        for (int c = first; c < l.numCols; c++) {
            subtract(l, c, l.col_idx[c] + 1, l.col_idx[c + 1], x);
        }
    }

    /** The diagonal comes last. */
    private static void upper(DMatrixSparseCSC u, double[] x) {
        for (int c = u.numCols - 1; c >= 0; c--) {
            int diagonal = u.col_idx[c + 1] - 1;
            double perPivot = 1 / u.nz_values[diagonal];
            for (int j = AT_ONCE * c; j < AT_ONCE * c + AT_ONCE; j++) {
                x[j] *= perPivot;
            }
            subtract(u, c, u.col_idx[c], diagonal, x);
        }
    }

    /** Takes the entries of a column, each times that column's values, off the rows where they stand. */
    private static void subtract(DMatrixSparseCSC m, int column, int from, int end, double[] x) {
        double a = x[AT_ONCE * column];
        double b = x[AT_ONCE * column + 1];
        double c = x[AT_ONCE * column + 2];
        double d = x[AT_ONCE * column + 3];
        if (a == 0 && b == 0 && c == 0 && d == 0) {
            return;
        }
        int[] rows = m.nz_rows;
        double[] values = m.nz_values;
        for (int k = from; k < end; k++) {
            int at = AT_ONCE * rows[k];
            double value = values[k];
            x[at] -= value * a;
            x[at + 1] -= value * b;
            x[at + 2] -= value * c;
            x[at + 3] -= value * d;
        }
    }
}
