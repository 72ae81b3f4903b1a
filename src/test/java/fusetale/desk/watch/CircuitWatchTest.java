package fusetale.desk.watch;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.circuit.CircuitReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.util.Objects;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CircuitWatchTest {
    private static final String BOARD = """
            format: 1
            name: Plank
            mains: {volts: 120 V, range: 110..126 V, hertz: 60 Hz}
            ground: gnd
            include:
              - {file: blocks/load.yaml, with: {n: 1}}
            parts:
              T1: {is: transformer, primary: {pins: [line, neutral], volts: 120 V, ohms: 12 ohm},
                   windings: {sec: {pins: [s1, gnd], volts: 12 V, ohms: 0.4 ohm}}, regulation: 12 %}
            testpoints:
              TP1: {at: s1, against: gnd, label: secondary}
            drawing: {T1: {square: [1, 1]}}
            """;

    private static final String BLOCK = """
            format: 1
            parameters: [n]
            parts:
              R<n>: {is: resistor, between: [s1, gnd], value: 100 ohm}
            drawing: {R<n>: {square: [2, 1]}}
            """;

    @TempDir
    Path folder;

    private final BlockingQueue<Watched> told = new LinkedBlockingQueue<>();
    private Path file = Path.of("");
    private @Nullable CircuitWatch watch;

    @BeforeEach
    void board() throws IOException {
        file = Files.writeString(folder.resolve("plank.yaml"), BOARD);
        Files.createDirectories(folder.resolve("blocks"));
        Files.writeString(folder.resolve("blocks/load.yaml"), BLOCK);
    }

    @AfterEach
    void end() {
        if (watch != null) {
            watch.close();
        }
    }

    private Watched begun() {
        watch = CircuitWatch.over(file, CircuitReader.withShippedParts(), Duration.ofMillis(40), told::add);
        return next();
    }

    private Watched next() {
        try {
            return Objects.requireNonNull(told.poll(20, TimeUnit.SECONDS), "nothing was told");
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    private void quiet() throws InterruptedException {
        assertThat(told.poll(300, TimeUnit.MILLISECONDS)).isNull();
    }

    private static String name(Watched watched) {
        return Objects.requireNonNull(watched.board()).name();
    }

    @Test
    void theBoardIsReadAtOnceAndNotAgainWhileNothingChanges() throws InterruptedException {
        Watched first = begun();

        assertThat(first.problems()).isEmpty();
        assertThat(first.current()).isTrue();
        assertThat(name(first)).isEqualTo("Plank");
        quiet();
    }

    @Test
    void aChangedFileIsReadAnew() throws IOException {
        begun();
        Files.writeString(file, BOARD.replace("Plank", "New Plank"));

        Watched now = next();
        assertThat(name(now)).isEqualTo("New Plank");
        assertThat(WatchWords.line(now)).contains("plank.yaml");
    }

    @Test
    void aFilePutInTheOldOnesPlaceIsReadAnew() throws IOException {
        begun();
        Path beside = Files.writeString(folder.resolve("plank.yaml~"), BOARD.replace("Plank", "New Plank"));
        Files.move(beside, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);

        assertThat(name(next())).isEqualTo("New Plank");
    }

    @Test
    void whileAFileIsSpoiltTheLastGoodBoardStandsAndTheLineIsNamed() throws IOException {
        begun();
        Files.writeString(file, BOARD.replace("ohms: 12 ohm", "ohms: 12 parsecs"));

        Watched spoilt = next();
        assertThat(spoilt.current()).isFalse();
        assertThat(name(spoilt)).isEqualTo("Plank");
        assertThat(WatchWords.line(spoilt)).contains("plank.yaml:8:", "parsecs");

        Files.writeString(file, BOARD.replace("Plank", "Mended"));
        Watched mended = next();
        assertThat(mended.current()).isTrue();
        assertThat(name(mended)).isEqualTo("Mended");
    }

    @Test
    void blocksAreWatchedToo() throws IOException {
        begun();
        Files.writeString(folder.resolve("blocks/load.yaml"), BLOCK.replace("100 ohm", "100 parsecs"));
        assertThat(WatchWords.line(next())).contains("load.yaml:4");

        Files.writeString(folder.resolve("blocks/load.yaml"), BLOCK.replace("R<n>", "R1<n>"));
        assertThat(Objects.requireNonNull(next().board()).part("R11")).isPresent();
    }

    @Test
    void aMissingBlockThatAppearsIsNoticed() throws IOException {
        Files.delete(folder.resolve("blocks/load.yaml"));
        Watched first = begun();
        assertThat(first.board()).isNull();
        assertThat(WatchWords.line(first)).contains("load.yaml");

        Files.writeString(folder.resolve("blocks/load.yaml"), BLOCK);
        assertThat(name(next())).isEqualTo("Plank");
    }

    @Test
    void aFileThatIsDeletedIsSaidAndTheBoardStands() throws IOException {
        begun();
        Files.delete(file);

        Watched gone = next();
        assertThat(gone.current()).isFalse();
        assertThat(name(gone)).isEqualTo("Plank");
    }

    @Test
    void nothingIsToldAfterTheEnd() throws IOException, InterruptedException {
        begun();
        Objects.requireNonNull(watch).close();
        Files.writeString(file, BOARD.replace("Plank", "New Plank"));

        quiet();
    }
}
