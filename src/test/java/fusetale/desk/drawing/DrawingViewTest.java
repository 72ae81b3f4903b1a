package fusetale.desk.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.circuit.Circuit;
import fusetale.desk.Answers;
import fusetale.report.drawing.DrawingPlan;
import fusetale.report.drawing.DrawnPart;
import fusetale.report.drawing.SymbolStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.AccessibleAction;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** The keyboard on a sheet with sections. */
@ExtendWith(ApplicationExtension.class)
class DrawingViewTest {
    private static final Circuit BOARD = Answers.circuit("night-ferry");
    private static final DrawingPlan PLAN = DrawingPlan.of(BOARD, SymbolStyle.IEC_60617);

    private final DrawingView drawing = new DrawingView();

    @Start
    void start(Stage stage) {
        drawing.show(PLAN, DrawnPart::name);
        stage.setScene(new Scene(drawing, 1000, 500));
        stage.show();
        drawing.requestFocus();
    }

    private Optional<String> section() {
        return drawing.focused().flatMap(drawing::sectionOf);
    }

    /** The keyboard must not get to where nothing is seen. */
    @Test
    void theKeyboardPassesOverWhatIsFoldedAway(FxRobot robot) {
        String folded = drawing.sections().get(0);
        List<String> inside = PLAN.symbols()
                .map(DrawnPart::name)
                .filter(p -> drawing.sectionOf(p).equals(Optional.of(folded)))
                .toList();
        assertThat(inside).isNotEmpty();
        robot.interact(() -> drawing.focus(inside.get(0)));
        assertThat(section()).contains(folded);
        robot.interact(() -> drawing.fold(folded));
        assertThat(drawing.focused()).as("folded under the keyboard").isEmpty();
        List<String> reached = new ArrayList<>();
        robot.interact(() -> BOARD.points().forEach(point -> {
            drawing.focusNearest(point.name());
            section().ifPresent(reached::add);
        }));
        for (KeyCode way : List.of(KeyCode.LEFT, KeyCode.UP, KeyCode.RIGHT, KeyCode.DOWN)) {
            for (int step = 0; step < 8; step++) {
                robot.push(way);
                section().ifPresent(reached::add);
            }
        }

        assertThat(reached).isNotEmpty().doesNotContain(folded);
    }

    @Test
    void whatIsLookedForIsUnfolded(FxRobot robot) {
        String folded = drawing.sections().get(0);
        String part = PLAN.symbols()
                .map(DrawnPart::name)
                .filter(p -> drawing.sectionOf(p).equals(Optional.of(folded)))
                .findFirst()
                .orElseThrow();
        robot.interact(() -> {
            drawing.fold(folded);
            drawing.focus(part);
        });

        assertThat(drawing.folded(folded)).isFalse();
        assertThat(drawing.focused()).contains(part);
    }

    /** WCAG 2.1, criterion 4.1.2. */
    @Test
    void aSectionIsShownByWhateverReadsItAloud(FxRobot robot) {
        String last = drawing.sections().get(drawing.sections().size() - 1);
        robot.interact(() -> robot.lookup(".section").queryAllAs(SectionNode.class).stream()
                .filter(s -> s.section().heading().equals(last))
                .forEach(s -> s.executeAccessibleAction(AccessibleAction.FIRE)));

        assertThat(drawing.shownSection()).contains(last);
    }
}
