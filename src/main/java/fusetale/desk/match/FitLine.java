package fusetale.desk.match;

import fusetale.desk.kit.Faces;
import fusetale.desk.kit.Pressable;
import fusetale.desk.kit.Signs;
import java.util.ArrayList;
import java.util.List;
import javafx.css.PseudoClass;
import javafx.geometry.VPos;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polygon;
import javafx.scene.text.Text;
import org.jspecify.annotations.Nullable;

/** One row of the fit grid: a candidate, its share, and what it lets each reading show. Takes the keyboard. */
final class FitLine extends Pressable {
    private static final PseudoClass LEADS = PseudoClass.getPseudoClass("leads");
    private static final double TOP = 10;
    private static final double NAME_LINE = 21;
    private static final double SMALL_LINE = 19;
    private static final double LEADING_LINE = 27;
    private static final double BOTTOM = 8;
    private static final double LEAST = 58;
    private static final double AXIS_Y = 34;
    private static final double HALF_BAR = 5;
    private static final double AWAY = 8;
    private static final double SHARE_ROOM = 66;

    private final FitRow row;
    private final List<FitColumn> columns;
    private final Text name = new Text();
    private final Text share = new Text();
    private final Text fits = new Text();
    private final List<Text> notes = new ArrayList<>();
    private final Polygon swipe = new Polygon();
    private final List<Node> drawn = new ArrayList<>();
    private final boolean leads;
    private final boolean freshLast;
    private @Nullable FitPlan placed;
    private double placedHeight;

    FitLine(FitRow row, FitRows rows, boolean leads) {
        this.row = row;
        this.columns = rows.columns();
        this.freshLast = !rows.fresh().isEmpty();
        this.leads = leads;
        getStyleClass().add("fit-row");
        pseudoClassStateChanged(LEADS, leads);
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.BUTTON);
        setAccessibleText(row.spoken());
        name.setText(row.name());
        name.setFont((leads ? Faces.HEADING : Faces.WORDS).at(17));
        name.getStyleClass().add("text-ink");
        share.setText(row.share());
        share.setFont(Faces.TABLE_FIGURE.at(leads ? 22 : 17));
        share.getStyleClass().add("text-ink");
        fits.setText(row.fits());
        fits.setFont(Faces.TABLE.at(15));
        fits.getStyleClass().add("text-soft");
        swipe.getStyleClass().add("fill-marker");
        swipe.setVisible(leads);
        getChildren().addAll(swipe, name, share, fits);
        for (String note : row.notes()) {
            Text text = new Text(note);
            text.setFont(Faces.TABLE.at(15));
            text.getStyleClass().add("text-soft");
            notes.add(text);
            getChildren().add(text);
        }
        for (Node node : getChildren()) {
            node.setManaged(false);
            node.setMouseTransparent(true);
        }
        List<Text> texts = new ArrayList<>(List.of(name, share, fits));
        texts.addAll(notes);
        texts.forEach(t -> t.setTextOrigin(VPos.TOP));
    }

    FitRow row() {
        return row;
    }

    /** Height at a plan, texts broken to its room. */
    double heightAt(FitPlan plan) {
        name.setWrappingWidth(plan.nameWidth());
        double names = name.getLayoutBounds().getHeight();
        fits.setWrappingWidth(plan.nameWidth() - SHARE_ROOM);
        double below = Math.max(
                leads ? LEADING_LINE : SMALL_LINE, fits.getLayoutBounds().getHeight());
        for (Text note : notes) {
            note.setWrappingWidth(plan.nameWidth());
            below += note.getLayoutBounds().getHeight();
        }
        return Math.rint(Math.max(LEAST, TOP + Math.max(NAME_LINE, names) + below + BOTTOM));
    }

    /** Places everything at a plan. */
    void place(FitPlan plan, double height) {
        if (plan.equals(placed) && height == placedHeight) {
            return;
        }
        placed = plan;
        placedHeight = height;
        double names = Math.max(NAME_LINE, name.getLayoutBounds().getHeight());
        name.setX(plan.nameX());
        name.setY(TOP);
        double words = Math.min(plan.nameWidth(), natural(row.name()));
        swipe.getPoints()
                .setAll(
                        plan.nameX() - 6,
                        TOP - 1,
                        plan.nameX() + words + 8,
                        TOP - 3,
                        plan.nameX() + words + 7,
                        TOP + names + 2,
                        plan.nameX() - 7,
                        TOP + names + 3);
        fits.setX(plan.nameX());
        fits.setY(TOP + names + 2);
        share.setX(plan.nameX() + plan.nameWidth() - share.getLayoutBounds().getWidth());
        share.setY(TOP + names + (leads ? -1 : 1));
        double y = TOP
                + names
                + 2
                + Math.max(
                        leads ? LEADING_LINE : SMALL_LINE,
                        fits.getLayoutBounds().getHeight());
        for (Text note : notes) {
            note.setX(plan.nameX());
            note.setY(y);
            y += note.getLayoutBounds().getHeight();
        }
        getChildren().removeAll(drawn);
        drawn.clear();
        line(plan.nameX(), height - 0.5, plan.right(), height - 0.5, "fit-rule");
        for (int k = 0; k < columns.size(); k++) {
            if (plan.shows(k)) {
                if (!columns.get(k).fresh().isEmpty()) {
                    line(plan.before(k), 0, plan.before(k), height, "fit-fresh");
                }
                column(plan, k, height);
            }
        }
        if (freshLast && plan.from() + plan.shown() == columns.size()) {
            double last = plan.before(columns.size());
            line(last, 0, last, height, "fit-fresh");
        }
        getChildren().addAll(drawn);
        applyCss();
    }

    private double natural(String words) {
        Text alone = new Text(words);
        alone.setFont(name.getFont());
        return alone.getLayoutBounds().getWidth();
    }

    private void column(FitPlan plan, int index, double height) {
        FitColumn column = columns.get(index);
        double pencil = plan.x(index, column.at());
        line(plan.left(index), AXIS_Y, plan.end(index), AXIS_Y, "fit-axis");
        if (index >= row.cells().size()) {
            pencil(pencil, height, column);
            return;
        }
        FitCell cell = row.cells().get(index);
        String style = column.decidesNothing() ? "fit-idle" : cell.fits() ? "fit-bar" : "fit-away";
        double low = plan.x(index, cell.low());
        double high = plan.x(index, cell.high());
        double middle = plan.x(index, cell.middle());
        boolean narrow = high - low < 2 * HALF_BAR;
        if (cell.fits()) {
            if (!narrow) {
                line(low, AXIS_Y, high, AXIS_Y, style);
            }
            pencil(pencil, height, column);
            diamond(middle, column.decidesNothing());
        } else {
            pencil(pencil, height, column);
            // away from the reading, even where the pencil is thicker than the difference
            boolean before = middle <= pencil;
            double end = before ? Math.min(high, pencil - AWAY) : Math.max(low, pencil + AWAY);
            double far = before ? Math.min(low, end - 2 * HALF_BAR) : Math.max(high, end + 2 * HALF_BAR);
            line(end, AXIS_Y, far, AXIS_Y, style);
            line(end, AXIS_Y - 7, end, AXIS_Y + 7, "fit-stop");
        }
        figure(plan, index, cell, column, middle, pencil);
    }

    private void diamond(double x, boolean idle) {
        Node diamond = Signs.diamond();
        diamond.setLayoutX(x);
        diamond.setLayoutY(AXIS_Y);
        if (idle) {
            diamond.getStyleClass().setAll("fit-idle-sign");
            diamond.setScaleX(0.7);
            diamond.setScaleY(0.7);
        }
        add(diamond);
    }

    private void figure(FitPlan plan, int index, FitCell cell, FitColumn column, double middle, double pencil) {
        boolean strong = cell.fits() && !column.decidesNothing();
        Text figure = new Text(cell.shows());
        figure.setFont((strong ? Faces.TABLE_FIGURE : Faces.TABLE).at(15.5));
        figure.getStyleClass().add(strong ? "text-marker" : "text-soft");
        figure.setTextOrigin(VPos.BASELINE);
        double width = figure.getLayoutBounds().getWidth();
        // beside the pencil line, never under it
        double x = middle - width / 2;
        if (pencil > x - 5 && pencil < x + width + 5) {
            x = middle < pencil - 1 && pencil - 6 - width >= plan.left(index) - 8 ? pencil - 6 - width : pencil + 6;
        }
        double most = plan.left(index) + plan.width() - 6 - width;
        if (x > most) {
            x = pencil + 6 > most && pencil - 6 - width >= plan.left(index) - 8 ? pencil - 6 - width : most;
        }
        figure.setX(Math.max(plan.left(index) - 8, x));
        figure.setY(AXIS_Y - 10);
        add(figure);
    }

    private void pencil(double x, double height, FitColumn column) {
        line(x, 0, x, height, column.suspect() ? "fit-pencil-doubted" : "fit-pencil");
    }

    private void line(double x1, double y1, double x2, double y2, String style) {
        Line line = new Line(x1, y1, x2, y2);
        line.getStyleClass().add(style);
        add(line);
    }

    private void add(Node node) {
        node.setManaged(false);
        node.setMouseTransparent(true);
        drawn.add(node);
    }
}
