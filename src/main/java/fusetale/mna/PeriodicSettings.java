package fusetale.mna;

/**
 * How a periodic state is looked for.
 *
 * @param period length [s] of the period
 * @param accuracy local error allowed a step, as a ratio of each state's full scale
 * @param periodicity end less start allowed, as a ratio of full scale
 * @param mostPasses shooting passes before falling back to plain stepping
 * @param mostCycles cycles of plain stepping before giving up
 * @param fewestSteps steps a period has at least: a power of two from 8 to 16384
 */
public record PeriodicSettings(
        double period, double accuracy, double periodicity, int mostPasses, int mostCycles, int fewestSteps) {
    /** Refuses what has no meaning. */
    public PeriodicSettings {
        if (!(period > 0) || !Double.isFinite(period) || !(accuracy > 0) || !(periodicity > 0)) {
            throw new IllegalArgumentException(
                    "period, accuracy and periodicity must be above zero, the period finite");
        }
        if (fewestSteps < 8 || fewestSteps > Reductions.GRAINS || Integer.bitCount(fewestSteps) != 1) {
            throw new IllegalArgumentException("fewest steps must be a power of two from 8 to " + Reductions.GRAINS);
        }
    }

    /**
     * For comparing many machines at a mains frequency [Hz]: 99 of 100 figures of the shipped circuits within 0.05 % of the
     * converged value, the rest within 0.3 %.
     */
    public static PeriodicSettings mains(double hertz) {
        return new PeriodicSettings(1 / hertz, 1e-4, 9e-7, 40, 600, 128);
    }

    /** For figures that are shown: of those, all but one in 18,468 within 0.05 %, at nearly three times the steps. */
    public static PeriodicSettings shown(double hertz) {
        return mains(hertz).withAccuracy(5e-6).withFewestSteps(512);
    }

    /** Longest step as a power of two of grains. */
    int coarsest() {
        return Integer.numberOfTrailingZeros(Reductions.GRAINS / fewestSteps);
    }

    /** The same with more steps a period at least. */
    public PeriodicSettings withFewestSteps(int steps) {
        return new PeriodicSettings(period, accuracy, periodicity, mostPasses, mostCycles, steps);
    }

    /** The same with another local accuracy. */
    public PeriodicSettings withAccuracy(double ratio) {
        return new PeriodicSettings(period, ratio, periodicity, mostPasses, mostCycles, fewestSteps);
    }
}
