package fusetale.mna;

import org.jspecify.annotations.Nullable;

/**
 * The means of all node voltages of a recorded run. Every stage's unknowns follow from its inputs by equations that only its step
 * size decides, so their mean follows from the inputs' mean: one solution for each of half a dozen step sizes, instead of one for
 * each of five hundred stages. Immutable.
 */
final class Means {
    private final double[] unknowns;

    private Means(double[] unknowns) {
        this.unknowns = unknowns;
    }

    static Means of(SampledRun run) {
        Recorder.Tape tape = run.tape();
        double[] @Nullable [] sums = new double[Reductions.SLOTS] @Nullable [];
        double seconds = 0;
        for (int k = 0; k < tape.size(); k++) {
            double[] sum = sums[tape.levels[k]];
            if (sum == null) {
                sum = new double[tape.width];
                sums[tape.levels[k]] = sum;
            }
            double[] inputs = tape.block(k);
            int at = tape.place(k);
            for (int j = 0; j < sum.length; j++) {
                sum[j] += tape.weights[k] * inputs[at + j];
            }
            seconds += tape.weights[k];
        }
        double[] total = new double[run.reductions().layout.unknowns];
        for (int level = 0; level < sums.length; level++) {
            double[] sum = sums[level];
            if (sum != null) {
                Reduction.axpy(total, run.reduction(level).unknowns(sum), 1 / seconds, total.length);
            }
        }
        return new Means(total);
    }

    /** Mean voltage [V] of a node against another. */
    double across(int one, int two) {
        return Layout.across(unknowns, one, two);
    }
}
