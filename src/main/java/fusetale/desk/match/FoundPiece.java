package fusetale.desk.match;

import fusetale.desk.kit.Faces;
import fusetale.desk.kit.Pressable;
import javafx.geometry.VPos;
import javafx.scene.AccessibleRole;
import javafx.scene.shape.Line;
import javafx.scene.shape.Rectangle;
import javafx.scene.text.Text;

/** One thing found, in the line: pencilled, underlined; Enter changes it, Delete takes it away. */
final class FoundPiece extends Pressable {
    private static final double HEIGHT = 44;
    private static final double BASE = 29;

    private final Text text = new Text();

    FoundPiece(String words, String spoken, boolean comma) {
        getStyleClass().add("found-piece");
        text.setText(words);
        text.setFont(Faces.HEADING.at(22));
        text.setTextOrigin(VPos.BASELINE);
        text.getStyleClass().add("text-pencil");
        text.setX(2);
        text.setY(BASE);
        double wide = text.getLayoutBounds().getWidth();
        Line underline = new Line(2, BASE + 7, 2 + wide, BASE + 7);
        underline.getStyleClass().add("found-underline");
        Rectangle ring = new Rectangle(-2, 2, wide + 8, HEIGHT - 4);
        ring.getStyleClass().add("found-ring");
        Text behind = new Text(comma ? "," : "");
        behind.setFont(Faces.WORDS.at(22));
        behind.getStyleClass().add("text-soft");
        behind.setTextOrigin(VPos.BASELINE);
        behind.setX(4 + wide);
        behind.setY(BASE);
        getChildren().addAll(ring, text, underline, behind);
        getChildren().forEach(n -> n.setManaged(false));
        double width = wide + 12;
        setMinSize(width, HEIGHT);
        setPrefSize(width, HEIGHT);
        setMaxSize(width, HEIGHT);
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.BUTTON);
        setAccessibleText(spoken);
    }
}
