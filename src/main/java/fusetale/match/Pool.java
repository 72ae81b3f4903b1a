package fusetale.match;

import fusetale.circuit.MeterFunction;

/**
 * How likely a reading is where nothing is known: half of it what all faults together show there, by their weight, half flat
 * over all that a meter can show.
 */
final class Pool {
    private static final double LOWEST = -12;
    private static final double HIGHEST = 16;
    private static final double STEP = 0.25;
    private static final int BINS = (int) ((HIGHEST - LOWEST) / STEP);
    /** OL among all (judgement: half of all ohms readings across good parts). */
    private static final double FLAT_OVER = 0.2;

    private final double[] bins = new double[BINS];
    private double over;
    private double sum;

    void add(Expectation expectation, double weight) {
        switch (expectation.kind()) {
            case FIGURE -> {
                int b = bin(expectation.middle());
                bins[Math.max(0, b - 1)] += weight / 4;
                bins[b] += weight / 2;
                bins[Math.min(BINS - 1, b + 1)] += weight / 4;
                sum += weight;
            }
            case OVER -> {
                over += weight;
                sum += weight;
            }
            default -> {
                // says nothing
            }
        }
    }

    private static int bin(double t) {
        return (int) Math.min(BINS - 1, Math.max(0, Math.floor((t - LOWEST) / STEP)));
    }

    /** Density on the axis of a figure, probability of OL; of a buzzer, which beeps or is silent, a probability either way. */
    double of(MeterFunction function, Shown shown) {
        if (function == MeterFunction.CONTINUITY) {
            double silent = sum > 0 ? over / sum : FLAT_OVER;
            double either = (silent + FLAT_OVER) / 2;
            return shown instanceof Shown.Figure ? 1 - either : either;
        }
        if (shown instanceof Shown.Figure figure) {
            double flat = (1 - FLAT_OVER) / (HIGHEST - LOWEST);
            double pooled = sum > 0 ? bins[bin(Axis.at(function, figure.si()))] / sum / STEP : flat;
            return (pooled + flat) / 2;
        }
        double pooled = sum > 0 ? over / sum : FLAT_OVER;
        return (pooled + FLAT_OVER) / 2;
    }
}
