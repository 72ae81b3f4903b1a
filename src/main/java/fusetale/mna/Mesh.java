package fusetale.mna;

import java.util.Arrays;
import java.util.stream.IntStream;

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

    /** The same with one step halved; it is longer than one grain. */
    Mesh halved(int step) {
        int[] out = new int[levels.length + 1];
        System.arraycopy(levels, 0, out, 0, step);
        out[step] = levels[step] - 1;
        out[step + 1] = levels[step] - 1;
        System.arraycopy(levels, step + 1, out, step + 2, levels.length - step - 1);
        return new Mesh(out);
    }

    /** The same with every step halved that is longer than one grain. */
    Mesh halved() {
        return new Mesh(Arrays.stream(levels)
                .flatMap(level -> level == 0 ? IntStream.of(0) : IntStream.of(level - 1, level - 1))
                .toArray());
    }

    /** The same with every two steps that make one of twice their length put together. */
    Mesh coarser() {
        int[] out = new int[levels.length];
        int n = 0;
        long tick = 0;
        for (int k = 0; k < levels.length; k++) {
            int level = levels[k];
            boolean pair = k + 1 < levels.length && levels[k + 1] == level && tick % (2L << level) == 0;
            out[n++] = pair ? level + 1 : level;
            tick += (pair ? 2L : 1L) << level;
            k += pair ? 1 : 0;
        }
        return of(out, n);
    }

    /** The same with every step longer than 2^coarsest grains cut into steps of that length. */
    Mesh atMost(int coarsest) {
        if (Arrays.stream(levels).allMatch(level -> level <= coarsest)) {
            return this;
        }
        return new Mesh(Arrays.stream(levels)
                .flatMap(level ->
                        IntStream.generate(() -> Math.min(level, coarsest)).limit(1L << Math.max(0, level - coarsest)))
                .toArray());
    }
}
