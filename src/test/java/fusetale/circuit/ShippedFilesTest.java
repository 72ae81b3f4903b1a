package fusetale.circuit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every file the project ships is read without a word of complaint. */
class ShippedFilesTest {
    static Stream<Path> circuits() throws IOException {
        try (Stream<Path> machines = Files.list(Path.of("circuits"));
                Stream<Path> benchmarks = Files.list(Path.of("benchmarks"))) {
            return Stream.concat(machines, benchmarks)
                    .filter(p -> p.toString().endsWith(".yaml"))
                    .sorted()
                    .toList()
                    .stream();
        }
    }

    @ParameterizedTest
    @MethodSource("circuits")
    void shippedCircuitHasNoProblems(Path file) {
        CircuitFile read = CircuitReader.withShippedParts().read(file);

        assertThat(read.problems()).isEmpty();
        assertThat(read.circuit()).isNotNull();
    }

    @Test
    void shippedPartModelsHaveNoProblems() {
        assertThat(PartFiles.shipped().problems()).isEmpty();
    }

    @Test
    void everyFileOfPartModelsIsShipped() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("shared/parts"))) {
            List<String> names = files.map(p -> p.getFileName().toString()).toList();
            assertThat(PartFiles.SHIPPED).containsExactlyInAnyOrderElementsOf(names);
        }
    }
}
