package fusetale.mna;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Which stretches of each column of a reduction are not nothing. A machine falls into blocks by itself: within one step a rail
 * hears of another only through the transformer, and of that a capacitor behind a rectifier passes on less than the rounding
 * of its voltage. Where the blocks are small against the machine only they are gone through; where they are not, whole
 * columns are quicker. Immutable.
 */
final class Blocks {
    /** An entry [V/V, A/A, ohm or S] below this moves an output by less than the last digits of a volt or an ampere. */
    private static final double NOTHING = 1e-13;
    /** Stretches closer than this are one: to begin another costs as much. */
    private static final int GAP = 12;
    /** Worth it where the stretches cover less than this part of the columns. */
    private static final double MOST_COVERED = 0.35;

    /** {@code runs[input]}: first and end of each stretch, one after the other. */
    private final int[][] runs;

    private Blocks(int[][] runs) {
        this.runs = runs;
    }

    /** The blocks of some columns; null where whole columns are quicker. {@code columns}: Not modified. */
    static @Nullable Blocks of(double[][] columns, int rows) {
        int[][] runs = new int[columns.length][];
        long covered = 0;
        int[] found = new int[rows + 2];
        for (int j = 0; j < columns.length; j++) {
            int n = 0;
            for (int r = 0; r < rows; r++) {
                if (Math.abs(columns[j][r]) > NOTHING) {
                    if (n > 0 && r - found[n - 1] < GAP) {
                        found[n - 1] = r + 1;
                    } else {
                        found[n++] = r;
                        found[n++] = r + 1;
                    }
                }
            }
            runs[j] = Arrays.copyOf(found, n);
            for (int k = 0; k < n; k += 2) {
                covered += found[k + 1] - found[k];
            }
        }
        return covered < MOST_COVERED * columns.length * rows ? new Blocks(runs) : null;
    }

    /** Adds a·column {@code input} to {@code y}, in its stretches only. {@code y}: Modified. */
    void axpy(double[] y, double[] column, double a, int input) {
        int[] run = runs[input];
        for (int k = 0; k < run.length; k += 2) {
            stretch(y, column, a, run[k], run[k + 1]);
        }
    }

    private static void stretch(double[] y, double[] x, double a, int from, int end) {
        for (int k = from; k < end; k++) {
            y[k] += a * x[k];
        }
    }
}
