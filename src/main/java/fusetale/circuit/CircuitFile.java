package fusetale.circuit;

import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What reading a circuit file gave.
 *
 * @param circuit the circuit, or null where an error stands in the way
 * @param problems everything worth saying about the file and the blocks it includes, from top to bottom
 * @param files the file and the blocks it includes, those among them that are missing too; empty for a text without a file
 */
public record CircuitFile(@Nullable Circuit circuit, List<Problem> problems, List<Path> files) {
    /** Copies the lists. */
    public CircuitFile {
        problems = List.copyOf(problems);
        files = List.copyOf(files);
    }

    /** Of a text without a file. */
    public CircuitFile(@Nullable Circuit circuit, List<Problem> problems) {
        this(circuit, problems, List.of());
    }

    /** The problems that keep the file from being used. */
    public List<Problem> errors() {
        return problems.stream().filter(Problem::isError).toList();
    }

    /** The problems it can be used in spite of. */
    public List<Problem> warnings() {
        return problems.stream().filter(p -> !p.isError()).toList();
    }
}
