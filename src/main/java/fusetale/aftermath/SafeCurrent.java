package fusetale.aftermath;

import fusetale.circuit.DiodeModel;
import fusetale.circuit.Mounting;
import fusetale.circuit.Thermal;
import fusetale.signal.Waveform;
import java.util.List;
import java.util.function.DoubleFunction;

/**
 * The d.c. current that a part may carry for good: where its hottest junction reaches the highest temperature it stands, and
 * never more than its data sheet allows. The lower figure is that of warm air and poor thermal resistances.
 *
 * @param lowAmps on a bad day [A]
 * @param highAmps on a good day [A]
 */
public record SafeCurrent(double lowAmps, double highAmps) {
    /** kT/q at 25 °C [V]. */
    private static final double THERMAL_VOLTS = 0.0256926;

    private static final int HALVINGS = 60;

    /** Where no data sheet sets a limit the search ends here. */
    private static final double GREATEST_AMPS = 1000;

    /**
     * Watts of the hottest junction and of its whole case.
     *
     * @param junctionWatts of the junction
     * @param caseWatts of everything in the case
     */
    public record Heat(double junctionWatts, double caseWatts) {}

    /**
     * Of any part whose heat is a function of its load current.
     *
     * @param heat watts at a load current [A]; rising
     * @param ratedAmps what the data sheet allows [A]; may be infinite
     */
    public static SafeCurrent of(DoubleFunction<Heat> heat, Thermal thermal, Mounting mounting, double ratedAmps) {
        double most = Math.min(ratedAmps, GREATEST_AMPS);
        return new SafeCurrent(solve(heat, thermal, mounting, most, true), solve(heat, thermal, mounting, most, false));
    }

    private static double solve(
            DoubleFunction<Heat> heat, Thermal thermal, Mounting mounting, double most, boolean badDay) {
        double low = 0;
        double high = most;
        if (!tooHot(heat.apply(most), thermal, mounting, badDay)) {
            return most;
        }
        for (int k = 0; k < HALVINGS; k++) {
            double middle = (low + high) / 2;
            if (tooHot(heat.apply(middle), thermal, mounting, badDay)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return low;
    }

    private static boolean tooHot(Heat heat, Thermal thermal, Mounting mounting, boolean badDay) {
        JunctionTemperature.Range range =
                JunctionTemperature.of(heat.junctionWatts(), heat.caseWatts(), thermal, mounting);
        return (badDay ? range.highCelsius() : range.lowCelsius()) > thermal.highestCelsius();
    }

    /**
     * Watts of rectifier legs in one case when a load current of their present shape is scaled: the mean of v·i with the
     * junction's own law v = N·VT·ln(1 + i/IS) + i·RS at 25 °C, which is some tenths of a volt too much when hot, so that
     * the current found is on the safe side.
     *
     * @param legs currents of the legs over a cycle [A]
     * @param times what each is multiplied by
     */
    public static Heat rectifier(List<Waveform> legs, double times, DiodeModel model) {
        double hottest = 0;
        double all = 0;
        for (Waveform leg : legs) {
            double watts = legWatts(leg, times, model);
            hottest = Math.max(hottest, watts);
            all += watts;
        }
        return new Heat(hottest, all);
    }

    private static double legWatts(Waveform amps, double times, DiodeModel model) {
        double sum = 0;
        for (int k = 0; k < amps.size(); k++) {
            double i = times * amps.value(k);
            if (i > 0) {
                double volts = model.idealityRatio() * THERMAL_VOLTS * Math.log1p(i / model.saturationAmps())
                        + i * model.seriesOhms();
                sum += amps.weight(k) * volts * i;
            }
        }
        return sum / amps.length();
    }

    /** Half a sine of peak 1 A and then nothing: a leg before a load without a capacitor. */
    public static Waveform halfSine(boolean second) {
        int samples = 720;
        double[] seconds = new double[samples];
        double[] values = new double[samples];
        double[] weights = new double[samples];
        for (int k = 0; k < samples; k++) {
            seconds[k] = (k + 0.5) / samples;
            double sine = Math.sin(2 * Math.PI * seconds[k]);
            values[k] = Math.max(0, second ? -sine : sine);
            weights[k] = 1.0 / samples;
        }
        return new Waveform(seconds, values, weights);
    }
}
