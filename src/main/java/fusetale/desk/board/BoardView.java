package fusetale.desk.board;

import fusetale.desk.drawing.DrawingView;
import fusetale.desk.kit.Faces;
import fusetale.desk.kit.Signs;
import fusetale.desk.tags.Cord;
import fusetale.desk.tags.TagFigures;
import fusetale.explore.Words;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.shape.CubicCurveTo;
import javafx.scene.shape.LineTo;
import javafx.scene.shape.MoveTo;
import javafx.scene.shape.Path;
import javafx.scene.shape.PathElement;

/**
 * The paper: the drawing below, the cord with its tags above, and from each tag that moved a dotted string to its point, behind
 * the ink.
 */
public final class BoardView extends Region {
    private static final Words WORDS = Words.of(BoardView.class);
    private static final double BESIDE_LEGEND = 128;
    private static final double MARGIN = 12;
    /** Least height of the paper, and of the drawing under however many rows of tags [px]; in a lower window the sheet scrolls. */
    private static final double LEAST = 300;

    /** The same where something lies below it. */
    private static final double LEAST_BESIDE = 250;

    private static final double LEAST_DRAWING = 140;
    private static final double GAP = 6;

    private final DrawingView drawing = new DrawingView();
    private final Cord cord = new Cord();
    private final Pane strings = new Pane();
    private final VBox legend = new VBox(8);
    private final Map<String, Path> paths = new HashMap<>();
    private List<TagFigures> tags = List.of();
    private double cordHeight;
    private double least = LEAST;

    /** An empty paper. */
    public BoardView() {
        getStyleClass().addAll("paper", "board");
        getStylesheets().add(BoardView.class.getResource("board.css").toExternalForm());
        legend.getChildren()
                .addAll(
                        entry(Signs.ring(), "legend.healthy", "label"),
                        entry(Signs.diamond(), "legend.supposed", "label-marker"),
                        entry(Signs.cross(), "legend.read", "label-pencil"));
        legend.setMouseTransparent(true);
        strings.setMouseTransparent(true);
        getChildren().addAll(strings, drawing, legend, cord);
        drawing.onMoved(() -> {
            cord.moved();
            string();
        });
        cord.onDownward(this::down);
        cord.focusWithinProperty().addListener(changed -> string());
    }

    private static Node entry(Node sign, String key, String styleClass) {
        Label label = new Label(WORDS.say(key));
        label.setFont(Faces.TABLE.at(16));
        label.getStyleClass().add(styleClass);
        HBox row = new HBox(8, new HBox(sign), label);
        row.setAlignment(javafx.geometry.Pos.CENTER_LEFT);
        return row;
    }

    /** The drawing. */
    public DrawingView drawing() {
        return drawing;
    }

    /** The cord. */
    public Cord cord() {
        return cord;
    }

    /** Shows what the tags say. */
    public void show(List<TagFigures> figures) {
        tags = figures;
        cord.show(figures, this::wantedX, f -> inView(f).isPresent());
        requestLayout();
    }

    /** Where the middle of a tag would like to hang: above its point; a pair of leads above its red one. */
    private double wantedX(TagFigures figures) {
        return drawing.point(figures.check().from()).map(Point2D::getX).orElse(0.0) - MARGIN;
    }

    /** Where the point of a tag is on the paper, if it is seen. */
    private Optional<Point2D> inView(TagFigures figures) {
        return drawing.point(figures.check().from())
                .filter(p ->
                        p.getX() > 0 && p.getX() < drawing.getWidth() && p.getY() > 0 && p.getY() < drawing.getHeight())
                .map(p -> p.add(0, drawing.getLayoutY()));
    }

    private void down(TagFigures figures) {
        drawing.focusNearest(figures.check().from());
    }

    /** Whether it shares the sheet with something else that is looked at. */
    public void setShared(boolean shared) {
        least = shared ? LEAST_BESIDE : LEAST;
        requestLayout();
    }

    @Override
    protected double computeMinHeight(double width) {
        return Math.max(least, cordHeight + GAP + LEAST_DRAWING);
    }

    @Override
    protected void layoutChildren() {
        double width = getWidth();
        cord.resizeRelocate(MARGIN, 0, width - 2 * MARGIN, getHeight());
        boolean few = tags.size() <= 7;
        cord.setBegin(few && width > 900 ? BESIDE_LEGEND : 0);
        legend.setVisible(few && width > 900);
        legend.relocate(MARGIN + 6, 26);
        legend.autosize();
        cord.layout();
        if (cord.height() != cordHeight) {
            cordHeight = cord.height();
            requestLayout();
        }
        double top = cordHeight + GAP;
        drawing.resizeRelocate(0, top, width, Math.max(40, getHeight() - top));
        strings.resizeRelocate(0, 0, width, getHeight());
        drawing.layout();
        string();
    }

    /** Draws the strings anew. */
    private void string() {
        cord.layout();
        Map<String, Path> unused = new HashMap<>(paths);
        cord.stringStarts().forEach((figures, start) -> {
            String point = figures.check().from();
            Optional<Point2D> end = inView(figures);
            if (end.isEmpty()) {
                return;
            }
            Path path = unused.remove(point);
            if (path == null) {
                path = new Path();
                path.setManaged(false);
                path.getStyleClass().add("string");
                paths.put(point, path);
                strings.getChildren().add(path);
            }
            // what stays as it is need not be painted again, nor what lies under it
            Bend bend = new Bend(
                    figures.moved() >= 1,
                    start.getX() + MARGIN,
                    start.getY(),
                    end.get().getX(),
                    end.get().getY(),
                    drawing.pointRadius());
            if (!bend.equals(path.getUserData())) {
                path.setUserData(bend);
                path.getStyleClass().setAll("string", bend.moved() ? "moved" : "faint");
                path.getElements().setAll(bend.elements());
            }
        });
        unused.forEach((name, path) -> {
            paths.remove(name);
            strings.getChildren().remove(path);
        });
    }

    /** Down a little, over to the point's column, and down to its ring. */
    private record Bend(boolean moved, double x1, double y1, double x2, double y2, double ring) {
        List<PathElement> elements() {
            double turn = Math.min(34, (y2 - y1) * 0.6);
            return List.of(
                    new MoveTo(x1, y1),
                    new CubicCurveTo(x1, y1 + turn, x2, y1 + turn * 0.2, x2, y1 + turn * 1.2),
                    new LineTo(x2, Math.max(y1 + turn * 1.2, y2 - ring)));
        }
    }
}
