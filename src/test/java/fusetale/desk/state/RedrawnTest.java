package fusetale.desk.state;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.bench.Meter;
import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitReader;
import fusetale.desk.Answers;
import fusetale.sentence.Sentence;
import fusetale.sentence.SentenceException;
import fusetale.sentence.Sentences;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Going back must never lead to a circuit that is no longer in its file. */
class RedrawnTest {
    private static final Circuit BEFORE = Answers.circuit("first-light");

    @TempDir
    Path folder;

    private final Sentences grammar = new Sentences(BEFORE);

    /** The teaching board with its dropper, R2, called R3. */
    private Circuit now() throws IOException {
        String text = Files.readString(Path.of("circuits/first-light.yaml")).replaceAll("\\bR2\\b", "R3");
        Path file = Files.writeString(folder.resolve("now.yaml"), text);
        return Objects.requireNonNull(
                CircuitReader.withShippedParts().read(file).circuit());
    }

    private History said(String... lines) throws SentenceException {
        BenchState state = BenchState.atFirst(null, BEFORE);
        History history = History.of(state);
        for (String line : lines) {
            state = state.with(grammar.apply(state.sentence(), line));
            history = history.plus(state);
        }
        return history;
    }

    private static List<String> sentences(History history) {
        return history.states().stream()
                .map(s -> new Sentences(s.board()).text(s.sentence()))
                .toList();
    }

    @Test
    void everyStateHasTheNewBoard() throws Exception {
        Circuit now = now();
        Redrawn redrawn = Redrawn.of(said("r1 open", "f1 blown", "c1 open").back(), grammar, new Sentences(now));

        assertThat(redrawn.gone()).isEmpty();
        assertThat(redrawn.history().at()).isEqualTo(2);
        assertThat(redrawn.history().states())
                .hasSize(4)
                .allMatch(s -> s.board().equals(now));
    }

    @Test
    void whatTheNewBoardDoesNotHaveIsNowhereToGoBackTo() throws Exception {
        Redrawn redrawn = Redrawn.of(said("r2 open", "put back", "r1 open"), grammar, new Sentences(now()));

        assertThat(redrawn.gone()).isEmpty();
        assertThat(sentences(redrawn.history())).hasSize(2);
        assertThat(sentences(redrawn.history()).get(0)).startsWith("Suppose nothing.");
        assertThat(sentences(redrawn.history()).get(1)).startsWith("Suppose R1 is open.");
        assertThat(redrawn.history().at()).isEqualTo(1);
    }

    @Test
    void aPresentSentenceThatIsGoneIsToldAndBeginsAnewWithTheMeterAtHand() throws Exception {
        Meter basic = Meter.builtIn().stream()
                .filter(m -> m.name().startsWith("basic"))
                .findFirst()
                .orElseThrow();
        History history = said("meter " + basic.name(), "r1 open", "r2 open");
        Redrawn redrawn = Redrawn.of(history, grammar, new Sentences(now()));
        Sentence present = redrawn.history().present().sentence();

        assertThat(redrawn.gone()).get().asString().contains("R2");
        assertThat(present.supposition().isNothing()).isTrue();
        assertThat(present.setting().meter()).isEqualTo(basic);
        assertThat(sentences(redrawn.history().back())
                        .get(redrawn.history().back().at()))
                .startsWith("Suppose R1 is open.");
    }
}
