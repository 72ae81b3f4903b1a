package fusetale.desk;

import fusetale.desk.match.MadeUp;
import fusetale.desk.match.MadeUp.Mood;
import fusetale.desk.match.MatchModel;
import fusetale.desk.state.BenchState;
import fusetale.desk.state.Found;
import fusetale.match.Advice;
import fusetale.store.Preferences;
import fusetale.store.UnwritableFile;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.TestInstance;

/**
 * One window on the teaching board at the place "What did I read?" that serves all tests of a class; what explains the readings is made
 * up. Each test begins in the other place, with nothing found.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class OneMatchWindowFlow extends WindowFlow {
    Path chosen = Path.of("");

    @AfterAll
    void closed() {
        interact(() -> repair().close());
    }

    @Override
    public void start(Stage stage) throws UnwritableFile {
        if (hasBegun()) {
            again();
            return;
        }
        super.start(stage);
        // whoever runs the tests hides the window between two of them, and that would end the repair
        stage.setOnHidden(null);
    }

    private void again() {
        ((Stage) program().scene().getWindow()).show();
        program().prefer(p -> Preferences.USUAL);
        program().leave();
        // a line, what lies over the window, a page: one step back from each
        for (int step = 0; step < 3; step++) {
            repair().window().commands().take(Command.STOP);
        }
        repair().model().open(BenchState.atFirst(model().state().file(), model().board()));
        program().leave();
        field().clear();
        // what is seen without a meter is open at first
        repair().window().commands().take(Command.PLACE_READ);
        repair().window().commands().take(Command.SEEN);
        repair().window().commands().take(Command.PLACE_READ);
    }

    @Override
    Program made(Stage stage) {
        return new Program(stage, MadeUp.in(Mood.PLAIN), new FileChoice() {
            @Override
            public Optional<Path> toOpen(String kind, List<String> endings) {
                return Optional.of(chosen);
            }

            @Override
            public Optional<Path> toSave(String name, String ending) {
                return Optional.of(chosen);
            }
        });
    }

    MatchModel matching() {
        return repair().matching();
    }

    void worked() {
        until(() -> matching().fresh() && !matching().workProperty().get().busy());
    }

    /** A key of the number pad with the letter it types; the robot of these tests types none there. */
    void pad(KeyCode code, String letter) {
        interact(() -> {
            Scene scene = repair().window().getScene();
            Event.fireEvent(
                    scene.getFocusOwner(),
                    new KeyEvent(KeyEvent.KEY_PRESSED, letter, letter, code, false, false, false, false));
            // the key may have moved the keyboard
            Event.fireEvent(
                    scene.getFocusOwner(),
                    new KeyEvent(KeyEvent.KEY_TYPED, letter, "", KeyCode.UNDEFINED, false, false, false, false));
        });
    }

    void place() {
        key(KeyCode.CONTROL, KeyCode.DIGIT2);
        worked();
    }

    List<String> found() {
        return model().state().found().stream().map(Found::text).toList();
    }

    String advised() {
        return matching().adviceProperty().get().map(Advice::ask).orElseThrow().words();
    }

    TextField field() {
        return (TextField) repair().window().match().lookup(".found-text");
    }

    List<Node> rows() {
        return List.copyOf(lookup(".fit-row").queryAll());
    }

    String line() {
        return repair().window().match().below().getAccessibleText();
    }

    void read(String... lines) {
        for (String line : lines) {
            keys(line);
            key(KeyCode.ENTER);
            worked();
        }
    }
}
