package fusetale.signal;

/**
 * A quantity over one cycle or one run: samples at rising times, each with the weight [s] its solver gives it in an
 * integral, so that means taken here balance exactly where the solver's do. Immutable.
 */
public final class Waveform {
    /** A sine's rms over its rectified mean, π/(2√2): what an average-responding meter multiplies by. */
    public static final double SINE_FORM_FACTOR = Math.PI / (2 * Math.sqrt(2));

    /** Second differences side by side that differ by less than this belong to a smooth curve: a corner's differ by tens. */
    private static final double ALIKE = 4;

    private final double[] seconds;
    private final double[] values;
    private final double[] weights;

    /**
     * Copies its arguments.
     *
     * @param seconds sample times [s], rising, at least one
     * @param values value at each time, SI
     * @param weights weight of each sample in an integral over the whole time [s], adding up to its length
     * @throws IllegalArgumentException where lengths differ, or are zero
     */
    public Waveform(double[] seconds, double[] values, double[] weights) {
        if (seconds.length == 0 || seconds.length != values.length || seconds.length != weights.length) {
            throw new IllegalArgumentException("a waveform needs as many times as values and weights, at least one");
        }
        this.seconds = seconds.clone();
        this.values = values.clone();
        this.weights = weights.clone();
    }

    /** A value that never changes. */
    public static Waveform steady(double value) {
        return new Waveform(new double[] {0}, new double[] {value}, new double[] {1});
    }

    /** Number of samples. */
    public int size() {
        return seconds.length;
    }

    /** Time [s] of sample {@code k}. */
    public double seconds(int k) {
        return seconds[k];
    }

    /** Value of sample {@code k}. */
    public double value(int k) {
        return values[k];
    }

    /** Weight [s] of sample {@code k}. */
    public double weight(int k) {
        return weights[k];
    }

    /** Length [s]: the sum of the weights. */
    public double length() {
        double sum = 0;
        for (double w : weights) {
            sum += w;
        }
        return sum;
    }

    /** Mean. */
    public double mean() {
        double sum = 0;
        for (int k = 0; k < values.length; k++) {
            sum += weights[k] * values[k];
        }
        return sum / length();
    }

    /** Root mean square, the steady part included. */
    public double rms() {
        double sum = 0;
        for (int k = 0; k < values.length; k++) {
            sum += weights[k] * values[k] * values[k];
        }
        return Math.sqrt(sum / length());
    }

    /** Root mean square of what is left when the mean is taken away. */
    public double alternatingRms() {
        double mean = mean();
        double sum = 0;
        for (int k = 0; k < values.length; k++) {
            double d = values[k] - mean;
            sum += weights[k] * d * d;
        }
        return Math.sqrt(sum / length());
    }

    /** Mean of the absolute value. */
    public double rectifiedMean() {
        return rectifiedMean(0);
    }

    /** Mean of the absolute value of what is left when the mean is taken away. */
    public double alternatingRectifiedMean() {
        return rectifiedMean(mean());
    }

    /** Lowest value: see {@link #highest}. */
    public double lowest() {
        int at = 0;
        for (int k = 1; k < values.length; k++) {
            at = values[k] < values[at] ? k : at;
        }
        return values[at] - beyond(at, -1);
    }

    /**
     * Highest value: that of the highest sample or, where the curve is smooth there, of the parabola through it and its
     * neighbours, which tops that of a sine to the fourth power of the distance between samples instead of the second.
     */
    public double highest() {
        int at = 0;
        for (int k = 1; k < values.length; k++) {
            at = values[k] > values[at] ? k : at;
        }
        return values[at] + beyond(at, 1);
    }

    /** Highest less lowest: ripple, peak to peak. */
    public double peakToPeak() {
        return highest() - lowest();
    }

    /**
     * This times another waveform, sample by sample: power from volts and amperes.
     *
     * @throws IllegalArgumentException where the two have other sample times
     */
    public Waveform times(Waveform other) {
        if (other.values.length != values.length) {
            throw new IllegalArgumentException(
                    "waveforms of " + values.length + " and " + other.values.length + " samples");
        }
        double[] product = new double[values.length];
        for (int k = 0; k < product.length; k++) {
            product[k] = values[k] * other.values[k];
        }
        return new Waveform(seconds, product, weights);
    }

    private double rectifiedMean(double around) {
        double sum = 0;
        for (int k = 0; k < values.length; k++) {
            sum += weights[k] * Math.abs(values[k] - around);
        }
        return sum / length();
    }

    /**
     * How far the curve goes beyond its extreme sample between the samples: by the parabola through three of them (Newton's
     * form), where the curve bends about equally at the samples beside; 0 at corners, steps and ends.
     */
    private double beyond(int at, int sign) {
        if (at < 2 || at > values.length - 3) {
            return 0;
        }
        double before = sign * bend(at - 1);
        double here = sign * bend(at);
        double after = sign * bend(at + 1);
        double most = Math.min(here, Math.min(before, after));
        double least = Math.max(here, Math.max(before, after));
        if (!(least < 0) || most < ALIKE * least) {
            return 0;
        }
        double slope = sign * (values[at] - values[at - 1]) / (seconds[at] - seconds[at - 1]);
        // slope of the parabola at the sample itself; its vertex lies −slope/(2·bend) from there
        double tangent = slope + here * (seconds[at] - seconds[at - 1]);
        return -tangent * tangent / (4 * here);
    }

    /** Second divided difference around sample {@code k}: half the second derivative. */
    private double bend(int k) {
        double late = (values[k + 1] - values[k]) / (seconds[k + 1] - seconds[k]);
        double early = (values[k] - values[k - 1]) / (seconds[k] - seconds[k - 1]);
        return (late - early) / (seconds[k + 1] - seconds[k - 1]);
    }
}
