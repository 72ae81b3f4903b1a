package fusetale.desk.waves;

import fusetale.desk.kit.Faces;
import fusetale.desk.kit.Pressable;
import fusetale.desk.kit.Signs;
import fusetale.explore.Words;
import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polyline;
import javafx.scene.text.Font;
import javafx.scene.text.Text;
import org.jspecify.annotations.Nullable;

/** One small waveform: thin healthy ink over the broad supposed line. Its nodes stay; values are set in place. */
final class WaveSmall extends Pressable {
    private static final Words WORDS = Words.of(WaveSmall.class);

    private static final Font LARGE = Faces.HEADING.at(17);
    private static final Font SMALL = Faces.HEADING.at(14);
    private static final Font KIND = Faces.TABLE.at(15);
    private static final Font SMALL_KIND = Faces.TABLE.at(13.5);
    private static final double UNDER_FIGURES = 26;
    private static final double AXIS_X = 40;
    private static final double PLOT_TOP = 38;
    private static final double TIME_HEIGHT = 20;
    private static final double SIGN = 7;
    private static final double GAP = 5;

    private final Text title = text(Faces.HEADING, 17, "text-ink");
    private final Text kind = text(Faces.TABLE, 15, "text-soft");
    private final Text builtFigure = text(Faces.TABLE, 16, "text-ink");
    private final Text supposedFigure = text(Faces.TABLE_FIGURE, 16, "text-marker");
    private final Text high = text(Faces.TABLE, 13.5, "text-ink");
    private final Text low = text(Faces.TABLE, 13.5, "text-ink");
    private final Text start = text(Faces.TABLE, 13.5, "text-ink");
    private final Text end = text(Faces.TABLE, 13.5, "text-ink");
    private final Node ring = Signs.ring();
    private final Node diamond = Signs.diamond();
    private final Polyline built = line("line-healthy");
    private final Polyline supposed = line("line-supposed");
    private final Line zero = new Line();
    private final Line axis = new Line();
    private final Line topMark = new Line();
    private final Line bottomMark = new Line();

    private @Nullable WaveModel model;

    WaveSmall() {
        getStyleClass().add("wave-small");
        setAccessibleRole(AccessibleRole.BUTTON);
        setFocusTraversable(true);
        zero.getStyleClass().add("wave-zero");
        axis.getStyleClass().add("wave-axis");
        topMark.getStyleClass().add("wave-axis");
        bottomMark.getStyleClass().add("wave-axis");
        start.setText(WORDS.say("time.zero"));
        List<Node> all = List.of(
                zero,
                axis,
                topMark,
                bottomMark,
                supposed,
                built,
                title,
                kind,
                ring,
                builtFigure,
                diamond,
                supposedFigure,
                high,
                low,
                start,
                end);
        for (Node each : all) {
            each.setManaged(false);
            each.setMouseTransparent(true);
        }
        getChildren().addAll(all);
    }

    private static Text text(Faces face, double pixels, String styleClass) {
        Text text = new Text();
        text.setFont(face.at(pixels));
        text.setTextOrigin(VPos.CENTER);
        text.getStyleClass().add(styleClass);
        return text;
    }

    private static Polyline line(String styleClass) {
        Polyline line = new Polyline();
        line.getStyleClass().add(styleClass);
        return line;
    }

    @Nullable
    WaveModel model() {
        return model;
    }

    /** Shows a trace; null shows nothing. */
    void show(@Nullable WaveModel next) {
        model = next;
        setVisible(next != null);
        setFocusTraversable(next != null);
        if (next != null) {
            kind.setText(next.kind());
            builtFigure.setText(next.builtFigure());
            supposedFigure.setText(next.supposedFigure());
            high.setText(next.axisEnd(next.high()));
            low.setText(next.axisEnd(next.low()));
            end.setText(next.timeEnd());
            setAccessibleText(WORDS.say("open", next.spoken()));
            place(next);
        }
    }

    @Override
    protected void layoutChildren() {
        WaveModel shown = model;
        if (shown != null) {
            place(shown);
        }
    }

    private void place(WaveModel shown) {
        double right = getWidth();
        double bottom = getHeight() - TIME_HEIGHT;
        if (right <= AXIS_X + 20 || bottom <= PLOT_TOP + 20) {
            return;
        }
        placeHead(shown, right);
        line(axis, AXIS_X, PLOT_TOP, AXIS_X, bottom);
        line(topMark, AXIS_X - 4, PLOT_TOP, AXIS_X, PLOT_TOP);
        line(bottomMark, AXIS_X - 4, bottom, AXIS_X, bottom);
        endingAt(high, AXIS_X - 7, PLOT_TOP);
        endingAt(low, AXIS_X - 7, bottom);
        start.setX(AXIS_X);
        start.setY(bottom + 12);
        endingAt(end, right, bottom + 12);
        double top = shown.high();
        double scale = (bottom - PLOT_TOP) / (top - shown.low());
        boolean crosses = shown.low() < 0 && top > 0;
        zero.setVisible(crosses);
        line(zero, AXIS_X, PLOT_TOP + top * scale, right, PLOT_TOP + top * scale);
        double across = (right - AXIS_X) / shown.seconds();
        int columns = (int) Math.ceil(right - AXIS_X);
        set(supposed, shown.supposed().thinned(columns), across, top, scale);
        set(built, shown.built().thinned(columns), across, top, scale);
    }

    private void placeHead(WaveModel shown, double right) {
        double y = 11;
        endingAt(supposedFigure, right, y);
        double x = supposedFigure.getX() - GAP - SIGN;
        diamond.setLayoutX(x);
        diamond.setLayoutY(y);
        endingAt(builtFigure, x - SIGN - GAP, y);
        x = builtFigure.getX() - GAP - SIGN;
        ring.setLayoutX(x);
        ring.setLayoutY(y);
        double room = x - SIGN - GAP;
        title.setY(y);
        title.setX(placeTitle(shown, room));
        kind.setFont(KIND);
        double left = room - width(kind);
        boolean fits = left > title.getX() + width(title) + 2 * GAP;
        if (!fits) {
            kind.setFont(SMALL_KIND);
        }
        // under the figures where it does not fit before them
        kind.setX(fits ? left : right - width(kind));
        kind.setY(fits ? y : UNDER_FIGURES);
    }

    /** The title at its axis, else from the left edge, else with the unit's symbol, else smaller; gives where it begins. */
    private double placeTitle(WaveModel shown, double room) {
        title.setText(shown.title());
        title.setFont(LARGE);
        if (AXIS_X + width(title) <= room) {
            return AXIS_X;
        }
        if (width(title) > room) {
            title.setText(shown.shortTitle());
        }
        if (width(title) > room) {
            title.setFont(SMALL);
        }
        return Math.max(0, Math.min(AXIS_X, room - width(title)));
    }

    private static double width(Text text) {
        return text.getLayoutBounds().getWidth();
    }

    private static void endingAt(Text text, double right, double y) {
        text.setX(right - width(text));
        text.setY(y);
    }

    private static void line(Line line, double fromX, double fromY, double toX, double toY) {
        line.setStartX(fromX);
        line.setStartY(fromY);
        line.setEndX(toX);
        line.setEndY(toY);
    }

    private static void set(Polyline line, double[] samples, double across, double top, double scale) {
        Double[] points = new Double[samples.length];
        for (int k = 0; k < samples.length; k += 2) {
            points[k] = AXIS_X + samples[k] * across;
            points[k + 1] = PLOT_TOP + (top - samples[k + 1]) * scale;
        }
        line.getPoints().setAll(points);
    }
}
