package fusetale.desk;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.desk.kit.Scaled;
import fusetale.store.Preferences;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;

/** Pages that lie over the whole window. */
class PageFlowTest extends OneWindowFlow {
    private static final double WIDE = 1600;

    private Node focused() {
        return scene().getFocusOwner();
    }

    private double factor() {
        return ((Scaled) program().scene().getRoot()).factorProperty().get();
    }

    private static boolean within(Node node, Node around) {
        for (Node at = node; at != null; at = at.getParent()) {
            if (at.equals(around)) {
                return true;
            }
        }
        return false;
    }

    /** WCAG 2.1, criterion 2.4.3: the order of the keyboard keeps meaning; what is hidden has none. */
    @Test
    void tabStaysOnThePageAndTheKeyboardGoesBackWhereItWas() {
        worked();
        other();
        for (Command command : List.of(Command.PREFERENCES, Command.EXPORT, Command.SHEET, Command.KEYS)) {
            interact(() -> repair().window().board().cord().focus(model().tags().get(1)));
            Node before = focused();
            interact(() -> program().take(command));
            Node page = scene().getRoot().lookup(".page");
            for (int tab = 0; tab < 40; tab++) {
                key(KeyCode.TAB);
                assertThat(within(focused(), page))
                        .as("%s after %s: %s", command, tab + 1, focused())
                        .isTrue();
            }
            key(KeyCode.SHIFT, KeyCode.TAB);
            assertThat(within(focused(), page)).as(command.toString()).isTrue();
            key(KeyCode.ESCAPE);
            assertThat(focused()).as(command.toString()).isEqualTo(before);
        }
        key(KeyCode.DIGIT4);
        worked();
        assertThat(sentence()).as("the window can be used again").contains("a.c. volts");
    }

    /** From a page to the next one: back to the window in one step, and to what had the keyboard there. */
    @Test
    void aPageInPlaceOfAPageLeadsBackToTheWindow() {
        worked();
        interact(() -> repair().window().board().cord().focus(model().tags().get(0)));
        Node before = focused();
        interact(() -> {
            program().take(Command.PREFERENCES);
            program().take(Command.OPEN);
        });
        key(KeyCode.ESCAPE);

        assertThat(scene().getRoot().lookupAll(".page")).isEmpty();
        assertThat(focused()).isEqualTo(before);
    }

    @Test
    void theSizeOfTextChangesOnPagesToo() {
        worked();
        interact(() -> program().take(Command.PREFERENCES));
        key(KeyCode.CONTROL, KeyCode.PLUS);
        assertThat(factor()).isEqualTo(1.1);
        key(KeyCode.CONTROL, KeyCode.MINUS);
        assertThat(factor()).isEqualTo(1.0);
        key(KeyCode.CONTROL, KeyCode.PLUS);
        key(KeyCode.CONTROL, KeyCode.DIGIT0);
        assertThat(factor()).isEqualTo(1.0);
        key(KeyCode.ESCAPE);
        interact(() -> repair().window().commands().take(Command.METER));
        key(KeyCode.CONTROL, KeyCode.PLUS);
        assertThat(factor()).as("under a list").isEqualTo(1.1);
    }

    /** A wide window begins with larger text; what somebody chose holds there too. */
    @Test
    void inAWideWindowAChosenSizeHolds() {
        worked();
        double width = scene().getWindow().getWidth();
        try {
            interact(() -> {
                program().prefer(p -> p.withTextPerCent(Preferences.TEXT_AS_THE_WINDOW));
                scene().getWindow().setWidth(WIDE);
            });
            until(() -> scene().getWidth() >= WIDE);
            assertThat(factor()).isEqualTo(1.25);
            interact(() -> program().take(Command.TEXT_SMALLER));
            assertThat(factor()).isEqualTo(1.15);
            interact(() -> program().take(Command.TEXT_AS_DRAWN));
            assertThat(factor()).isEqualTo(1.0);
        } finally {
            interact(() -> scene().getWindow().setWidth(width));
        }
    }
}
