package fusetale.desk;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.circuit.Circuit;
import fusetale.desk.state.BenchState;
import fusetale.desk.state.DeskModel;
import fusetale.desk.state.Workers;
import fusetale.sentence.Sentence;
import fusetale.sentence.Sentences;
import fusetale.store.Autosave;
import fusetale.store.Kept;
import fusetale.store.Preferences;
import fusetale.store.Repair;
import fusetale.store.Saved;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Opening a file must lose nothing of it. */
class OpenedTest {
    private static final String METER_ON = " Power on, meter on d.c. volts.";

    @TempDir
    Path folder;

    private Path circuit = Path.of("");

    @BeforeEach
    void circuit() throws IOException {
        circuit = Files.copy(Path.of("circuits/first-light.yaml"), folder.resolve("first-light.yaml"));
    }

    /** Point TP2 is called TP12 from now on. */
    private void rename() throws IOException {
        Files.writeString(circuit, Files.readString(circuit).replaceAll("\\bTP2\\b", "TP12"));
    }

    private Path repair(List<String> undo, String sentence, String... readings) throws IOException {
        Repair repair = new Repair(
                "First Light",
                circuit.toString(),
                sentence,
                undo,
                List.of(readings),
                Instant.parse("2026-11-01T10:00:00Z"));
        return Files.writeString(folder.resolve("mine.repair.yaml"), repair.text());
    }

    private Opened.Board open(Path file) {
        return (Opened.Board) Opened.read(file, Preferences.USUAL);
    }

    private static DeskModel model(Opened.Board opened) {
        return DeskModel.resting(
                new Workers(Runnable::run, mistake -> {
                    throw new AssertionError(mistake);
                }),
                opened.been());
    }

    @Test
    void readingsThatTheBoardLostStayInTheirFile() throws IOException {
        Path file = repair(List.of(), "Suppose R1 is open." + METER_ON, "TP2 14.1 V d.c. volts", "TP1 17 V d.c. volts");
        rename();
        String before = Files.readString(file);
        Opened.Board opened = open(file);
        DeskModel model = model(opened);
        List<Saved> told = new ArrayList<>();
        Kept<Repair> kept = opened.repair().orElseThrow();

        assertThat(opened.lost()).singleElement().asString().contains("TP2");
        try (Autosave autosave = new Autosave.Keeping(
                        folder.resolve("versions"), Duration.ofHours(1), Clock.systemUTC(), told::add)
                .opened(file, kept)) {
            autosave.changed(OpenRepair.kept(model, Instant.EPOCH));
            autosave.now();
            assertThat(autosave.file()).isNotEqualTo(file);
        }
        assertThat(told).singleElement().isInstanceOf(Saved.Elsewhere.class);
        assertThat(Files.readString(file)).isEqualTo(before);
    }

    @Test
    void earlierSentencesAreWhereOneCanGoBackTo() throws IOException {
        List<String> undo = List.of(
                "Suppose nothing." + METER_ON, "Suppose R99 is open." + METER_ON, "Suppose R1 is open." + METER_ON);
        String sentence = "Suppose R2 is open." + METER_ON;
        Opened.Board opened = open(repair(undo, sentence, "TP2 14.1 V d.c. volts"));
        DeskModel model = model(opened);

        assertThat(opened.lost()).isEmpty();
        assertThat(OpenRepair.kept(model, Instant.EPOCH).undo()).containsExactly(undo.get(0), undo.get(2));
        model.undo();
        BenchState back = model.state();
        assertThat(model.sentences().text(back.sentence())).isEqualTo(undo.get(2));
        assertThat(back.found()).hasSize(1);
        model.redo();
        assertThat(model.sentences().text(model.state().sentence())).isEqualTo(sentence);
    }

    /** Where the circuit has a mistake, it is the repair that is opened as soon as there is none. */
    @Test
    void aCircuitThatCannotBeReadRemembersTheRepairThatWasAskedFor() throws IOException {
        Path file = repair(List.of(), "Suppose R1 is open." + METER_ON);
        Files.writeString(circuit, "format: 1\nname: [");

        Opened opened = Opened.read(file, Preferences.USUAL);

        assertThat(opened).isInstanceOfSatisfying(Opened.Unreadable.class, u -> {
            assertThat(u.asked()).isEqualTo(file);
            assertThat(u.file()).isEqualTo(circuit);
        });
    }

    @ParameterizedTest
    @ValueSource(strings = {"first-light", "fog-bell", "night-ferry"})
    void aNewRepairBeginsWithTheMeterAndTheMainsOfThisBench(String name) {
        Path file = Path.of("circuits", name + ".yaml");
        double drawn = Answers.circuit(name).mains().hertz().si();
        int other = drawn > 55 ? 50 : 60;
        Preferences liked = Preferences.USUAL.withMeter("basic 3½ digit").withMainsHertz(other);
        Opened.Board opened = (Opened.Board) Opened.read(file, liked);
        Circuit board = opened.first().board();
        Sentence sentence = opened.first().sentence();

        assertThat(sentence.setting().meter().name()).isEqualTo("basic 3½ digit");
        assertThat(sentence.arrangement().mainsHertz()).isEqualTo(other);
        Sentences grammar = new Sentences(board);
        assertThat(Optional.of(grammar.text(sentence)).map(t -> parsed(grammar, t)))
                .contains(sentence);
        Opened.Board asDrawn = (Opened.Board) Opened.read(file, liked.withMainsHertz((int) drawn));
        assertThat(asDrawn.first().sentence().arrangement().mainsHertz()).isNull();
    }

    private static Sentence parsed(Sentences grammar, String text) {
        try {
            return grammar.parse(text);
        } catch (fusetale.sentence.SentenceException unclear) {
            throw new AssertionError(unclear);
        }
    }
}
