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
        return circuit(Path.of("circuits", name + ".yaml"));
    }

    /** The circuits of the literature. */
    static Stream<Circuit> benchmarks() {
        return files("benchmarks").stream().map(Shipped::circuit);
    }

    private static Circuit circuit(Path file) {
        return Objects.requireNonNull(
                CircuitReader.withShippedParts().read(file).circuit(), file::toString);
    }

    private static List<Arguments> read() {
        return Stream.concat(files("circuits").stream(), files("benchmarks").stream())
                .map(Shipped::circuit)
                .flatMap(c -> Stream.of(SymbolStyle.values())
                        .map(style -> Arguments.of(c.name(), style, c, DrawingPlan.of(c, style))))
                .toList();
    }

    private static List<Path> files(String folder) {
        try (Stream<Path> files = Files.list(Path.of(folder))) {
            return files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
