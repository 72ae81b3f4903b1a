package fusetale.aftermath;

import fusetale.signal.Waveform;

/**
 * What a current does at its worst over a run.
 *
 * @param peakAmps highest current, either direction [A]
 * @param ampsSquaredSeconds largest I²t of any stretch of the length asked for [A²s]
 */
public record Surge(double peakAmps, double ampsSquaredSeconds) {
    /**
     * Of a run.
     *
     * @param seconds length of the stretch [s]; half a cycle, for data sheets rate surges by that
     */
    public static Surge of(Waveform amps, double seconds) {
        double most = 0;
        double sum = 0;
        int from = 0;
        for (int k = 0; k < amps.size(); k++) {
            sum += heat(amps, k);
            while (amps.seconds(k) - amps.seconds(from) > seconds) {
                sum -= heat(amps, from);
                from++;
            }
            most = Math.max(most, sum);
        }
        return new Surge(Math.max(amps.highest(), -amps.lowest()), most);
    }

    private static double heat(Waveform amps, int k) {
        return amps.weight(k) * amps.value(k) * amps.value(k);
    }

    /** The worse of both in each figure. */
    public Surge or(Surge other) {
        return new Surge(Math.max(peakAmps, other.peakAmps), Math.max(ampsSquaredSeconds, other.ampsSquaredSeconds));
    }
}
