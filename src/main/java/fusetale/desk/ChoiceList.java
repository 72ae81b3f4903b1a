package fusetale.desk;

import fusetale.desk.kit.Faces;
import java.util.List;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.VBox;

/** A short list to choose from: arrows walk, Enter takes, Esc leaves. */
final class ChoiceList extends VBox {
    private static final double WIDTH = 420;

    private final VBox rows = new VBox();

    /**
     * One thing to choose.
     *
     * @param text what it says
     * @param present whether it holds now
     * @param taken what choosing it does
     */
    record Choice(String text, boolean present, Runnable taken) {}

    ChoiceList(String heading, List<Choice> choices, Runnable close) {
        getStyleClass().add("card");
        setPrefWidth(WIDTH);
        Label head = new Label(heading);
        head.setFont(Faces.SHOUT.at(20));
        head.getStyleClass().add("choice-heading");
        getChildren().add(head);
        for (Choice choice : choices) {
            Button row = new Button(choice.text());
            row.getStyleClass().add("card-row");
            if (choice.present()) {
                row.getStyleClass().add("supposed");
            }
            row.setMaxWidth(Double.MAX_VALUE);
            row.setAccessibleText(choice.text());
            row.setOnAction(e -> {
                close.run();
                choice.taken().run();
            });
            rows.getChildren().add(row);
        }
        ScrollPane scroll = new ScrollPane(rows);
        scroll.setFitToWidth(true);
        scroll.setFocusTraversable(false);
        getChildren().add(scroll);
        setAccessibleRole(AccessibleRole.DIALOG);
        setAccessibleText(heading);
        getStylesheets()
                .add(fusetale.desk.card.CardView.class.getResource("card.css").toExternalForm());
        addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == KeyCode.ESCAPE) {
                close.run();
                e.consume();
            } else if (e.getCode() == KeyCode.DOWN || e.getCode() == KeyCode.UP) {
                walk(e.getCode() == KeyCode.DOWN ? 1 : -1);
                e.consume();
            }
        });
    }

    /** Puts the keyboard on what holds now, or on the first. */
    void begin() {
        rows.getChildren().stream()
                .filter(n -> n.getStyleClass().contains("supposed"))
                .findFirst()
                .or(() -> rows.getChildren().stream().findFirst())
                .ifPresent(Node::requestFocus);
    }

    private void walk(int by) {
        int at = -1;
        for (int k = 0; k < rows.getChildren().size(); k++) {
            at = rows.getChildren().get(k).isFocused() ? k : at;
        }
        int next = Math.max(0, Math.min(rows.getChildren().size() - 1, at + by));
        rows.getChildren().get(next).requestFocus();
    }
}
