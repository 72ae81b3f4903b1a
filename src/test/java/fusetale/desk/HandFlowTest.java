package fusetale.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fusetale.desk.drawing.DrawingView;
import java.util.List;
import javafx.event.Event;
import javafx.event.EventType;
import javafx.scene.Node;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import org.junit.jupiter.api.Test;
import org.testfx.util.WaitForAsyncUtils;

/** A hand that draws an amount or the sheet. */
class HandFlowTest extends OneWindowFlow {
    /** One piece is taken and drawn; where it is let go where it was taken, all is as it was. */
    @Test
    void anAmountDrawnOutAndBackLeavesEverythingAsItWas() {
        say("r2 drifted x2");
        other();
        List<String> before = strip();
        String said = sentence();
        Node piece = lookup(".piece").queryAllAs(Node.class).stream()
                .filter(n -> n.getAccessibleText().contains("drifted"))
                .findFirst()
                .orElseThrow();
        interact(() -> {
            mouse(piece, MouseEvent.MOUSE_PRESSED, 0);
            mouse(piece, MouseEvent.MOUSE_DRAGGED, 60);
        });
        until(() -> model().glancedProperty().get().isPresent() && !strip().equals(before));
        interact(() -> {
            mouse(piece, MouseEvent.MOUSE_DRAGGED, 2);
            mouse(piece, MouseEvent.MOUSE_RELEASED, 2);
        });
        worked();

        assertThat(model().moving()).isFalse();
        assertThat(sentence()).isEqualTo(said);
        assertThat(repair().window().overlay().showing()).as("a press").isEmpty();
        assertThat(strip()).isEqualTo(before);
        interact(() -> {
            mouse(piece, MouseEvent.MOUSE_PRESSED, 0);
            mouse(piece, MouseEvent.MOUSE_RELEASED, 1);
        });
        assertThat(repair().window().overlay().showing()).as("a press").isPresent();
    }

    private List<String> strip() {
        return lookup(".strip-row").queryAllAs(Node.class).stream()
                .map(Node::getAccessibleText)
                .toList();
    }

    private static void mouse(Node node, EventType<MouseEvent> type, double x) {
        boolean down = type != MouseEvent.MOUSE_RELEASED;
        Event.fireEvent(
                node,
                new MouseEvent(
                        type,
                        x,
                        5,
                        x,
                        5,
                        MouseButton.PRIMARY,
                        1,
                        false,
                        false,
                        false,
                        false,
                        down,
                        false,
                        false,
                        false,
                        false,
                        false,
                        null));
    }

    /** What somebody has brought into sight stays there when the paper below the tags becomes higher or lower. */
    @Test
    void aSheetMovedByHandKeepsItsMiddleAndItsSize() {
        worked();
        DrawingView drawing = repair().window().board().drawing();
        String point = model().tags().get(1).from();
        interact(() -> repair().window().commands().take(Command.DRAWING_ONLY));
        WaitForAsyncUtils.waitForFxEvents();
        interact(() -> repair().window().commands().take(Command.ZOOM_IN));
        double radius = drawing.pointRadius();
        double height = drawing.getHeight();
        double fromMiddle = drawing.point(point).orElseThrow().getY() - height / 2;
        interact(() -> repair().window().commands().take(Command.DRAWING_ONLY));
        WaitForAsyncUtils.waitForFxEvents();

        assertThat(drawing.getHeight()).isNotEqualTo(height);
        assertThat(drawing.pointRadius()).isEqualTo(radius);
        assertThat(drawing.point(point).orElseThrow().getY() - drawing.getHeight() / 2)
                .isCloseTo(fromMiddle, within(1e-6));
        interact(drawing::fit);
        double fitted = drawing.point(point).orElseThrow().getY();
        interact(() -> repair().window().commands().take(Command.DRAWING_ONLY));
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(drawing.point(point).orElseThrow().getY()).as("fits anew").isNotEqualTo(fitted);
        interact(() -> repair().window().commands().take(Command.DRAWING_ONLY));
    }
}
