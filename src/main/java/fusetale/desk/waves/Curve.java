package fusetale.desk.waves;

import fusetale.signal.Waveform;
import java.util.Arrays;

/** A waveform laid out along a time axis: two cycles of what repeats, the whole of what does not. Immutable. */
final class Curve {
    private static final int CYCLES = 2;

    private final double[] seconds;
    private final double[] values;

    private Curve(double[] seconds, double[] values) {
        this.seconds = seconds;
        this.values = values;
    }

    /** Two cycles, from the start of one. A cycle ends where it begins: its last sample stands at the start as well. */
    static Curve repeated(Waveform wave, double cycleSeconds) {
        int size = wave.size();
        if (size == 1) {
            return new Curve(new double[] {0, CYCLES * cycleSeconds}, new double[] {wave.value(0), wave.value(0)});
        }
        double[] seconds = new double[CYCLES * size + 1];
        double[] values = new double[CYCLES * size + 1];
        values[0] = wave.value(size - 1);
        double shift = cycleSeconds - wave.seconds(size - 1);
        for (int cycle = 0; cycle < CYCLES; cycle++) {
            for (int k = 0; k < size; k++) {
                int at = 1 + cycle * size + k;
                seconds[at] = cycle * cycleSeconds + Math.max(0, Math.min(wave.seconds(k) + shift, cycleSeconds));
                values[at] = wave.value(k);
            }
        }
        return new Curve(seconds, values);
    }

    /** The whole, once. */
    static Curve once(Waveform wave) {
        double[] seconds = new double[wave.size()];
        double[] values = new double[wave.size()];
        for (int k = 0; k < seconds.length; k++) {
            seconds[k] = wave.seconds(k);
            values[k] = wave.value(k);
        }
        return new Curve(seconds, values);
    }

    int size() {
        return seconds.length;
    }

    double seconds(int k) {
        return seconds[k];
    }

    double value(int k) {
        return values[k];
    }

    double end() {
        return seconds[seconds.length - 1];
    }

    /** Value at a time [s], in a straight line between samples; that of the first or the last one beyond the ends. */
    double at(double time) {
        if (time <= seconds[0]) {
            return values[0];
        }
        int low = 0;
        int high = seconds.length - 1;
        if (time >= seconds[high]) {
            return values[high];
        }
        while (high - low > 1) {
            int middle = (low + high) / 2;
            if (seconds[middle] <= time) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double length = seconds[high] - seconds[low];
        double share = length > 0 ? (time - seconds[low]) / length : 0;
        return values[low] + share * (values[high] - values[low]);
    }

    /**
     * Samples that show at a width: of those in one column of pixels the first, lowest, highest and last, so that no peak is
     * lost. Pairs of time and value.
     *
     * @param columns how many pixels wide, 1 or more
     */
    double[] thinned(int columns) {
        double[] kept = new double[2 * Math.min(size(), 4 * columns + 4)];
        int count = 0;
        int from = 0;
        double span = end() - seconds[0];
        while (from < size()) {
            int to = from;
            int low = from;
            int high = from;
            int column = column(from, columns, span);
            while (to + 1 < size() && column(to + 1, columns, span) == column) {
                to++;
                low = values[to] < values[low] ? to : low;
                high = values[to] > values[high] ? to : high;
            }
            int last = -1;
            int[] order = {from, Math.min(low, high), Math.max(low, high), to};
            for (int at : order) {
                if (at > last) {
                    kept[count++] = seconds[at];
                    kept[count++] = values[at];
                    last = at;
                }
            }
            from = to + 1;
        }
        return Arrays.copyOf(kept, count);
    }

    private int column(int k, int columns, double span) {
        return span > 0 ? (int) Math.min(columns - 1.0, (seconds[k] - seconds[0]) / span * columns) : 0;
    }
}
