package fusetale.mna;

import java.util.BitSet;
import org.ejml.data.DMatrixSparseCSC;
import org.ejml.sparse.csc.decomposition.lu.LuUpLooking_DSCC;
import org.ejml.sparse.csc.misc.TriangularSolver_DSCC;

/**
 * A square system, factored once and solved for many right sides. The one class that talks to EJML: its sparse LU with
 * partial pivoting, since nodal equations have four or five entries a row however large the machine.
 *
 * <p>Unknowns are put in order of fewest neighbours first (Tinney and Walker, Proc. IEEE 55(11), 1801-1809, 1967), and rows
 * and columns are scaled to unit size by powers of two, so that micro-siemens beside mega-siemens do no harm. EJML's own
 * verdict is not used: its LU answers "solved" for exactly singular matrices, and its quality figure is a product over all
 * pivots that underflows for systems of a hundred unknowns; the smallest pivot of the scaled matrix is looked at instead.
 */
final class LinearSystem {
    /** Below this the scaled matrix is singular to working accuracy: a few units of rounding of numbers near 1. */
    private static final double SMALLEST_PIVOT = 1e-15;

    private final int size;
    private final int[] order;
    private final double[] rowScale;
    private final double[] columnScale;
    private final LuUpLooking_DSCC lu;
    private final double[] work;

    private LinearSystem(int[] order, double[] rowScale, double[] columnScale, LuUpLooking_DSCC lu) {
        this.size = order.length;
        this.order = order;
        this.rowScale = rowScale;
        this.columnScale = columnScale;
        this.lu = lu;
        this.work = new double[size];
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
        int strange = firstNotFinite(matrix);
        if (strange >= 0) {
            LinearSystem none = new LinearSystem(new int[size], rowScale, columnScale, new LuUpLooking_DSCC(null));
            return new Factored(none, strange / size);
        }
        scale(matrix, size, rowScale, columnScale);
        int[] order = fewestNeighboursFirst(matrix, size);
        LuUpLooking_DSCC lu = new LuUpLooking_DSCC(null);
        boolean whole = lu.decompose(sparse(matrix, size, order));
        LinearSystem system = new LinearSystem(order, rowScale, columnScale, lu);
        return new Factored(system, whole ? weakest(lu.getU(), order) : order[size - 1]);
    }

    private static int firstNotFinite(double[] matrix) {
        for (int k = 0; k < matrix.length; k++) {
            if (!Double.isFinite(matrix[k])) {
                return k;
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

    /**
     * Solves for one right side in place. Not for two threads at once.
     *
     * @param b right side in, solution out. Modified.
     */
    void solve(double[] b) {
        int[] rowOf = lu.getPinv();
        for (int k = 0; k < size; k++) {
            int unknown = order[k];
            work[rowOf[k]] = b[unknown] * rowScale[unknown];
        }
        TriangularSolver_DSCC.solveL(lu.getL(), work);
        TriangularSolver_DSCC.solveU(lu.getU(), work);
        for (int k = 0; k < size; k++) {
            int unknown = order[k];
            b[unknown] = work[k] * columnScale[unknown];
        }
    }

    private static DMatrixSparseCSC sparse(double[] a, int n, int[] order) {
        int entries = 0;
        for (double value : a) {
            entries += value != 0 ? 1 : 0;
        }
        DMatrixSparseCSC m = new DMatrixSparseCSC(n, n, entries);
        int at = 0;
        for (int c = 0; c < n; c++) {
            m.col_idx[c] = at;
            for (int r = 0; r < n; r++) {
                double value = a[order[r] * n + order[c]];
                if (value != 0) {
                    m.nz_rows[at] = r;
                    m.nz_values[at++] = value;
                }
            }
        }
        m.col_idx[n] = at;
        m.nz_length = at;
        m.indicesSorted = true;
        return m;
    }

    private static int[] fewestNeighboursFirst(double[] a, int n) {
        BitSet[] neighbours = new BitSet[n];
        for (int r = 0; r < n; r++) {
            neighbours[r] = new BitSet(n);
        }
        for (int r = 0; r < n; r++) {
            for (int c = 0; c < n; c++) {
                if (r != c && a[r * n + c] != 0) {
                    neighbours[r].set(c);
                    neighbours[c].set(r);
                }
            }
        }
        int[] order = new int[n];
        BitSet left = new BitSet(n);
        left.set(0, n);
        for (int k = 0; k < n; k++) {
            int best = left.nextSetBit(0);
            int fewest = Integer.MAX_VALUE;
            for (int r = best; r >= 0; r = left.nextSetBit(r + 1)) {
                int degree = neighbours[r].cardinality();
                if (degree < fewest) {
                    fewest = degree;
                    best = r;
                }
            }
            order[k] = best;
            left.clear(best);
            BitSet around = neighbours[best];
            for (int r = around.nextSetBit(0); r >= 0; r = around.nextSetBit(r + 1)) {
                neighbours[r].or(around);
                neighbours[r].clear(r);
                neighbours[r].clear(best);
            }
        }
        return order;
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
