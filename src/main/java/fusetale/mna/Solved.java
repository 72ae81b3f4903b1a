package fusetale.mna;

import java.util.function.Function;

/**
 * A solution, or why there is none.
 *
 * @param <T> the solution's type
 */
public sealed interface Solved<T> {
    /**
     * A solution.
     *
     * @param value the solution
     * @param <T> its type
     */
    record Found<T>(T value) implements Solved<T> {}

    /**
     * No solution.
     *
     * @param reason why
     * @param <T> the type it would have had
     */
    record Failed<T>(NotSolved reason) implements Solved<T> {}

    /** The solution, or what {@code otherwise} makes of the reason. */
    default T orElse(Function<NotSolved, T> otherwise) {
        if (this instanceof Found<T> found) {
            return found.value();
        }
        return otherwise.apply(((Failed<T>) this).reason());
    }
}
