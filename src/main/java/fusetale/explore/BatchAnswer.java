package fusetale.explore;

import fusetale.fault.Supposition;
import fusetale.mna.NotSolved;
import java.util.List;

/**
 * What a batch says to one of its suppositions.
 *
 * @param <T> what is kept of a look
 */
public sealed interface BatchAnswer<T> {
    /** What was supposed. */
    Supposition supposition();

    /**
     * It has been solved.
     *
     * @param supposition what was supposed
     * @param kept what was asked to be kept of the look
     * @param melted fuses that melted, in that order; empty where fuses hold
     * @param effort what it took
     */
    record Found<T>(Supposition supposition, T kept, List<String> melted, Effort effort) implements BatchAnswer<T> {
        /** Copies the list. */
        public Found {
            melted = List.copyOf(melted);
        }
    }

    /**
     * It has not been solved.
     *
     * @param supposition what was supposed
     * @param reason why not; {@link NotSolved.Kind#STOPPED} where the caller stopped first
     */
    record NotFound<T>(Supposition supposition, NotSolved reason) implements BatchAnswer<T> {}

    /**
     * It cannot be asked of this machine, or its checks cannot be made.
     *
     * @param supposition what was supposed
     * @param text what to change
     */
    record Unfit<T>(Supposition supposition, String text) implements BatchAnswer<T> {}

    /**
     * A mistake in the program showed itself; kept, so that it does not take the other answers along.
     *
     * @param supposition what was supposed
     * @param thrown what was thrown
     */
    record Mistaken<T>(Supposition supposition, Throwable thrown) implements BatchAnswer<T> {}
}
