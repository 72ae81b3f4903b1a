package fusetale.studies;

import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitFile;
import fusetale.circuit.CircuitReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/** Circuit files that studies work on. */
final class Shipped {
    private Shipped() {}

    /** The circuit of a file, which must be one without errors. */
    static Circuit read(String file) {
        CircuitFile read = CircuitReader.withShippedParts().read(Path.of(file));
        return Objects.requireNonNull(read.circuit(), () -> file + ": " + read.errors());
    }

    /** The circuit files of a folder, by name. */
    static List<String> in(String folder) throws IOException {
        try (Stream<Path> found = Files.walk(Path.of(folder), 1)) {
            return found.map(Path::toString)
                    .filter(p -> p.endsWith(".yaml"))
                    .sorted()
                    .toList();
        }
    }
}
