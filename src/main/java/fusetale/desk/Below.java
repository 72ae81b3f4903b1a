package fusetale.desk;

import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableDoubleValue;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;

/** What lies below the board for a while, with a button that goes back. */
final class Below extends StackPane {
    /** It takes what a window leaves that is this much lower [px], between a least and a most. */
    private static final double REST = 480;

    private static final double LEAST = 236;
    private static final double MOST = 330;

    /**
     * Frames it.
     *
     * @param view what it is
     * @param back what the button says
     * @param turnBack what it does
     * @param height of the window [px]
     */
    Below(Region view, String back, Runnable turnBack, ObservableDoubleValue height) {
        Button button = new Button(back);
        button.setOnAction(e -> turnBack.run());
        getChildren().addAll(view, button);
        setAlignment(button, Pos.TOP_RIGHT);
        setMargin(button, new Insets(10, 16, 0, 0));
        setPadding(new Insets(8, 20, 6, 20));
        view.prefHeightProperty().bind(Bindings.max(LEAST, Bindings.min(MOST, Bindings.subtract(height, REST))));
    }
}
