package fusetale.desk.line;

import fusetale.desk.kit.Faces;
import fusetale.explore.Words;
import fusetale.sentence.Piece;
import javafx.application.Platform;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** The amount of one piece, to drag or to step with the arrows; readings follow. */
public final class AmountView extends HBox {
    private static final Words WORDS = Words.of(AmountView.class);
    private static final double STEP = 1 / 60.0;

    private final LineModel model;
    private final Piece piece;
    private final Slider slider = new Slider(0, 1, 0);
    private boolean moving;

    /** The amount of a piece that has one. */
    public AmountView(LineModel model, Piece piece) {
        super(12);
        this.model = model;
        this.piece = piece;
        setAlignment(Pos.CENTER_LEFT);
        Label label = new Label();
        label.setFont(Faces.HEADING.at(17));
        label.setMinWidth(96);
        slider.setBlockIncrement(STEP);
        slider.setMinHeight(44);
        slider.setValue(model.position(piece));
        slider.setAccessibleText(WORDS.say("amount.spoken", piece.text()));
        HBox.setHgrow(slider, Priority.ALWAYS);
        AmountScale scale = model.scale(piece).orElseThrow();
        label.setText(fusetale.quantity.Notation.format(scale.at(slider.getValue())));
        slider.valueProperty().addListener((property, before, now) -> {
            label.setText(fusetale.quantity.Notation.format(scale.at(now.doubleValue())));
            moving = true;
            // once let go of, the piece names another amount
            model.now(piece).ifPresent(p -> model.drag(p, now.doubleValue()));
        });
        slider.setOnMouseReleased(e -> let());
        slider.addEventHandler(KeyEvent.KEY_RELEASED, e -> {
            if (e.getCode().isArrowKey() || e.getCode() == KeyCode.HOME || e.getCode() == KeyCode.END) {
                // Home and End move the slider only now, perhaps after this
                Platform.runLater(this::let);
            }
        });
        slider.focusedProperty().addListener((property, before, now) -> {
            if (!now) {
                let();
            }
        });
        getChildren().addAll(label, slider);
    }

    /** Keeps the amount, unless it is kept already. */
    private void let() {
        if (moving) {
            moving = false;
            model.now(piece).ifPresent(p -> model.drop(p, slider.getValue()));
        }
    }

    /** Puts the keyboard on it. */
    public void begin() {
        slider.requestFocus();
    }
}
