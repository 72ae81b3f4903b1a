package fusetale.desk.strip;

import fusetale.desk.help.Explained;
import fusetale.desk.kit.Faces;
import fusetale.desk.kit.Pressable;
import fusetale.desk.kit.Signs;
import fusetale.explore.HealthyRange;
import fusetale.explore.Words;
import java.util.List;
import javafx.css.PseudoClass;
import javafx.geometry.VPos;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.shape.Line;
import javafx.scene.shape.LineTo;
import javafx.scene.shape.MoveTo;
import javafx.scene.shape.Path;
import javafx.scene.text.Text;
import org.jspecify.annotations.Nullable;

/** The nodes of one row, used again for whatever row stands there. Everything is placed by hand: no layout pass, no new nodes. */
final class StripLine extends Pressable implements Explained {
    /** Height [px] of a row. */
    static final double HEIGHT = 24;

    private static final Words WORDS = Words.of(StripLine.class);
    private static final PseudoClass CLOSE = PseudoClass.getPseudoClass("close");
    private static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");
    private static final double FIGURE_GAP = 8;
    private static final double ARROW = 11;

    private final Text point = text(Faces.TABLE_FIGURE, "text-ink");
    private final Text function = text(Faces.TABLE, "text-ink");
    private final Text built = text(Faces.TABLE, "text-soft");
    private final Text moved = text(Faces.TABLE_FIGURE, "text-marker");
    private final Text close = text(Faces.TABLE_FIGURE, "text-soft");
    private final Line stem = new Line();
    private final Node ring = Signs.ring();
    private final Node diamond = Signs.diamond();
    private final Node hollow = Signs.hollowDiamond();
    private final Path arrow = new Path(
            new MoveTo(0, 0),
            new LineTo(ARROW, 0),
            new MoveTo(ARROW - 4, -3.5),
            new LineTo(ARROW, 0),
            new LineTo(ARROW - 4, 3.5));

    private @Nullable StripRow row;

    /**
     * Where the columns of all rows stand [px].
     *
     * @param functionX left of the meter's settings
     * @param lineX where the line begins
     * @param lineEnd where it ends
     * @param arrowX left of the arrows
     * @param right right edge of the figures
     */
    record Columns(double functionX, double lineX, double lineEnd, double arrowX, double right) {}

    StripLine() {
        getStyleClass().add("strip-row");
        setAccessibleRole(AccessibleRole.BUTTON);
        setManaged(false);
        stem.getStyleClass().add("strip-stem");
        arrow.getStyleClass().add("strip-arrow");
        List<Node> all = List.of(point, function, stem, ring, diamond, hollow, built, arrow, moved, close);
        for (Node each : all) {
            each.setManaged(false);
            each.setMouseTransparent(true);
        }
        getChildren().addAll(all);
    }

    private static Text text(Faces face, String styleClass) {
        Text text = new Text();
        text.setFont(face.at(16));
        text.setTextOrigin(VPos.CENTER);
        text.setY(HEIGHT / 2);
        text.getStyleClass().add(styleClass);
        return text;
    }

    /** The row that stands here; null where none does. */
    @Nullable
    StripRow row() {
        return row;
    }

    /** Takes the texts of a row. */
    void show(StripRow next, String spoken) {
        row = next;
        point.setText(next.point());
        function.setText(next.function());
        built.setText(next.built());
        Text figure = figure();
        figure.setText(next.supposed());
        boolean tells = !next.tooCloseToTell();
        moved.setVisible(tells);
        close.setVisible(!tells);
        diamond.setVisible(tells);
        hollow.setVisible(!tells);
        stem.pseudoClassStateChanged(CLOSE, !tells);
        setAccessibleText(spoken);
        setVisible(true);
    }

    @Override
    public String words() {
        StripRow shown = row;
        return shown == null
                ? ""
                : WORDS.say(shown.tooCloseToTell() ? "word.close" : "word.moved") + ", " + shown.function();
    }

    /** Nothing stands here. */
    void clear() {
        row = null;
        setVisible(false);
    }

    void chosen(boolean is) {
        pseudoClassStateChanged(CHOSEN, is);
    }

    double pointWidth() {
        return point.getLayoutBounds().getWidth();
    }

    double functionWidth() {
        return function.getLayoutBounds().getWidth();
    }

    double builtWidth() {
        return built.getLayoutBounds().getWidth();
    }

    double supposedWidth() {
        return figure().getLayoutBounds().getWidth();
    }

    /** Places what {@link #show} took. */
    void place(Columns columns, MovedModel scale) {
        StripRow shown = row;
        if (shown == null) {
            return;
        }
        double y = HEIGHT / 2;
        double width = columns.lineEnd - columns.lineX;
        function.setX(columns.functionX);
        double end = columns.lineX + scale.share(shown.moved()) * width;
        stem.setStartX(columns.lineX);
        stem.setEndX(end);
        stem.setStartY(y);
        stem.setEndY(y);
        ring.relocate(0, 0);
        at(ring, columns.lineX, y);
        at(diamond, end, y);
        at(hollow, end, y);
        at(arrow, columns.arrowX, y);
        built.setX(columns.arrowX - FIGURE_GAP - builtWidth());
        figure().setX(columns.right - supposedWidth());
    }

    private Text figure() {
        StripRow shown = row;
        return shown != null && shown.tooCloseToTell() ? close : moved;
    }

    private static void at(Node sign, double x, double y) {
        sign.setLayoutX(x);
        sign.setLayoutY(y);
    }

    /** Room [px] that the figures take: both, the arrow, gaps. */
    static double figuresWidth(double built, double supposed) {
        return built + FIGURE_GAP + ARROW + FIGURE_GAP + supposed;
    }

    /** Where the arrow stands, from the right edge. */
    static double arrowFromRight(double supposed) {
        return ARROW + FIGURE_GAP + supposed;
    }

    /** Whether a row's figure is one to or from OL. */
    static boolean over(StripRow row) {
        return row.moved() >= HealthyRange.TO_OR_FROM_OVER_RANGE;
    }
}
