package fusetale.desk;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.desk.tags.TagFigures;
import javafx.scene.input.Clipboard;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.testfx.util.WaitForAsyncUtils;

/** What Ctrl+C takes along. */
class CopyFlowTest extends OneWindowFlow {
    /** What is copied while the next answer is on its way: the figures, and the sentence they belong to. */
    @Test
    void copiedFiguresGoWithTheSentenceTheyAnswer() {
        say("r2 open");
        interact(() -> program().take(Command.COPY));
        assertThat(copied()).startsWith("Suppose R2 is open.").doesNotContain("ut of date");
        String figure = tags().stream()
                .filter(t -> t.state() == TagFigures.State.MOVED)
                .findFirst()
                .orElseThrow()
                .shows();
        interact(() -> {
            repair().window().commands().say("put back");
            program().take(Command.COPY);
        });

        assertThat(copied().lines().toList())
                .startsWith("Out of date: the question has changed since these figures were worked out.")
                .anyMatch(l -> l.startsWith("Suppose R2 is open."))
                .anyMatch(l -> l.contains("healthy, out of date\tsupposed, out of date"))
                .anyMatch(l -> l.contains("\t" + figure + "\t"))
                .noneMatch(l -> l.startsWith("Suppose nothing."));
        worked();
        interact(() -> program().take(Command.COPY));
        assertThat(copied()).startsWith("Suppose nothing.");
    }

    /** Stepped into what follows, the tags answer another supposition than the sentence says. */
    @Test
    void whatIsCopiedOfAStepNamesWhatIsTrueThen() {
        say("br1 leg1 sh and f1 holds 25 A");
        key(KeyCode.H);
        key(KeyCode.RIGHT);
        until(() -> model().forwardProperty().get().isPresent());
        worked();
        interact(() -> program().take(Command.COPY));

        assertThat(copied())
                .startsWith(model().sentences().text(model().asked()))
                .doesNotContain("ut of date");
        key(KeyCode.ESCAPE);
        worked();
    }

    private String copied() {
        return WaitForAsyncUtils.waitForAsyncFx(
                5000, () -> Clipboard.getSystemClipboard().getString());
    }
}
