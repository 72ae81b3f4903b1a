package fusetale.mna;

import java.util.Arrays;

/** Keeps the inputs of every stage of a pass, in buffers that only grow; one thread. */
final class Recorder {
    private final int width;
    private double[] inputs = new double[0];
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
            inputs = Arrays.copyOf(inputs, more * width);
            seconds = Arrays.copyOf(seconds, more);
            weights = Arrays.copyOf(weights, more);
            levels = Arrays.copyOf(levels, more);
        }
        System.arraycopy(input, 0, inputs, size * width, width);
        seconds[size] = time;
        weights[size] = weight;
        levels[size] = level;
        size++;
    }

    /** An immutable copy of what was kept. */
    Tape tape() {
        return new Tape(
                width,
                Arrays.copyOf(inputs, size * width),
                Arrays.copyOf(seconds, size),
                Arrays.copyOf(weights, size),
                Arrays.copyOf(levels, size));
    }

    /** Inputs of every stage, in order. Its arrays are never written again. */
    static final class Tape {
        final int width;
        final double[] inputs;
        final double[] seconds;
        final double[] weights;
        final int[] levels;

        Tape(int width, double[] inputs, double[] seconds, double[] weights, int[] levels) {
            this.width = width;
            this.inputs = inputs;
            this.seconds = seconds;
            this.weights = weights;
            this.levels = levels;
        }

        int size() {
            return seconds.length;
        }
    }
}
