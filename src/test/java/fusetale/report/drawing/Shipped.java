package fusetale.report.drawing;

import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.Arguments;

/** The drawings of every circuit that is shipped, in both styles. */
final class Shipped {
    private static final List<Arguments> ALL = read();

    private Shipped() {}

    static Stream<Arguments> drawings() {
        return ALL.stream();
    }

    static Circuit circuit(String name) {
        Path file = Path.of("circuits", name + ".yaml");
        return Objects.requireNonNull(
                CircuitReader.withShippedParts().read(file).circuit(), name);
    }

    private static List<Arguments> read() {
        try (Stream<Path> files = Files.list(Path.of("circuits"))) {
            return files.map(f -> f.getFileName().toString())
                    .filter(n -> n.endsWith(".yaml"))
                    .sorted()
                    .map(n -> circuit(n.replace(".yaml", "")))
                    .flatMap(c -> Stream.of(SymbolStyle.values())
                            .map(style -> Arguments.of(c.name(), style, c, DrawingPlan.of(c, style))))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
