package fusetale.mna;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Keeps the inputs of every stage of a pass, in blocks that are used again until a tape takes them along; one thread. */
final class Recorder {
    /** Stages in a block: one array for a whole pass of a machine would be too large for the nursery of the collector. */
    private static final int BLOCK = 64;

    private final int width;
    private List<double[]> blocks = new ArrayList<>();
    private double[] seconds = new double[0];
    private double[] weights = new double[0];
    private int[] levels = new int[0];
    private int size;

    Recorder(int width) {
        this.width = width;
    }

    void clear() {
        size = 0;
    }

    /** Stages kept so far. */
    int size() {
        return size;
    }

    /** Forgets all stages but the first so many. */
    void cut(int stages) {
        size = stages;
    }

    void add(double time, double weight, int level, double[] input) {
        if (size == seconds.length) {
            int more = Math.max(512, 2 * size);
            seconds = Arrays.copyOf(seconds, more);
            weights = Arrays.copyOf(weights, more);
            levels = Arrays.copyOf(levels, more);
        }
        if (size == BLOCK * blocks.size()) {
            blocks.add(new double[BLOCK * width]);
        }
        System.arraycopy(input, 0, blocks.get(size / BLOCK), size % BLOCK * width, width);
        seconds[size] = time;
        weights[size] = weight;
        levels[size] = level;
        size++;
    }

    /** What was kept, for good: its blocks go with it, and the recorder is empty. */
    Tape tape() {
        int used = (size + BLOCK - 1) / BLOCK;
        Tape tape = new Tape(
                width,
                blocks.subList(0, used).toArray(double[][]::new),
                Arrays.copyOf(seconds, size),
                Arrays.copyOf(weights, size),
                Arrays.copyOf(levels, size));
        blocks = new ArrayList<>(blocks.subList(used, blocks.size()));
        size = 0;
        return tape;
    }

    /** Inputs of every stage, in order. Its arrays are never written again. */
    static final class Tape {
        final int width;
        final double[] seconds;
        final double[] weights;
        final int[] levels;
        private final double[][] blocks;

        Tape(int width, double[][] blocks, double[] seconds, double[] weights, int[] levels) {
            this.width = width;
            this.blocks = blocks;
            this.seconds = seconds;
            this.weights = weights;
            this.levels = levels;
        }

        int size() {
            return seconds.length;
        }

        /** The array that holds a stage's inputs, from {@link #place} on. */
        double[] block(int stage) {
            return blocks[stage / BLOCK];
        }

        int place(int stage) {
            return stage % BLOCK * width;
        }

        double input(int stage, int input) {
            return block(stage)[place(stage) + input];
        }
    }
}
