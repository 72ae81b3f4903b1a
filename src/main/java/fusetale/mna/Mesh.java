package fusetale.mna;

import java.util.Arrays;

/** The steps of one period, each a power of two grains and aligned to its own length. Immutable. */
final class Mesh {
    private final int[] levels;

    private Mesh(int[] levels) {
        this.levels = levels;
    }

    static Mesh of(int[] levels, int count) {
        return new Mesh(Arrays.copyOf(levels, count));
    }

    int size() {
        return levels.length;
    }

    int level(int step) {
        return levels[step];
    }

    /** The same with one step halved; steps of one grain stay. */
    Mesh halved(int step) {
        double[] errors = new double[levels.length];
        errors[step] = 2;
        return adapted(errors, 1, 0, 0);
    }

    /**
     * Halves steps whose error is above {@code high}, joins neighbours whose errors are both below {@code low}.
     *
     * @param errors one a step
     * @param coarsest longest step allowed, as a level
     */
    Mesh adapted(double[] errors, double high, double low, int coarsest) {
        int[] out = new int[2 * levels.length];
        int n = 0;
        long tick = 0;
        for (int k = 0; k < levels.length; k++) {
            int level = levels[k];
            boolean joins = k + 1 < levels.length
                    && levels[k + 1] == level
                    && level < coarsest
                    && tick % (2L << level) == 0
                    && errors[k] < low
                    && errors[k + 1] < low;
            if (errors[k] > high && level > 0) {
                out[n++] = level - 1;
                out[n++] = level - 1;
            } else if (joins) {
                out[n++] = level + 1;
                tick += 1L << level;
                k++;
            } else {
                out[n++] = level;
            }
            tick += 1L << level;
        }
        return of(out, n);
    }
}
