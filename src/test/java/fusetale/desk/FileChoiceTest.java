package fusetale.desk;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.desk.export.Ending;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which file is written to. */
class FileChoiceTest {
    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({
        "readings, readings.csv",
        "readings.csv, readings.csv",
        "READINGS.CSV, READINGS.CSV",
        "board 2.1, board 2.1.csv",
        "readings.txt, readings.txt.csv",
        "csv, csv.csv"
    })
    void aNameTypedWithoutItsEndingGetsIt(String typed, String whole) {
        assertThat(Ending.of(folder.resolve(typed), "csv")).isEqualTo(folder.resolve(whole));
    }

    private Optional<Path> asked(List<Path> proposed, String... typed) {
        Deque<String> names = new ArrayDeque<>(List.of(typed));
        return FileChoice.asked(Path.of("proposed.csv"), "csv", path -> {
            proposed.add(path);
            return Optional.ofNullable(names.poll()).map(folder::resolve);
        });
    }

    /** The system asked about the name that was typed, which nothing had yet. */
    @Test
    void nothingIsWrittenOverThatNobodyWasWarnedOf() throws IOException {
        Files.writeString(folder.resolve("mine.csv"), "kept");
        List<Path> proposed = new ArrayList<>();

        assertThat(asked(proposed, "mine", "other")).contains(folder.resolve("other.csv"));
        assertThat(proposed).containsExactly(Path.of("proposed.csv"), folder.resolve("mine.csv"));
        assertThat(asked(new ArrayList<>(), "mine", "mine.csv"))
                .as("warned by the system")
                .contains(folder.resolve("mine.csv"));
        assertThat(asked(new ArrayList<>(), "mine")).as("thought better of it").isEmpty();
        assertThat(asked(new ArrayList<>(), "new")).contains(folder.resolve("new.csv"));
    }
}
