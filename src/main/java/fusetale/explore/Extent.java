package fusetale.explore;

import fusetale.signal.Waveform;

/**
 * How far a curve goes over a cycle.
 *
 * @param low its lowest value
 * @param high its highest
 * @param mean its mean
 */
record Extent(double low, double high, double mean) {
    static Extent of(Waveform wave) {
        return new Extent(wave.lowest(), wave.highest(), wave.mean());
    }

    /** The largest value, either way. */
    double peak() {
        return Math.max(Math.abs(low), Math.abs(high));
    }

    /** How far two lie apart. */
    double from(Extent other) {
        return Math.max(Math.abs(mean - other.mean), Math.max(Math.abs(low - other.low), Math.abs(high - other.high)));
    }

    /** Whether two lie apart by more than a share of the larger peak, and by more than {@code least}. */
    boolean differs(Extent other, double ratio, double least) {
        return from(other) > Math.max(least, ratio * Math.max(peak(), other.peak()));
    }
}
