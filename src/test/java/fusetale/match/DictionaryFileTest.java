package fusetale.match;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitReader;
import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A kept dictionary is found again by the next run: the content its name is made of must not stand in an order that changes from
 * run to run, as that of {@code Map.of} and {@code Set.of} does (documentation of {@code java.util.Set}, "Unmodifiable Sets").
 */
class DictionaryFileTest {
    @ParameterizedTest
    @ValueSource(strings = {"first-light", "night-ferry", "fog-bell"})
    void nothingOfACircuitStandsInAnOrderOfChance(String name) throws Exception {
        Circuit circuit = Objects.requireNonNull(CircuitReader.withShippedParts()
                .read(Path.of("circuits/" + name + ".yaml"))
                .circuit());
        List<String> loose = new ArrayList<>();
        walk("parts", circuit.parts(), loose);
        walk("connectors", circuit.connectors(), loose);
        walk("mains", circuit.mains(), loose);
        assertThat(loose).isEmpty();
    }

    /** Three programs, one name: each has its own order of {@code Map.of}. */
    @Test
    void everyRunLooksForTheSameFile() throws Exception {
        List<Process> runs = new ArrayList<>();
        for (int k = 0; k < 3; k++) {
            runs.add(new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-cp",
                            System.getProperty("java.class.path"),
                            Name.class.getName())
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start());
        }
        Set<String> names = new HashSet<>();
        for (Process run : runs) {
            names.add(new String(run.getInputStream().readAllBytes(), StandardCharsets.UTF_8));
            assertThat(run.waitFor()).isZero();
        }
        assertThat(names).hasSize(1);
        assertThat(names.iterator().next()).contains(".dictionary");
    }

    /** Prints where a machine's dictionary is kept. */
    static final class Name {
        private Name() {}

        /** Runs. */
        public static void main(String[] args) throws Exception {
            Path folder = Path.of(
                    System.getProperty("java.io.tmpdir"),
                    "fusetale-name-" + ProcessHandle.current().pid());
            Circuit circuit = Objects.requireNonNull(CircuitReader.withShippedParts()
                    .read(Path.of("circuits/night-ferry.yaml"))
                    .circuit());
            DictionaryFile.of(folder, circuit, "").write(DictionaryFile.Content.NOTHING);
            try (var files = Files.list(folder)) {
                for (Path file : files.toList()) {
                    System.out.println(file.getFileName());
                    Files.delete(file);
                }
            }
            Files.delete(folder);
        }
    }

    private static void walk(String path, Object value, List<String> loose) throws ReflectiveOperationException {
        boolean byChance = value != null
                && value.getClass().getName().startsWith("java.util.ImmutableCollections")
                && ((value instanceof Map<?, ?> m && m.size() > 1) || (value instanceof Set<?> s && s.size() > 1));
        if (byChance) {
            loose.add(path);
        }
        if (value instanceof Iterable<?> all) {
            for (Object one : all) {
                walk(path, one, loose);
            }
        } else if (value instanceof Map<?, ?> map) {
            for (Map.Entry<?, ?> e : map.entrySet()) {
                walk(path + "." + e.getKey(), e.getValue(), loose);
            }
        } else if (value instanceof Optional<?> maybe && maybe.isPresent()) {
            walk(path, maybe.get(), loose);
        } else if (value instanceof Record) {
            for (RecordComponent part : value.getClass().getRecordComponents()) {
                var get = part.getAccessor();
                get.setAccessible(true);
                walk(path + "." + value.getClass().getSimpleName() + "." + part.getName(), get.invoke(value), loose);
            }
        }
    }
}
