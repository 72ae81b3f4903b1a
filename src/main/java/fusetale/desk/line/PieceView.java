package fusetale.desk.line;

import fusetale.desk.help.Explained;
import fusetale.desk.kit.Faces;
import fusetale.desk.kit.Pressable;
import fusetale.sentence.Piece;
import javafx.geometry.VPos;
import javafx.scene.AccessibleRole;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polygon;
import javafx.scene.shape.Rectangle;
import javafx.scene.text.Font;
import javafx.scene.text.Text;

/** One piece of the sentence that can be pressed: underlined, what is supposed also swiped with the marker. */
final class PieceView extends Pressable implements Explained {
    private static final double HEIGHT = 44;

    private final Text text = new Text();
    private final Polygon swipe = new Polygon();
    private final Line underline = new Line();
    private final Rectangle ring = new Rectangle();
    private final boolean supposed;
    private Piece piece;

    PieceView(Piece piece, Font font) {
        this.piece = piece;
        this.supposed = piece.kind() == Piece.Kind.FAULT || piece.kind() == Piece.Kind.SWAP;
        getStyleClass().add("piece");
        text.getStyleClass().add("text-ink");
        text.setTextOrigin(VPos.BASELINE);
        swipe.getStyleClass().add("fill-marker");
        underline.getStyleClass().add("piece-underline");
        ring.getStyleClass().add("piece-ring");
        getChildren().addAll(swipe, ring, text, underline);
        getChildren().forEach(n -> n.setManaged(false));
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.BUTTON);
        show(piece, font);
    }

    Piece piece() {
        return piece;
    }

    @Override
    public String words() {
        return piece.text();
    }

    void show(Piece next, Font font) {
        piece = next;
        String words = next.text().strip();
        text.setText(words);
        text.setFont(font);
        setAccessibleText(words);
        double inset = supposed ? 6 : 2;
        double width = text.getLayoutBounds().getWidth() + 2 * inset;
        double base = HEIGHT / 2 + font.getSize() * 0.34;
        text.setX(inset);
        text.setY(base);
        swipe.setVisible(supposed);
        double top = base - font.getSize() * 0.95;
        double floor = base + font.getSize() * 0.34;
        swipe.getPoints().setAll(1.0, top + 2, width, top, width - 1, floor - 1, 0.0, floor);
        underline.setStartX(inset);
        underline.setEndX(width - inset);
        underline.setStartY(base + 5);
        underline.setEndY(base + 5);
        ring.setX(-3);
        ring.setY(3);
        ring.setWidth(width + 6);
        ring.setHeight(HEIGHT - 6);
        setMinSize(width, HEIGHT);
        setPrefSize(width, HEIGHT);
        setMaxSize(width, HEIGHT);
    }

    /** The font of the sentence at a size. */
    static Font font(double pixels) {
        return Faces.HEADING.at(pixels);
    }
}
