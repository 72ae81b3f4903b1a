package fusetale.desk.start;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.circuit.CircuitFile;
import fusetale.circuit.CircuitReader;
import fusetale.store.Recent;
import fusetale.store.Store;
import fusetale.store.UnwritableFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class StartModelTest {
    @TempDir
    Path folder;

    private Store store;

    @BeforeEach
    void store() {
        store = new Store(folder.resolve("data"), folder.resolve("settings"));
    }

    @ParameterizedTest
    @EnumSource
    void aBoardOfTheProgramIsCopiedWithItsBlocksAndReadsWithoutComplaint(BuiltInBoard board) throws UnwritableFile {
        Path file = board.file(store);
        CircuitFile read = CircuitReader.withShippedParts().read(file);

        assertThat(file).startsWith(store.circuits());
        assertThat(read.problems()).isEmpty();
        assertThat(Objects.requireNonNull(read.circuit()).name()).isEqualTo(board.title());
        assertThat(board.says()).isNotBlank();
    }

    @Test
    void everyCircuitThatIsShippedIsOffered() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("circuits"))) {
            assertThat(files.filter(f -> f.toString().endsWith(".yaml"))).hasSameSizeAs(BuiltInBoard.values());
        }
    }

    @Test
    void whatSomebodyChangedInABoardStays() throws IOException {
        Path file = BuiltInBoard.FIRST_LIGHT.file(store);
        Files.writeString(file, Files.readString(file) + "# mine\n");

        assertThat(BuiltInBoard.FIRST_LIGHT.file(store)).content().endsWith("# mine\n");
    }

    @Test
    void aBoardThatAnEarlierProgramCopiedIsReplaced() throws IOException {
        Path file = BuiltInBoard.FIRST_LIGHT.file(store);
        String shipped = Files.readString(file);
        Files.writeString(file, "an earlier board");
        Files.writeString(store.circuits().resolve(".as-shipped/first-light.yaml"), "an earlier board");

        assertThat(BuiltInBoard.FIRST_LIGHT.file(store)).hasContent(shipped);
    }

    @Test
    void whereABoardCannotBeCopiedThatIsSaid() throws IOException {
        Files.writeString(folder.resolve("data"), "a file where the folder belongs");
        StartModel model = new StartModel(store, ZoneOffset.UTC);

        assertThat(model.board(BuiltInBoard.FOG_BELL)).isEmpty();
        assertThat(model.saidProperty().get()).contains("Fog Bell");
    }

    @Test
    void aRepairWhoseFileIsGoneStaysListedAndSaysSo() throws UnwritableFile {
        Path gone = folder.resolve("gone.repair.yaml");
        store.changeRecent(r -> r.opened(gone, "Sunday class", Instant.parse("2026-11-22T10:00:00Z")));
        StartModel model = new StartModel(store, ZoneOffset.UTC);
        Recent.Entry entry = model.recentProperty().get().entries().get(0);

        assertThat(model.remark(entry)).contains("not found", "gone.repair.yaml");
        model.forget(entry);
        assertThat(store.recent().value().entries()).isEmpty();
    }

    @Test
    void aRepairThatIsThereSaysWhenItWasOpened() throws IOException {
        Path file = Files.createFile(folder.resolve("a.repair.yaml"));
        store.changeRecent(r -> r.opened(file, "a", Instant.parse("2026-11-25T19:40:00Z")));
        StartModel model = new StartModel(store, ZoneOffset.UTC);
        Recent.Entry entry = model.recentProperty().get().entries().get(0);

        assertThat(model.remark(entry)).contains("Wed 25 Nov 2026, 19:40");
        model.pin(entry, true);
        assertThat(store.recent().value().entries().get(0).pinned()).isTrue();
    }
}
