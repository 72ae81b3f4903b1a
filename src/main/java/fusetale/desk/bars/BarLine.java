package fusetale.desk.bars;

import fusetale.desk.kit.Faces;
import fusetale.desk.kit.MarkedAxis;
import fusetale.desk.kit.Pressable;
import fusetale.desk.kit.Signs;
import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.shape.Line;
import javafx.scene.shape.Rectangle;
import javafx.scene.text.Text;

/** The nodes of one row within the chart: range, stem, ring and diamond at places of the scale, figures at the right. */
final class BarLine extends Pressable {
    private static final double BAND = 16;
    private static final double LEAST_BAND = 3;
    private static final double POINT_X = 10;
    private static final double GAP = 18;

    private final BarRow row;
    private final Rectangle band = new Rectangle();
    private final Line stem = new Line();
    private final Node ring = Signs.ring();
    private final Node sign;
    private final Text point = text(Faces.TABLE_FIGURE, "text-ink");
    private final Text built = text(Faces.TABLE, "text-ink");
    private final Text supposed;
    private final Text range = text(Faces.TABLE, "text-soft");

    BarLine(BarRow row) {
        this.row = row;
        boolean tells = !row.reading().tooCloseToTell();
        getStyleClass().add("bar-row");
        setAccessibleRole(AccessibleRole.BUTTON);
        setAccessibleText(row.spoken());
        setManaged(false);
        sign = tells ? Signs.diamond() : Signs.hollowDiamond();
        supposed = text(Faces.TABLE_FIGURE, tells ? "text-marker" : "text-soft");
        band.getStyleClass().add("bar-range");
        stem.getStyleClass().add(tells ? "bar-stem" : "bar-stem-close");
        point.setText(row.point());
        built.setText(row.built());
        supposed.setText(row.supposed());
        range.setText(row.range());
        List<Node> all = List.of(point, band, stem, ring, sign, built, supposed, range);
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
        text.getStyleClass().add(styleClass);
        return text;
    }

    BarRow row() {
        return row;
    }

    double pointWidth() {
        return point.getLayoutBounds().getWidth();
    }

    double builtWidth() {
        return built.getLayoutBounds().getWidth();
    }

    double supposedWidth() {
        return supposed.getLayoutBounds().getWidth();
    }

    double rangeWidth() {
        return range.getLayoutBounds().getWidth();
    }

    /**
     * Right edges of the three columns of figures [px], from the chart's left.
     *
     * @param built of what is healthy
     * @param supposed of what is supposed
     * @param range of what healthy machines show
     */
    record Columns(double built, double supposed, double range) {
        /**
         * Columns that end at a right edge, each as wide as its widest text.
         *
         * @param heads widths of their heads [px], as in {@link ColumnHeads#widths}
         */
        static Columns of(List<BarLine> lines, double right, List<Double> heads) {
            double range = lines.stream().mapToDouble(BarLine::rangeWidth).max().orElse(0);
            double supposed =
                    lines.stream().mapToDouble(BarLine::supposedWidth).max().orElse(0);
            double atRange = right - Math.max(range, heads.get(2)) - GAP;
            return new Columns(atRange - Math.max(supposed, heads.get(1)) - GAP, atRange, right);
        }

        /** Width of all three, gaps included. */
        static double width(List<BarLine> lines, List<Double> heads) {
            double built = lines.stream().mapToDouble(BarLine::builtWidth).max().orElse(0);
            return Math.max(built, heads.get(0)) + GAP - of(lines, 0, heads).built();
        }
    }

    /** Places everything: shares on the chart's axis, figures in their columns. */
    void place(ShareModel scale, MarkedAxis axis, Columns columns, double height) {
        double y = height / 2;
        double low = axis.getDisplayPosition(scale.at(row.lowRatio()));
        double high = axis.getDisplayPosition(scale.at(row.highRatio()));
        double nominal = axis.getDisplayPosition(scale.at(row.builtRatio()));
        double end = axis.getDisplayPosition(scale.at(row.supposedRatio()));
        double width = Math.max(LEAST_BAND, high - low);
        band.setX((low + high) / 2 - width / 2);
        band.setWidth(width);
        band.setY(y - BAND / 2);
        band.setHeight(BAND);
        stem.setStartX(nominal);
        stem.setEndX(end);
        stem.setStartY(y);
        stem.setEndY(y);
        ring.setLayoutX(nominal);
        ring.setLayoutY(y);
        sign.setLayoutX(end);
        sign.setLayoutY(y);
        point.setX(POINT_X);
        point.setY(y);
        endingAt(built, columns.built, y);
        endingAt(supposed, columns.supposed, y);
        endingAt(range, columns.range, y);
    }

    private static void endingAt(Text text, double right, double y) {
        text.setX(right - text.getLayoutBounds().getWidth());
        text.setY(y);
    }
}
