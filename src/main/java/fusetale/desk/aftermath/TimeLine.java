package fusetale.desk.aftermath;

import fusetale.aftermath.Harm;
import fusetale.desk.kit.Faces;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.geometry.Orientation;
import javafx.geometry.VPos;
import javafx.scene.AccessibleRole;
import javafx.scene.layout.Region;
import javafx.scene.shape.Line;
import javafx.scene.text.Text;
import org.jspecify.annotations.Nullable;

/**
 * Rows over a logarithmic axis of times: what happens at the left, when and in how many machines beside it, a bar from the first
 * to the last machine, a stroke where half of them have come to it.
 */
final class TimeLine extends Region {
    private static final double LEAST_ROW = 26;
    private static final double BAR = 14;
    private static final double LEAST_BAR = 5;
    private static final double AXIS = 28;
    private static final double GAP = 16;
    private static final double WORDS_RATIO = 0.36;
    private static final double LEAST_WORDS = 120;
    private static final double RIGHT_ROOM = 22;

    private final AftermathModel model;
    private final List<Row> rows = new ArrayList<>();
    private final List<Line> markLines = new ArrayList<>();
    private final List<Text> markTexts = new ArrayList<>();
    private final List<Double> markSeconds = new ArrayList<>();
    private final Line now = new Line();
    private double nowSeconds;

    TimeLine(AftermathModel model) {
        this.model = model;
        model.marks().forEach((seconds, words) -> {
            Line line = new Line();
            line.getStyleClass().add("time-mark");
            Text text = text(Faces.TABLE, 14, "text-soft");
            text.setText(words);
            markSeconds.add(seconds);
            markLines.add(line);
            markTexts.add(text);
        });
        getChildren().addAll(markLines);
        getChildren().addAll(markTexts);
        now.getStyleClass().add("time-now");
        now.setManaged(false);
        now.setVisible(false);
        getChildren().add(now);
        for (TimeRow row : model.rows()) {
            Row line = new Row(row);
            rows.add(line);
            getChildren().add(line);
            line.setFocusTraversable(rows.size() == 1);
        }
        getChildren().forEach(child -> child.setManaged(false));
    }

    private static Text text(Faces face, double pixels, String styleClass) {
        Text text = new Text();
        text.setFont(face.at(pixels));
        text.setTextOrigin(VPos.CENTER);
        text.getStyleClass().add(styleClass);
        return text;
    }

    /** Rows that can have the keyboard, from top to bottom. */
    List<? extends Region> rows() {
        return rows;
    }

    /** Draws a line at a time [s]; null draws none. */
    void now(@Nullable Double seconds) {
        now.setVisible(seconds != null);
        nowSeconds = seconds == null ? 0 : seconds;
        requestLayout();
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    protected double computePrefHeight(double width) {
        double room = whenRight(width);
        return AXIS + rows.stream().mapToDouble(r -> r.height(room)).sum();
    }

    /** Right end [px] of what stands left of the bars. */
    private double whenRight(double width) {
        double when = rows.stream().mapToDouble(Row::whenWidth).max().orElse(0);
        double words = rows.stream().mapToDouble(Row::wordsWidth).max().orElse(0);
        return Math.max(LEAST_WORDS, Math.min(words, WORDS_RATIO * width)) + GAP + when;
    }

    @Override
    protected void layoutChildren() {
        double width = getWidth();
        double whenRight = whenRight(width);
        double left = whenRight + GAP;
        double across = Math.max(50, width - RIGHT_ROOM - left);
        double y = AXIS;
        for (Row row : rows) {
            double height = row.height(whenRight);
            row.resizeRelocate(0, y, width, height);
            row.place(whenRight, left, across);
            y += height;
        }
        for (int k = 0; k < markLines.size(); k++) {
            double x = left + model.share(markSeconds.get(k)) * across;
            upright(markLines.get(k), x, y);
            Text text = markTexts.get(k);
            text.setX(x - text.getLayoutBounds().getWidth() / 2);
            text.setY(AXIS / 2 - 3);
        }
        upright(now, left + model.share(nowSeconds) * across, y);
    }

    private static void upright(Line line, double x, double bottom) {
        line.setStartX(x);
        line.setEndX(x);
        line.setStartY(AXIS - 6);
        line.setEndY(bottom);
    }

    /** One row. */
    private final class Row extends Region {
        private final TimeRow row;
        private final Text words;
        private final Text measure = new Text();
        private final double naturalWidth;
        private final Text when = text(Faces.TABLE_NAME, 15, "text-ink");
        private final Text share = text(Faces.TABLE, 15, "text-soft");
        private final Region bar = new Region();
        private final Line middle = new Line();

        Row(TimeRow row) {
            this.row = row;
            Harm.Gravity gravity = row.happening().gravity();
            getStyleClass().add("time-row");
            setAccessibleRole(AccessibleRole.TEXT);
            setAccessibleText(row.spoken());
            words = text(gravity == Harm.Gravity.DAMAGE ? Faces.TABLE_FIGURE : Faces.TABLE, 16, "text-ink");
            words.setText(row.happening().words());
            measure.setFont(words.getFont());
            measure.setText(words.getText());
            naturalWidth = Math.ceil(words.getLayoutBounds().getWidth()) + 1;
            when.setText(row.happening().when());
            share.setText(row.share());
            bar.getStyleClass().addAll("time-bar", "time-" + gravity.name().toLowerCase(Locale.ROOT));
            if (gravity == Harm.Gravity.DAMAGE) {
                bar.getStyleClass().add("hatch");
            }
            middle.getStyleClass().add("time-middle");
            getChildren().addAll(words, when, share, bar, middle);
            getChildren().forEach(child -> child.setManaged(false));
        }

        double whenWidth() {
            return when.getLayoutBounds().getWidth()
                    + GAP
                    + share.getLayoutBounds().getWidth();
        }

        double wordsWidth() {
            return naturalWidth;
        }

        /** Height [px] with the words wrapped into what is left of a width. */
        double height(double whenRight) {
            // asked for widths that are never shown, too
            measure.setWrappingWidth(wordsRoom(whenRight));
            return Math.max(LEAST_ROW, measure.getLayoutBounds().getHeight() + 6);
        }

        private double wordsRoom(double whenRight) {
            return Math.max(LEAST_WORDS, whenRight - GAP - columns());
        }

        private double columns() {
            return rows.stream().mapToDouble(Row::whenWidth).max().orElse(0);
        }

        void place(double whenRight, double left, double across) {
            double y = getHeight() / 2;
            words.setWrappingWidth(wordsRoom(whenRight));
            words.setX(0);
            words.setY(y);
            share.setX(whenRight - share.getLayoutBounds().getWidth());
            share.setY(y);
            when.setX(whenRight - columns());
            when.setY(y);
            double from = left + model.share(row.happening().leastSeconds()) * across;
            double to = left + model.share(row.happening().mostSeconds()) * across;
            double length = Math.max(LEAST_BAR, to - from);
            bar.resizeRelocate(from, y - BAR / 2, length, BAR);
            double half = left + model.share(row.happening().middleSeconds()) * across;
            middle.setStartX(half);
            middle.setEndX(half);
            middle.setStartY(y - BAR / 2 - 3);
            middle.setEndY(y + BAR / 2 + 3);
        }
    }
}
