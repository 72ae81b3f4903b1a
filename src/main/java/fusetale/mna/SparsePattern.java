package fusetale.mna;

import java.util.Arrays;
import java.util.BitSet;

/**
 * The places where the matrix of a network may have entries, in order of elimination, with the two parts every such matrix is
 * made of: A = G + C·perSecond. Worked out once a layout, for all step sizes. Immutable.
 *
 * <p>Unknowns are put in order of fewest neighbours first (Tinney and Walker, Proc. IEEE 55(11), 1801-1809, 1967).
 */
final class SparsePattern {
    final int size;
    /** Unknown at each place of the order. */
    final int[] order;
    /** Where each column begins among the entries; one more than there are columns. */
    final int[] columnStart;
    /** Row of each entry, in the order, ascending within a column. */
    final int[] rows;

    private final double[] g;
    private final double[] c;

    /**
     * From two matrices.
     *
     * @param g row-major, size × size. Not modified.
     * @param c row-major, size × size. Not modified.
     */
    SparsePattern(double[] g, double[] c, int size) {
        this.size = size;
        BitSet[] neighbours = new BitSet[size];
        for (int r = 0; r < size; r++) {
            neighbours[r] = new BitSet(size);
        }
        int entries = 0;
        int[] below = new int[size + 1];
        int[] columns = new int[size];
        for (int r = 0; r < size; r++) {
            for (int k = 0; k < size; k++) {
                if (g[r * size + k] != 0 || c[r * size + k] != 0) {
                    if (entries == columns.length) {
                        columns = Arrays.copyOf(columns, 2 * entries);
                    }
                    columns[entries++] = k;
                    neighbours[r].set(k);
                    neighbours[k].set(r);
                }
            }
            below[r + 1] = entries;
        }
        this.columnStart = new int[size + 1];
        this.rows = new int[entries];
        this.g = new double[entries];
        this.c = new double[entries];
        this.order = fewestFirst(neighbours);
        int[] placeOf = new int[size];
        for (int k = 0; k < size; k++) {
            placeOf[order[k]] = k;
        }
        for (int e = 0; e < entries; e++) {
            columnStart[placeOf[columns[e]] + 1]++;
        }
        for (int k = 0; k < size; k++) {
            columnStart[k + 1] += columnStart[k];
        }
        int[] next = columnStart.clone();
        for (int r = 0; r < size; r++) {
            // rows in order of elimination, so that they ascend within each column
            int from = order[r];
            for (int e = below[from]; e < below[from + 1]; e++) {
                int place = from * size + columns[e];
                int at = next[placeOf[columns[e]]]++;
                rows[at] = r;
                this.g[at] = g[place];
                this.c[at] = c[place];
            }
        }
    }

    /** The entries of G + C·perSecond. */
    double[] values(double perSecond) {
        double[] values = new double[g.length];
        for (int k = 0; k < values.length; k++) {
            values[k] = g[k] + c[k] * perSecond;
        }
        return values;
    }

    /** Takes (G + C·perSecond)·x off y, in place. {@code y}: Modified. */
    void subtractProduct(double perSecond, double[] x, double[] y) {
        for (int column = 0; column < size; column++) {
            double at = x[order[column]];
            for (int k = columnStart[column]; k < columnStart[column + 1]; k++) {
                y[order[rows[k]]] -= (g[k] + c[k] * perSecond) * at;
            }
        }
    }

    private static int[] fewestFirst(BitSet[] neighbours) {
        int n = neighbours.length;
        int[] degree = new int[n];
        for (int r = 0; r < n; r++) {
            neighbours[r].clear(r);
            degree[r] = neighbours[r].cardinality();
        }
        int[] order = new int[n];
        BitSet left = new BitSet(n);
        left.set(0, n);
        for (int k = 0; k < n; k++) {
            int best = left.nextSetBit(0);
            for (int r = best; r >= 0; r = left.nextSetBit(r + 1)) {
                if (degree[r] < degree[best]) {
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
                degree[r] = neighbours[r].cardinality();
            }
        }
        return order;
    }
}
