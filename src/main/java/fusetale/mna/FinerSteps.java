package fusetale.mna;

import org.jspecify.annotations.Nullable;

/**
 * Asks for finer steps where the errors of all steps add up to too much. Where a choke rings with its capacitor, what each step
 * errs by stays until the next cycle and adds to that one's; the accuracy of a single step does not show it.
 */
final class FinerSteps {
    /** What the errors of all steps may add up to, as a ratio of full scale: readings are told to 0.05 %. */
    private static final double MOST_ERROR = 5e-4;
    /** What is aimed at where it was more. */
    private static final double WANTED_ERROR = MOST_ERROR / 2;
    /** The error of a cycle goes with h², that of a step with h³. */
    private static final double ORDER = 1.5;

    private static final int MOST_TIMES = 3;

    private int times;

    /**
     * Whether finer steps are to be laid; the map then asks for them.
     *
     * @param map that has just taken a cycle with its sensitivities
     * @param inverse of that cycle; null where there is none
     */
    boolean wanted(PeriodMap map, @Nullable PeriodInverse inverse) {
        double error = map.error(inverse);
        if (!(error > MOST_ERROR) || times >= MOST_TIMES) {
            return false;
        }
        times++;
        map.accuracy(map.accuracy() * Math.pow(WANTED_ERROR / error, ORDER));
        return true;
    }
}
