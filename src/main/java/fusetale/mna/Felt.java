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

    /** {@code outputs[port]}: which outputs a port's current moves, ascending. */
    final int[][] outputs;
    /** {@code ohms[port]}: by how much. */
    final double[][] ohms;
    /** {@code states[output]}: which predicted states move an output, ascending. */
    final int[][] states;
    /** {@code entries[output]}: by how much. */
    final double[][] entries;

    /** Picks them out of the columns of a reduction. {@code columns}: Not modified. */
    Felt(double[][] columns, int rows, int stateCount, int firstPortInput) {
        this.outputs = new int[columns.length - firstPortInput][];
        this.ohms = new double[outputs.length][];
        int[] found = new int[Math.max(rows, stateCount)];
        for (int p = 0; p < outputs.length; p++) {
            double[] column = columns[firstPortInput + p];
            int n = 0;
            for (int r = 0; r < rows; r++) {
                if (Math.abs(column[r]) > LEAST) {
                    found[n++] = r;
                }
            }
            outputs[p] = Arrays.copyOf(found, n);
            ohms[p] = Arrays.stream(outputs[p]).mapToDouble(r -> column[r]).toArray();
        }
        this.states = new int[rows][];
        this.entries = new double[rows][];
        for (int r = 0; r < rows; r++) {
            int row = r;
            int n = 0;
            for (int s = 0; s < stateCount; s++) {
                if (Math.abs(columns[s][r]) > LEAST) {
                    found[n++] = s;
                }
            }
            states[r] = Arrays.copyOf(found, n);
            entries[r] =
                    Arrays.stream(states[r]).mapToDouble(s -> columns[s][row]).toArray();
        }
    }
}
