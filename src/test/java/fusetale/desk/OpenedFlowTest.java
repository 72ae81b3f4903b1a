package fusetale.desk;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.desk.match.MadeUp;
import fusetale.store.Preferences;
import fusetale.store.Recent;
import fusetale.store.Repair;
import fusetale.store.Store;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.TimeUnit;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.util.WaitForAsyncUtils;

/** Repairs that are opened again, and circuit files that change beside the window. */
class OpenedFlowTest extends WindowFlow {
    private static final String METER_ON = " Power on, meter on d.c. volts.";

    @TempDir
    Path folder;

    private Path circuit = Path.of("");

    @Override
    Program made(Stage stage) {
        return new Program(stage, (board, meter) -> MadeUp.in(MadeUp.Mood.PLAIN).of(board, meter), new FileChoice() {
            @Override
            public java.util.Optional<Path> toOpen(String kind, List<String> endings) {
                return java.util.Optional.empty();
            }

            @Override
            public java.util.Optional<Path> toSave(String name, String ending) {
                return java.util.Optional.empty();
            }
        });
    }

    @BeforeEach
    void circuit() throws IOException {
        circuit = Files.copy(Path.of("circuits/first-light.yaml"), folder.resolve("first-light.yaml"));
    }

    private Path repair(String sentence, String... readings) throws IOException {
        Repair repair = new Repair(
                "First Light",
                circuit.toString(),
                sentence,
                List.of("Suppose R1 is open." + METER_ON),
                List.of(readings),
                Instant.parse("2026-11-01T10:00:00Z"));
        return Files.writeString(folder.resolve("mine.repair.yaml"), repair.text());
    }

    private void replace(String what, String with) throws IOException {
        Files.writeString(circuit, Files.readString(circuit).replaceAll("\\b" + what + "\\b", with));
    }

    private void open(Path file) {
        interact(() -> program().open(file));
        until(() -> program()
                .opened()
                .filter(r -> circuit.equals(r.model().state().file()))
                .isPresent());
    }

    private String sentence() {
        return model().sentences().text(model().state().sentence());
    }

    private String told() {
        return repair().window().consequence().getAccessibleText();
    }

    @Test
    void whatWasLostIsToldUntilSomethingElseIsSaidAndStaysInItsFile() throws IOException {
        Path file = repair("Suppose R2 is open." + METER_ON, "TP2 14.1 V d.c. volts");
        replace("TP2", "TP12");
        String before = Files.readString(file);
        open(file);
        // the watch reads the file anew meanwhile
        WaitForAsyncUtils.sleep(1500, TimeUnit.MILLISECONDS);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(told()).contains("Not everything of this repair could be read", "TP2");

        interact(() -> repair().autosave().now());
        assertThat(folder)
                .isDirectoryNotContaining(f -> f.getFileName().toString().contains("mine") && !f.equals(file));
        interact(() -> {
            program().take(Command.UNDO);
            repair().window().commands().take(Command.UNDO);
            repair().autosave().now();
        });
        Path other = repair().autosave().file();

        assertThat(sentence()).startsWith("Suppose R1 is open.");
        assertThat(other).isNotEqualTo(file);
        assertThat(Files.readString(file)).isEqualTo(before);
        assertThat(Store.here().recent().value().entries())
                .extracting(Recent.Entry::file)
                .contains(other, file);
    }

    @Test
    void openingARepairWritesNothing() throws IOException {
        Path file = repair("Suppose R2 is open." + METER_ON, "TP2 14.1 V d.c. volts");
        String before = Files.readString(file);
        open(file);
        interact(() -> repair().autosave().now());

        assertThat(Files.readString(file)).isEqualTo(before);
        key(KeyCode.ESCAPE);
        key(KeyCode.Z);
        assertThat(sentence()).startsWith("Suppose R1 is open.");
        assertThat(model().state().found()).hasSize(1);
    }

    @Test
    void whenItsCircuitIsMendedTheRepairIsOpened() throws IOException {
        Path file = repair("Suppose R2 is open." + METER_ON, "TP2 14.1 V d.c. volts");
        String good = Files.readString(circuit);
        Files.writeString(circuit, good.replace("plus: raw", "plsu: raw"));
        interact(() -> program().open(file));
        until(() ->
                program().opened().isEmpty() && !lookup(".problem").queryAll().isEmpty());
        Files.writeString(circuit, good);
        until(() -> program().opened().isPresent());

        assertThat(sentence()).startsWith("Suppose R2 is open.");
        assertThat(model().state().found()).hasSize(1);
        assertThat(repair().autosave().file()).isEqualTo(file);
    }

    @Test
    void aCircuitThatChangesTakesEveryStateAlong() throws IOException {
        open(repair("Suppose R2 is open." + METER_ON));
        WaitForAsyncUtils.sleep(1000, TimeUnit.MILLISECONDS);
        replace("R2", "R3");
        until(() -> model().board().part("R3").isPresent());
        WaitForAsyncUtils.waitForFxEvents();

        assertThat(told()).contains("the board was read anew", "Nothing is supposed any more", "R2");
        interact(() -> model().undo());
        assertThat(sentence()).startsWith("Suppose R1 is open.");
        assertThat(model().board().part("R3")).isPresent();
    }

    @Test
    void aNewRepairBeginsWithTheMeterOfThisBench() {
        interact(() -> program().prefer(p -> p.withMeter("basic 3½ digit").withMainsHertz(50)));
        open(circuit);

        assertThat(sentence()).contains("basic 3½ digit", "50 Hz");
        interact(() -> program().prefer(p -> Preferences.USUAL));
    }
}
