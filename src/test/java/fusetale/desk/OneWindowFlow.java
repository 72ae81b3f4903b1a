package fusetale.desk;

import fusetale.desk.state.BenchState;
import fusetale.desk.state.DeskModel.Freshness;
import fusetale.desk.tags.TagFigures;
import fusetale.desk.tags.TagRow;
import fusetale.store.UnwritableFile;
import java.util.List;
import javafx.scene.Scene;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.TestInstance;
import org.testfx.util.WaitForAsyncUtils;

/**
 * One window on the teaching board that serves all tests of a class: each begins on a board nothing is supposed of, whose healthy
 * side is worked out once.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class OneWindowFlow extends WindowFlow {
    @AfterAll
    void closed() {
        interact(() -> repair().close());
    }

    @Override
    Program made(Stage stage) {
        return new Program(stage);
    }

    @Override
    public void start(Stage stage) throws UnwritableFile {
        if (hasBegun()) {
            again(program());
            return;
        }
        super.start(stage);
        // whoever runs the tests hides the window between two of them, and that would end the repair
        stage.setOnHidden(null);
    }

    private void again(Program program) {
        OpenRepair repair = repair();
        ((Stage) program.scene().getWindow()).show();
        program.take(Command.TEXT_AS_DRAWN);
        program.leave();
        // a line, what lies over the window, a page: one step back from each
        for (int step = 0; step < 3; step++) {
            repair.window().commands().take(Command.STOP);
        }
        repair.model()
                .open(BenchState.atFirst(
                        repair.model().state().file(), repair.model().board()));
        program.leave();
    }

    void worked() {
        until(() -> program().opened().isPresent()
                && model().freshness() == Freshness.FRESH
                && !model().workingProperty().get().busy()
                && repair().window().rests());
    }

    void say(String line) {
        interact(() -> repair().window().commands().say(line));
        worked();
    }

    /** Waits for what the bench shows with the plug the other way. */
    void other() {
        until(() -> model().otherPowerProperty()
                .get()
                .filter(o -> o.answersWithOtherPower(model().board(), model().asked()))
                .isPresent());
    }

    String sentence() {
        return model().sentences().text(model().state().sentence());
    }

    List<TagFigures> tags() {
        return WaitForAsyncUtils.waitForAsyncFx(5000, () -> TagRow.of(model()));
    }

    Scene scene() {
        return repair().window().getScene();
    }
}
