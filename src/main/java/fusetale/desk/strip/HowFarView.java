package fusetale.desk.strip;

import fusetale.bench.Check;
import fusetale.desk.kit.Faces;
import fusetale.explore.Outcome;
import fusetale.explore.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import javafx.geometry.VPos;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Region;
import javafx.scene.shape.Line;
import javafx.scene.shape.Rectangle;
import javafx.scene.text.Text;
import org.jspecify.annotations.Nullable;

/**
 * "How far each reading moved": a row a reading, its line from the healthy ring to the supposed diamond. As many rows as the
 * height holds, the others by page. Up, Down, Page Up, Page Down, Home and End walk them, Enter, Space or a press chooses
 * one. Values may be set at each movement of a pointer: nodes are used again.
 */
public final class HowFarView extends Region {
    private static final Words WORDS = Words.of(HowFarView.class);

    /** Height [px] of heading and scale above the rows. */
    private static final double HEAD = 42;

    private static final String SEPARATOR = "  ·  ";
    private static final double GAP = 16;
    private static final double SIGN_ROOM = 8;

    /** Least width [px] of the line, whatever the texts beside it need. */
    private static final double LEAST_LINE = 120;

    private final Text title = text(Faces.HEADING, 17, "text-ink");
    private final Text left = text(Faces.TABLE, 14, "text-soft");
    private final Text close = text(Faces.TABLE, 14, "text-soft");
    private final Text cantTell = text(Faces.TABLE, 13.5, "text-ink");
    private final Text nothing = text(Faces.WORDS, 16, "text-soft");
    private final Rectangle band = new Rectangle();
    private final List<Line> markLines = new ArrayList<>();
    private final List<Text> markTexts = new ArrayList<>();
    private final List<StripLine> lines = new ArrayList<>();

    private StripRows rows = StripRows.NONE;
    private int first;
    private @Nullable Check chosen;
    private Consumer<Check> onChosen = check -> {};

    /** A strip without rows. */
    public HowFarView() {
        getStyleClass().add("how-far");
        getStylesheets()
                .add(Objects.requireNonNull(HowFarView.class.getResource("/fusetale/desk/strip/strip.css"))
                        .toExternalForm());
        title.setText(WORDS.say("title"));
        cantTell.setText(WORDS.say("cant-tell"));
        nothing.setText(WORDS.say("nothing"));
        band.getStyleClass().add("strip-band");
        band.setManaged(false);
        getChildren().addAll(band, title, left, close, cantTell, nothing);
        addEventHandler(KeyEvent.KEY_PRESSED, this::pressed);
        setOnScroll(e -> {
            if (e.getDeltaY() != 0) {
                showFrom(first + (e.getDeltaY() < 0 ? 1 : -1));
                e.consume();
            }
        });
    }

    private static Text text(Faces face, double pixels, String styleClass) {
        Text text = new Text();
        text.setFont(face.at(pixels));
        text.setTextOrigin(VPos.CENTER);
        text.setManaged(false);
        text.getStyleClass().add(styleClass);
        return text;
    }

    /** Shows the readings of the outcomes of one supposition. */
    public void setOutcomes(List<Outcome> outcomes) {
        setRows(StripRows.of(outcomes));
    }

    /** Shows other rows; a row that has the keyboard keeps it, wherever it has moved to. */
    public void setRows(StripRows next) {
        StripRow focused = focusedRow();
        rows = next;
        int again = focused == null ? -1 : indexOf(focused.check());
        if (again >= 0) {
            reveal(again);
            fill();
            lines.get(again - first).requestFocus();
        } else {
            first = Math.min(first, Math.max(0, rows.rows().size() - count()));
            fill();
        }
    }

    /** What is shown. */
    public StripRows rows() {
        return rows;
    }

    /** Told which check is chosen, each time one is. */
    public void setOnChosen(Consumer<Check> listener) {
        onChosen = listener;
    }

    /** Marks the row of a check as chosen and brings it into sight, without telling anybody; null marks none. */
    public void setChosen(@Nullable Check check) {
        chosen = check;
        int index = check == null ? -1 : indexOf(check);
        if (index >= 0) {
            reveal(index);
        }
        fill();
    }

    /** Shows the next page, if there is one. */
    public void nextPage() {
        if (first + count() < rows.rows().size()) {
            showFrom(first + count());
        }
    }

    /** Shows the page before, if there is one. */
    public void previousPage() {
        showFrom(first - count());
    }

    /** Index of the first row in sight. */
    public int first() {
        return first;
    }

    /** How many rows there is room for. */
    public int count() {
        return Math.max(1, (int) Math.floor((getHeight() - HEAD) / StripLine.HEIGHT));
    }

    private void showFrom(int index) {
        int last = Math.max(0, rows.rows().size() - 1);
        // the last page is as full as any
        int fullest = Math.max(0, rows.rows().size() - count());
        first = Math.max(0, Math.min(Math.min(index, last), fullest));
        fill();
    }

    private void reveal(int index) {
        if (index < first) {
            first = index;
        } else if (index >= first + count()) {
            first = index - count() + 1;
        }
    }

    private int indexOf(Check check) {
        for (int k = 0; k < rows.rows().size(); k++) {
            if (rows.rows().get(k).check().equals(check)) {
                return k;
            }
        }
        return -1;
    }

    private @Nullable StripRow focusedRow() {
        return lines.stream()
                .filter(StripLine::isFocused)
                .map(StripLine::row)
                .filter(Objects::nonNull)
                .findFirst()
                .orElse(null);
    }

    private void pressed(KeyEvent event) {
        StripRow row = focusedRow();
        if (row == null) {
            return;
        }
        int at = indexOf(row.check());
        int last = rows.rows().size() - 1;
        switch (event.getCode()) {
            case DOWN -> focus(Math.min(last, at + 1));
            case UP -> focus(Math.max(0, at - 1));
            case PAGE_DOWN -> focus(Math.min(last, at + count()));
            case PAGE_UP -> focus(Math.max(0, at - count()));
            case HOME -> focus(0);
            case END -> focus(last);
            case ENTER, SPACE -> choose(row);
            default -> {
                return;
            }
        }
        event.consume();
    }

    private void focus(int index) {
        reveal(index);
        fill();
        lines.get(index - first).requestFocus();
    }

    private void choose(StripRow row) {
        chosen = row.check();
        fill();
        onChosen.accept(row.check());
    }

    @Override
    protected double computePrefHeight(double width) {
        return HEAD + 5 * StripLine.HEIGHT + 4;
    }

    @Override
    protected double computePrefWidth(double height) {
        return 560;
    }

    @Override
    protected double computeMinWidth(double height) {
        return 420;
    }

    @Override
    protected double computeMinHeight(double width) {
        return HEAD + StripLine.HEIGHT;
    }

    @Override
    protected void layoutChildren() {
        showFrom(first);
    }

    /** Sets texts and places; the only work at each change of values. */
    private void fill() {
        int count = Math.min(count(), rows.rows().size());
        while (lines.size() < count) {
            StripLine line = new StripLine();
            Runnable pressed = () -> {
                StripRow row = line.row();
                line.requestFocus();
                if (row != null) {
                    choose(row);
                }
            };
            line.setOnMousePressed(e -> pressed.run());
            line.setOnFired(pressed);
            lines.add(line);
            getChildren().add(line);
        }
        int shown = Math.max(0, Math.min(count, rows.rows().size() - first));
        for (int k = 0; k < lines.size(); k++) {
            if (k < shown) {
                StripRow row = rows.rows().get(first + k);
                String place =
                        WORDS.say("spoken.place", first + k + 1, rows.rows().size());
                lines.get(k).show(row, row.spoken() + "; " + place);
                lines.get(k).chosen(row.check().equals(chosen));
            } else {
                lines.get(k).clear();
            }
            // one stop for the tabulator, arrows from there
            lines.get(k).setFocusTraversable(k == 0);
        }
        place(shown);
    }

    private void place(int shown) {
        double width = getWidth();
        StripLine.Columns columns = columns(shown, width);
        MovedModel scale = MovedModel.upTo(rows.most());
        double lineWidth = columns.lineEnd() - columns.lineX();
        double bottom = HEAD + shown * StripLine.HEIGHT;
        boolean some = shown > 0;
        nothing.setVisible(!some);
        nothing.setY(HEAD + StripLine.HEIGHT / 2);
        band.setVisible(some);
        cantTell.setVisible(some);
        title.setY(11);
        band.setX(columns.lineX());
        band.setY(HEAD - 12);
        band.setWidth(MovedModel.CANT_TELL_RATIO * lineWidth);
        band.setHeight(Math.max(0, bottom - HEAD + 12));
        cantTell.setX(columns.lineX() + 4);
        cantTell.setY(HEAD - 14);
        List<MovedModel.Mark> marks = some ? scale.marks() : List.of();
        for (int k = 0; k < Math.max(marks.size(), markLines.size()); k++) {
            mark(k, k < marks.size() ? marks.get(k) : null, columns, bottom);
        }
        for (int k = 0; k < shown; k++) {
            StripLine line = lines.get(k);
            line.resizeRelocate(0, HEAD + k * StripLine.HEIGHT, width, StripLine.HEIGHT);
            line.place(columns, scale);
        }
        placeCounts(shown, columns, width);
    }

    private StripLine.Columns columns(int shown, double width) {
        double point = 30;
        double function = 0;
        double built = 0;
        double supposed = 0;
        for (int k = 0; k < shown; k++) {
            StripLine line = lines.get(k);
            point = Math.max(point, line.pointWidth());
            function = Math.max(function, line.functionWidth());
            built = Math.max(built, line.builtWidth());
            supposed = Math.max(supposed, line.supposedWidth());
        }
        double functionX = point + 10;
        double lineX = functionX + function + GAP + SIGN_ROOM;
        double lineEnd =
                Math.max(lineX + LEAST_LINE, width - StripLine.figuresWidth(built, supposed) - GAP - SIGN_ROOM);
        return new StripLine.Columns(functionX, lineX, lineEnd, width - StripLine.arrowFromRight(supposed), width);
    }

    private void mark(int k, MovedModel.@Nullable Mark mark, StripLine.Columns columns, double bottom) {
        if (k >= markLines.size()) {
            Line line = new Line();
            line.getStyleClass().add("strip-mark");
            line.setManaged(false);
            Text text = text(Faces.TABLE, 13.5, "text-ink");
            markLines.add(line);
            markTexts.add(text);
            getChildren().add(1, line);
            getChildren().add(text);
        }
        Line line = markLines.get(k);
        Text text = markTexts.get(k);
        line.setVisible(mark != null);
        text.setVisible(mark != null);
        if (mark != null) {
            double x = columns.lineX() + mark.share() * (columns.lineEnd() - columns.lineX());
            line.setStartX(x);
            line.setEndX(x);
            line.setStartY(HEAD - 6);
            line.setEndY(bottom);
            text.setText(mark.text());
            text.setX(x - text.getLayoutBounds().getWidth() / 2);
            text.setY(HEAD - 14);
        }
    }

    /** What is left out, at the right of the heading and, as far as there is room, of the scale. */
    private void placeCounts(int shown, StripLine.Columns columns, double width) {
        int all = rows.rows().size();
        int end = first + shown;
        String moved = rows.movedLeft(end);
        String page = first > 0 ? WORDS.say("page", first + 1, end, all) : "";
        String keys = join(first > 0 ? WORDS.say("page.up") : "", end < all ? WORDS.say("page.down") : "", " ");
        double room = width - title.getLayoutBounds().getWidth() - GAP;
        List<String> choices = List.of(
                join(join(page, moved, SEPARATOR), keys, SEPARATOR),
                join(page.isEmpty() ? moved : page, keys, SEPARATOR),
                keys);
        for (String choice : choices) {
            left.setText(choice);
            if (left.getLayoutBounds().getWidth() <= room) {
                break;
            }
        }
        endingAt(left, width, 11);
        close.setText(rows.closeLeft(end));
        endingAt(close, width, HEAD - 14);
        close.setVisible(close.getX() > columns.lineEnd() + SIGN_ROOM);
        if (!close.isVisible()) {
            // beside the words over it, where those leave room
            String both = join(left.getText(), close.getText(), SEPARATOR);
            String before = left.getText();
            left.setText(both);
            if (left.getLayoutBounds().getWidth() > room) {
                left.setText(before);
            }
            endingAt(left, width, 11);
        }
        setAccessibleText(join(join(WORDS.say("title"), page, ", "), join(moved, close.getText(), ", "), ", "));
    }

    private static void endingAt(Text text, double right, double y) {
        text.setX(right - text.getLayoutBounds().getWidth());
        text.setY(y);
    }

    private static String join(String one, String other, String between) {
        return one.isEmpty() || other.isEmpty() ? one + other : one + between + other;
    }
}
