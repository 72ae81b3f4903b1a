package fusetale.aftermath;

import fusetale.signal.Waveform;

/**
 * How a rectifier leg, or anything else that conducts in pulses, carries its current over one cycle.
 *
 * @param meanAmps mean current [A]
 * @param rmsAmps heating current [A]
 * @param peakAmps highest current [A], 0 where none flows forward
 * @param degrees conduction angle: how much of the cycle's 360° the current is above a hundredth of its peak
 */
public record Conduction(double meanAmps, double rmsAmps, double peakAmps, double degrees) {
    /** Below this share of the peak a junction is on its exponential tail, not conducting. */
    private static final double EDGE_RATIO = 0.01;

    /** Below this peak [A] what flows is leakage. */
    private static final double LEAKAGE_AMPS = 1e-6;

    /** Of one cycle of a periodic state, forward current above 0. */
    public static Conduction of(Waveform amps) {
        double peak = Math.max(0, amps.highest());
        double share = peak < LEAKAGE_AMPS ? 0 : above(amps, EDGE_RATIO * peak) / amps.length();
        return new Conduction(amps.mean(), amps.rms(), peak, 360 * share);
    }

    /** R.m.s. over mean: 1 for d.c., π/2 for half a sine; 0 where no current flows. */
    public double formFactor() {
        return meanAmps > LEAKAGE_AMPS ? rmsAmps / meanAmps : 0;
    }

    /** Time [s] for which a cycle is above a level, straight lines between samples, the last joined to the first. */
    private static double above(Waveform wave, double level) {
        int n = wave.size();
        double sum = 0;
        for (int k = 0; k < n; k++) {
            int next = (k + 1) % n;
            double span = next > 0
                    ? wave.seconds(next) - wave.seconds(k)
                    : wave.length() - (wave.seconds(n - 1) - wave.seconds(0));
            double here = wave.value(k) - level;
            double there = wave.value(next) - level;
            if (here > 0 && there > 0) {
                sum += span;
            } else if (here > 0 || there > 0) {
                sum += span * Math.max(here, there) / Math.abs(here - there);
            }
        }
        return sum;
    }
}
