package fusetale.desk.line;

import fusetale.desk.kit.Faces;
import fusetale.explore.Words;
import fusetale.sentence.Piece;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** The amount of one piece, to drag or to step with the arrows; readings follow. */
public final class AmountView extends HBox {
    private static final Words WORDS = Words.of(AmountView.class);
    private static final double STEP = 1 / 60.0;

    private final Slider slider = new Slider(0, 1, 0);

    /** The amount of a piece that has one. */
    public AmountView(LineModel model, Piece piece) {
        super(12);
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
            model.drag(piece, now.doubleValue());
        });
        slider.setOnMouseReleased(e -> model.drop(piece, slider.getValue()));
        slider.addEventHandler(KeyEvent.KEY_RELEASED, e -> {
            if (e.getCode().isArrowKey()) {
                model.drop(piece, slider.getValue());
            }
        });
        getChildren().addAll(label, slider);
    }

    /** Puts the keyboard on it. */
    public void begin() {
        slider.requestFocus();
    }
}
