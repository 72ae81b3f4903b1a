package fusetale.aftermath;

import java.util.SplittableRandom;

/**
 * What is not known of one machine, drawn. Each figure depends on the seed, the machine and the figure's own name only, so that
 * it is the same whatever else is drawn.
 *
 * @param seed of all machines
 * @param machine which of them
 */
record Draw(long seed, int machine) {
    private static final long MACHINE_STRIDE = 0x9E3779B97F4A7C15L; // 2^64 over the golden ratio

    /** Evenly from 0 to 1. */
    double even(String figure) {
        return new SplittableRandom(seed + machine * MACHINE_STRIDE ^ (long) figure.hashCode() << 20).nextDouble();
    }

    /** Evenly from {@code low} to {@code high}. */
    double between(String figure, double low, double high) {
        return low + even(figure) * (high - low);
    }

    /** A factor from 1/{@code ratio} to {@code ratio}, evenly in its logarithm. */
    double factor(String figure, double ratio) {
        return Math.pow(ratio, 2 * even(figure) - 1);
    }
}
