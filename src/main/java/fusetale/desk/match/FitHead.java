package fusetale.desk.match;

import fusetale.desk.kit.Faces;
import fusetale.desk.kit.Signs;
import fusetale.explore.Words;
import java.util.List;
import java.util.Objects;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.scene.shape.Line;
import javafx.scene.text.Text;
import org.jspecify.annotations.Nullable;

/** Head of the fit grid: what was measured, and a cross where it was read. */
final class FitHead extends Region {
    private static final Words WORDS = Words.of(FitHead.class);
    private static final double CROSS_Y = 74;
    private static final double HEIGHT = 100;
    /** Room for what was replaced between two readings. */
    private static final double FRESH = 20;

    private @Nullable FitRows shown;
    private @Nullable FitPlan placed;
    private double lower;

    FitHead() {
        getStyleClass().add("fit-head");
    }

    /** Height [px]. */
    static double height(FitRows rows) {
        return replaced(rows) ? HEIGHT + FRESH : HEIGHT;
    }

    private static boolean replaced(FitRows rows) {
        return !rows.fresh().isEmpty()
                || rows.columns().stream().anyMatch(c -> !c.fresh().isEmpty());
    }

    /** Places everything at a plan. */
    void show(FitRows rows, FitPlan plan) {
        if (Objects.equals(rows, shown) && plan.equals(placed)) {
            return;
        }
        shown = rows;
        placed = plan;
        getChildren().clear();
        lower = replaced(rows) ? FRESH : 0;
        text(WORDS.say("heading"), Faces.HEADING, 20, "text-ink", plan.nameX(), 22, plan.nameWidth());
        text(
                WORDS.say(rows.old() ? "heading.old" : "heading.sub"),
                Faces.TABLE,
                15.5,
                "text-soft",
                plan.nameX(),
                46,
                plan.nameWidth());
        for (int k = plan.from(); k < plan.from() + plan.shown(); k++) {
            column(rows.columns(), k, plan);
        }
        line(plan.nameX(), HEIGHT - 0.5, plan.right(), HEIGHT - 0.5, "fit-rule");
        fresh(rows, plan);
        for (Node node : getChildren()) {
            node.setManaged(false);
        }
        applyCss();
    }

    /** What was replaced, where it was: a line down the grid with its words on top. */
    private void fresh(FitRows rows, FitPlan plan) {
        double room = plan.right() - plan.firstX();
        for (int k = plan.from() + plan.shown() - 1; k >= plan.from(); k--) {
            String words = rows.columns().get(k).fresh();
            if (!words.isEmpty()) {
                double x = plan.before(k);
                line(x, -lower + 4, x, HEIGHT, "fit-fresh");
                text(
                        words,
                        Faces.TABLE_FIGURE,
                        15,
                        "text-ink",
                        x + 6,
                        13 - lower,
                        Math.min(room, plan.right() - x - 8));
                room = x - plan.firstX();
            }
        }
        if (!rows.fresh().isEmpty()
                && plan.from() + plan.shown() == rows.columns().size()) {
            double x = plan.before(rows.columns().size());
            line(x, -lower + 4, x, HEIGHT, "fit-fresh");
            Text text = text(rows.fresh(), Faces.TABLE_FIGURE, 15, "text-ink", x, 13 - lower, plan.width());
            double width = text.getLayoutBounds().getWidth();
            text.setX(x + 6 + width <= plan.right() ? x + 6 : x - 6 - width);
        }
    }

    private void column(List<FitColumn> columns, int index, FitPlan plan) {
        FitColumn column = columns.get(index);
        double left = plan.left(index);
        double room = plan.width() - 8;
        text(column.place(), Faces.TABLE_FIGURE, 16, "text-ink", left, 18, room);
        text(column.setting(), Faces.TABLE, 15.5, "text-ink", left, 37, room);
        double x = plan.x(index, column.at());
        line(x, CROSS_Y, x, HEIGHT, column.suspect() ? "fit-pencil-doubted" : "fit-pencil");
        Node cross = Signs.cross();
        cross.setLayoutX(x);
        cross.setLayoutY(CROSS_Y + lower);
        getChildren().add(cross);
        Text shown = text(column.shown(), Faces.TABLE_FIGURE, 16, "text-pencil", x + 11, CROSS_Y, 0);
        double width = shown.getLayoutBounds().getWidth();
        double most = left + plan.width() - 4;
        if (x + 11 + width > most) {
            shown.setX(x - 11 - width >= left - 8 ? x - 11 - width : left);
            shown.setY(lower + (x - 11 - width >= left - 8 ? CROSS_Y : CROSS_Y + 17));
        }
        String how = column.scale() == null ? "seen." : "read.";
        String note = column.suspect()
                ? WORDS.say(how + "again")
                : column.confirmed() ? WORDS.say(how + "twice") : column.bench();
        if (!note.isEmpty()) {
            text(
                    note,
                    column.suspect() ? Faces.TABLE_FIGURE : Faces.TABLE,
                    14.5,
                    column.suspect() ? "text-marker" : "text-soft",
                    left,
                    54,
                    room);
        }
    }

    /** A text of one line, condensed where the room is too small; no room given means as long as it is. */
    private Text text(String words, Faces face, double size, String style, double x, double y, double room) {
        Text text = new Text(words);
        text.setFont(face.at(size));
        text.getStyleClass().add(style);
        text.setTextOrigin(VPos.CENTER);
        for (double small = size;
                room > 0 && small > 12.5 && text.getLayoutBounds().getWidth() > room;
                small -= 0.5) {
            text.setFont(face.at(small));
        }
        if (room > 0 && text.getLayoutBounds().getWidth() > room) {
            cut(text, words, room);
        }
        text.setX(x);
        text.setY(y + lower);
        getChildren().add(text);
        return text;
    }

    /** Words beyond the room go; the whole text is spoken with every row. */
    private static void cut(Text text, String words, double room) {
        String left = words;
        while (left.contains(" ") && text.getLayoutBounds().getWidth() > room) {
            left = left.substring(0, left.lastIndexOf(' '));
            text.setText(left + " \u2026");
        }
    }

    private void line(double x1, double y1, double x2, double y2, String style) {
        Line line = new Line(x1, y1 + lower, x2, y2 + lower);
        line.getStyleClass().add(style);
        getChildren().add(line);
    }
}
