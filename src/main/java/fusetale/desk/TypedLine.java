package fusetale.desk;

import fusetale.desk.kit.Faces;
import java.util.List;
import java.util.function.Function;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.VBox;

/** A line to type into, with what it means below, and perhaps what it may go on as. */
final class TypedLine extends VBox {
    private final TextField field = new TextField();
    private final Label meaning = new Label();
    private final ListView<String> near = new ListView<>();
    private final Function<String, Heard> hear;
    private final Function<String, Boolean> take;

    /**
     * What was understood of a line.
     *
     * @param words what it means, or what is wrong with it
     * @param near what may be meant
     */
    record Heard(String words, List<String> near) {}

    /**
     * A line.
     *
     * @param prompt what can be typed
     * @param hear tells what a line means
     * @param take takes it; gives whether it could
     * @param close called when it is done with
     */
    TypedLine(String prompt, Function<String, Heard> hear, Function<String, Boolean> take, Runnable close) {
        this.hear = hear;
        this.take = take;
        getStyleClass().add("card");
        getStylesheets()
                .add(fusetale.desk.card.CardView.class.getResource("card.css").toExternalForm());
        field.setPromptText(prompt);
        field.setAccessibleText(prompt);
        field.setFont(Faces.WORDS.at(22));
        meaning.setWrapText(true);
        meaning.getStyleClass().add("typed-meaning");
        near.setFocusTraversable(false);
        near.setAccessibleText(prompt);
        getChildren().addAll(field, meaning, near);
        field.textProperty().addListener(changed -> read());
        near.setOnMouseClicked(e -> enter(close));
        field.addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            int at = near.getSelectionModel().getSelectedIndex();
            switch (e.getCode()) {
                case ESCAPE -> close.run();
                case ENTER -> enter(close);
                case DOWN ->
                    near.getSelectionModel()
                            .select(Math.min(at + 1, near.getItems().size() - 1));
                case UP -> near.getSelectionModel().select(Math.max(0, at - 1));
                default -> {
                    return;
                }
            }
            e.consume();
        });
        read();
    }

    void begin() {
        field.requestFocus();
    }

    private void read() {
        Heard heard = hear.apply(field.getText());
        meaning.setText(heard.words());
        near.getItems().setAll(heard.near());
        near.setPrefHeight(Math.min(8, heard.near().size()) * 44 + 4);
        near.setVisible(!heard.near().isEmpty());
        near.setManaged(!heard.near().isEmpty());
    }

    private void enter(Runnable close) {
        String selected = near.getSelectionModel().getSelectedItem();
        if (take.apply(selected == null ? field.getText() : selected)) {
            close.run();
        }
    }
}
