package fusetale.desk.match;

import fusetale.desk.kit.Faces;
import fusetale.desk.kit.Reveal;
import fusetale.desk.kit.Signs;
import fusetale.explore.Words;
import fusetale.fault.Supposition;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.shape.Line;
import javafx.scene.text.Text;
import org.jspecify.annotations.Nullable;

/**
 * What fits: candidates down, readings across; a bar is what parts, mains and meter let a reading show, the upright pencil line
 * what was read. Up and down walk through the rows, left and right through readings that have no room, Enter takes a row.
 */
final class FitGrid extends Region {
    private static final Words WORDS = Words.of(FitGrid.class);
    private static final double FOOT = 74;
    private static final double ROW = 58;
    private static final double MORE_Y = 62;

    private final FitHead head = new FitHead();
    private final Pane body = new Pane();
    private final ScrollPane scroll = new ScrollPane(body);
    private final Pane foot = new Pane();
    private final Button earlier = new Button();
    private final Button later = new Button();
    private final List<FitLine> lines = new ArrayList<>();
    private FitRows rows = FitRows.NONE;
    /** The first row in sight. */
    private int top;

    /** The first row beyond. */
    private int seenTo;

    private boolean placing;
    private int from = Integer.MAX_VALUE;
    private @Nullable FitRows footed;
    private @Nullable FitPlan footedAt;
    private int footedTo;
    private Consumer<Supposition> taken = s -> {};
    private Runnable left = () -> {};

    FitGrid() {
        getStyleClass().add("fit-grid");
        scroll.setFitToWidth(true);
        scroll.setFocusTraversable(false);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setAccessibleText(WORDS.say("heading"));
        scroll.vvalueProperty().addListener(c -> scrolled());
        scroll.addEventFilter(ScrollEvent.SCROLL, this::wheel);
        earlier.getStyleClass().add("fit-more");
        later.getStyleClass().add("fit-more");
        earlier.setOnAction(e -> walk(-1));
        later.setOnAction(e -> walk(1));
        getChildren().addAll(head, scroll, foot, earlier, later);
        // before the pane that scrolls takes the arrows for itself
        addEventFilter(KeyEvent.KEY_PRESSED, this::key);
    }

    void onTaken(Consumer<Supposition> listener) {
        taken = listener;
    }

    /** Told when Up leaves the first row. */
    void onLeft(Runnable listener) {
        left = listener;
    }

    /** Shows an answer; rows that stay keep the keyboard. */
    void show(FitRows next) {
        int focused = focused();
        String name = focused < 0 ? "" : lines.get(focused).row().name();
        if (next.columns().size() != rows.columns().size()) {
            from = Integer.MAX_VALUE;
        }
        rows = next;
        lines.clear();
        for (FitRow row : next.rows()) {
            FitLine line = new FitLine(row, next, lines.isEmpty());
            line.setManaged(false);
            line.setOnMouseClicked(e -> {
                line.requestFocus();
                taken.accept(row.supposition());
            });
            line.setOnFired(() -> taken.accept(row.supposition()));
            line.focusedProperty().addListener((of, was, is) -> {
                if (is) {
                    reveal(line);
                }
            });
            lines.add(line);
        }
        body.getChildren().setAll(lines);
        top = Math.max(0, Math.min(top, lines.size() - 1));
        if (focused >= 0) {
            lines.stream()
                    .filter(l -> l.row().name().equals(name))
                    .findFirst()
                    .or(() -> lines.stream().findFirst())
                    .ifPresent(Node::requestFocus);
        }
        requestLayout();
    }

    FitRows rows() {
        return rows;
    }

    /** Puts the keyboard on the first row. */
    void begin() {
        lines.stream().findFirst().ifPresent(Node::requestFocus);
    }

    private int focused() {
        for (int k = 0; k < lines.size(); k++) {
            if (lines.get(k).isFocused()) {
                return k;
            }
        }
        return -1;
    }

    private void walk(int by) {
        FitPlan plan = plan();
        from = Math.max(0, Math.min(rows.columns().size() - plan.shown(), plan.from() + by));
        requestLayout();
    }

    private void key(KeyEvent event) {
        int at = focused();
        if (at < 0) {
            return;
        }
        switch (event.getCode()) {
            case DOWN -> lines.get(Math.min(lines.size() - 1, at + 1)).requestFocus();
            case UP -> {
                if (at == 0) {
                    left.run();
                } else {
                    lines.get(at - 1).requestFocus();
                }
            }
            case LEFT -> walk(-1);
            case RIGHT -> walk(1);
            case ENTER, SPACE -> taken.accept(lines.get(at).row().supposition());
            default -> {
                return;
            }
        }
        event.consume();
    }

    private FitPlan plan() {
        return FitPlan.of(getWidth(), rows.columns().size(), from);
    }

    @Override
    protected double computePrefHeight(double width) {
        FitPlan plan = FitPlan.of(width > 0 ? width : getWidth(), rows.columns().size(), from);
        double all = 0;
        for (FitLine line : lines) {
            all += line.heightAt(plan);
        }
        return FitHead.height(rows) + Math.max(2 * ROW, all) + FOOT;
    }

    @Override
    protected double computeMinHeight(double width) {
        return FitHead.height(rows) + 2 * ROW + FOOT;
    }

    @Override
    protected void layoutChildren() {
        double width = getWidth();
        double height = getHeight();
        FitPlan plan = plan();
        double above = FitHead.height(rows);
        head.resizeRelocate(0, 0, width, above);
        head.show(rows, plan);
        double y = 0;
        for (FitLine line : lines) {
            double high = line.heightAt(plan);
            line.resizeRelocate(0, y, width - 12, high);
            line.place(plan, high);
            y += high;
        }
        body.setPrefSize(width, y);
        body.setMinSize(0, y);
        double room = Math.max(0, height - above - FOOT);
        double seen = whole(room);
        placing = true;
        scroll.resizeRelocate(0, above, width, seen);
        scroll.layout();
        scroll.setVvalue(y > seen ? start(top) / (y - seen) : 0);
        placing = false;
        foot.resizeRelocate(0, above + seen, width, FOOT);
        foot(plan);
        int before = plan.from();
        int after = rows.columns().size() - plan.from() - plan.shown();
        more(earlier, before, "earlier", plan.nameX());
        more(later, after, "later", before > 0 ? earlier.getLayoutX() + earlier.getWidth() + 8 : plan.nameX());
    }

    /** Height of as many whole rows as there is room for, from the first in sight on; those above come into sight where room is left. */
    private double whole(double room) {
        int last = lines.size();
        while (last > top + 1 && end(last - 1) - start(top) > room) {
            last--;
        }
        while (last == lines.size() && top > 0 && end(last - 1) - start(top - 1) <= room) {
            top--;
        }
        seenTo = last;
        return lines.isEmpty() ? 0 : Math.min(Math.max(room, 0), end(last - 1) - start(top));
    }

    private double start(int row) {
        return lines.get(row).getLayoutY();
    }

    private double end(int row) {
        return lines.get(row).getLayoutY() + lines.get(row).getHeight();
    }

    /** The bar was moved: to whole rows. */
    private void scrolled() {
        if (placing || lines.isEmpty()) {
            return;
        }
        double y = scroll.getVvalue() * (body.getHeight() - scroll.getHeight());
        int nearest = 0;
        for (int k = 1; k < lines.size(); k++) {
            nearest = Math.abs(start(k) - y) < Math.abs(start(nearest) - y) ? k : nearest;
        }
        top = nearest;
        requestLayout();
    }

    private void wheel(ScrollEvent event) {
        boolean all = scroll.getHeight() >= body.getHeight();
        if (all || event.getDeltaY() == 0) {
            // whatever lies around it may scroll
            return;
        }
        boolean down = event.getDeltaY() < 0;
        if (down ? seenTo < lines.size() : top > 0) {
            top += down ? 1 : -1;
            requestLayout();
        }
        event.consume();
    }

    private void reveal(FitLine line) {
        int row = lines.indexOf(line);
        double room = getHeight() - FitHead.height(rows) - FOOT;
        if (row < top) {
            top = row;
        } else {
            while (top < row && end(row) - start(top) > room) {
                top++;
            }
        }
        layout();
        requestLayout();
        Reveal.whole(this, line);
    }

    private static void more(Button button, int count, String key, double x) {
        button.setVisible(count > 0);
        button.setText(WORDS.say(key, count));
        button.setAccessibleText(WORDS.say(key + ".spoken", count));
        button.resizeRelocate(x, MORE_Y, button.prefWidth(-1), 30);
    }

    /** Something not in the list, what decides nothing, and what the signs mean. */
    private void foot(FitPlan plan) {
        if (Objects.equals(rows, footed) && plan.equals(footedAt) && footedTo == seenTo) {
            return;
        }
        footed = rows;
        footedTo = seenTo;
        footedAt = plan;
        foot.getChildren().clear();
        Text other = text(WORDS.say("else"), Faces.WORDS, 17, "text-ink", plan.nameX(), 18);
        if (rows.notInTheList()) {
            other.setFont(Faces.HEADING.at(17));
        }
        text(
                WORDS.say(rows.notInTheList() ? "else.tell" : "else.kept"),
                Faces.TABLE,
                15,
                "text-soft",
                plan.nameX(),
                39);
        Text share = text(rows.somethingElse(), Faces.TABLE_FIGURE, 17, "text-ink", plan.nameX(), 39);
        share.setX(plan.nameX() + plan.nameWidth() - share.getLayoutBounds().getWidth());
        for (int k = plan.from(); k < plan.from() + plan.shown(); k++) {
            FitColumn column = rows.columns().get(k);
            Line pencil = new Line(plan.x(k, column.at()), 0, plan.x(k, column.at()), 8);
            pencil.getStyleClass().add(column.suspect() ? "fit-pencil-doubted" : "fit-pencil");
            foot.getChildren().add(pencil);
            if (column.decidesNothing()) {
                text(WORDS.say("decides-nothing"), Faces.TABLE, 14.5, "text-soft", plan.left(k), 20);
            }
        }
        double x = plan.left(plan.from());
        Node diamond = Signs.diamond();
        diamond.setLayoutX(x + 6);
        diamond.setLayoutY(43);
        foot.getChildren().add(diamond);
        text(WORDS.say("legend.bar"), Faces.TABLE, 15, "text-soft", x + 20, 43);
        Line away = new Line(x + 2, 63, x + 12, 63);
        away.getStyleClass().add("fit-away");
        Line stop = new Line(x + 12, 57, x + 12, 69);
        stop.getStyleClass().add("fit-stop");
        foot.getChildren().addAll(away, stop);
        Text two = text(WORDS.say("legend.away"), Faces.TABLE, 15, "text-soft", x + 20, 63);
        double next = x + 20 + two.getLayoutBounds().getWidth() + 22;
        Node cross = Signs.cross();
        cross.setLayoutX(next);
        cross.setLayoutY(63);
        foot.getChildren().add(cross);
        text(WORDS.say("legend.read"), Faces.TABLE, 15, "text-soft", next + 14, 63);
        int left = rows.left() + lines.size() - seenTo;
        if (left > 0) {
            text(WORDS.say("left", left), Faces.TABLE, 15, "text-soft", plan.nameX(), 60);
        }
        foot.getChildren().forEach(n -> n.setManaged(false));
        foot.applyCss();
    }

    private Text text(String words, Faces face, double size, String style, double x, double y) {
        Text text = new Text(words);
        text.setFont(face.at(size));
        text.getStyleClass().add(style);
        text.setTextOrigin(VPos.CENTER);
        text.setX(x);
        text.setY(y);
        foot.getChildren().add(text);
        return text;
    }
}
