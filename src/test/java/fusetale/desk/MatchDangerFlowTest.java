package fusetale.desk;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.desk.match.MadeUp;
import fusetale.desk.match.MadeUp.Mood;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;

/** The place "What did I read?" in the whole window where the power must stay off. */
class MatchDangerFlowTest extends WindowFlow {
    @Override
    Program made(Stage stage) {
        return new Program(stage, MadeUp.in(Mood.DANGER), new FileChoice() {
            @Override
            public Optional<Path> toOpen(String kind, List<String> endings) {
                return Optional.empty();
            }

            @Override
            public Optional<Path> toSave(String name, String ending) {
                return Optional.empty();
            }
        });
    }

    private void worked() {
        until(() -> repair().matching().fresh()
                && !repair().matching().workProperty().get().busy());
    }

    private String line() {
        return repair().window().match().below().getAccessibleText();
    }

    @Test
    void aDangerStandsBeforeEverythingElse() {
        key(KeyCode.CONTROL, KeyCode.DIGIT2);
        worked();
        keys("tp2 13 ohms");
        key(KeyCode.ENTER);
        worked();

        assertThat(line()).startsWith("Do not power up.");
        assertThat(lookup(".shout-words").queryAllAs(Node.class)).anyMatch(Node::isVisible);
        keys("tp1");
        assertThat(line()).as("while something is typed").startsWith("Do not power up.");
    }
}
