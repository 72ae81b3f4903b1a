package fusetale.mna;

import java.util.Arrays;

/**
 * The entries of a {@link Reduction} that sensitivities feel, column by column. A machine falls into blocks that hear next to
 * nothing of each other within one step (a rail behind its rectifier and its capacitor, a driver that is off): seven entries
 * in ten of a machine of four rails are below 1e-12. Sensitivities only steer Newton's method, so what is below a billionth
 * is left out; the solution itself leaves nothing out. Immutable.
 */
final class Felt {
    /** Least entry [V/V, A/A, ohm or S] that is kept. */
    private static final double LEAST = 1e-9;

    /** {@code outputs[input]}: which outputs an input moves, ascending. */
    final int[][] outputs;
    /** {@code entries[input]}: by how much. */
    final double[][] entries;

    Felt(double[][] columns, int rows) {
        this.outputs = new int[columns.length][];
        this.entries = new double[columns.length][];
        int[] found = new int[rows];
        for (int j = 0; j < columns.length; j++) {
            int n = 0;
            for (int r = 0; r < rows; r++) {
                if (Math.abs(columns[j][r]) > LEAST) {
                    found[n++] = r;
                }
            }
            outputs[j] = Arrays.copyOf(found, n);
            entries[j] = new double[n];
            for (int k = 0; k < n; k++) {
                entries[j][k] = columns[j][found[k]];
            }
        }
    }
}
