package fusetale.desk.watch;

import fusetale.circuit.Circuit;
import fusetale.circuit.Problem;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A circuit file as it was read last.
 *
 * @param file the file
 * @param board the last circuit that could be read from it; null where none ever could
 * @param current whether the file as it is now gives {@code board}; else something stands in the way
 * @param problems everything worth saying about the file as it is now
 */
public record Watched(Path file, @Nullable Circuit board, boolean current, List<Problem> problems) {
    /** Copies the list. */
    public Watched {
        problems = List.copyOf(problems);
    }

    /** The first thing that keeps the file, as it is now, from being used: it names file and line. */
    public Optional<Problem> obstacle() {
        return problems.stream().filter(Problem::isError).findFirst();
    }

    /** How many more there are. */
    public int furtherObstacles() {
        return (int) Math.max(0, problems.stream().filter(Problem::isError).count() - 1);
    }
}
