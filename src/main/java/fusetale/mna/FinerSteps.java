package fusetale.mna;

import org.jspecify.annotations.Nullable;

/**
 * Asks for finer steps where the errors of all steps add up to too much. Where a choke rings with its capacitor, what each step
 * errs by stays until the next cycle and adds to that one's; the accuracy of a single step does not show it.
 */
final class FinerSteps {
    /** The error of a cycle goes with h², that of a step with h³. */
    private static final double ORDER = 1.5;
    /**
     * What the errors of all steps may add up to where a step's may be 1, as ratios of full scale: of the usual 1e-4, 5e-4, since
     * readings are told to 0.05 %.
     */
    private static final double MOST_OF_UNIT = 0.232;
    /** What is aimed at where it was more, as a part of that. */
    private static final double WANTED_PART = 0.5;

    private static final int MOST_TIMES = 3;

    private final double most;
    private int times;

    /**
     * For one search.
     *
     * @param accuracy local error allowed a step at first, as a ratio of full scale
     */
    FinerSteps(double accuracy) {
        this.most = MOST_OF_UNIT * Math.pow(accuracy, 1 / ORDER);
    }

    /**
     * Whether finer steps are to be laid; the map then asks for them.
     *
     * @param map that has just taken a cycle with its sensitivities
     * @param halved what that cycle misses by with its steps halved; null where that was not found
     * @param inverse of that cycle; null where there is none
     */
    boolean wanted(PeriodMap map, double @Nullable [] halved, @Nullable PeriodInverse inverse) {
        double error = halved == null ? 0 : map.error(halved, inverse);
        if (!(error > most) || times >= MOST_TIMES) {
            return false;
        }
        times++;
        map.accuracy(map.accuracy() * Math.pow(WANTED_PART * most / error, ORDER));
        return true;
    }
}
