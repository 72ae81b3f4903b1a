package fusetale.desk.tags;

import fusetale.bench.Check;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import javafx.geometry.Point2D;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Region;
import javafx.scene.shape.Line;

/**
 * Tags in a row on a cord, in the order of their points on the drawing. Up to seven are large. Of more, those that moved or were
 * read hang on the first cord, at most as many as fit; the rest hang as stubs on further cords.
 */
public final class Cord extends Region {
    private static final int MOST_LARGE = 7;
    private static final double GAP = 10;
    private static final double STUB_GAP = 6;
    private static final double CORD_Y = 10;
    private static final double STUB_CORD_DISTANCE = 32;

    private final Map<Check, TagView> views = new LinkedHashMap<>();
    private final List<Line> cords = new ArrayList<>();
    private ToDoubleFunction<TagFigures> wantedX = figures -> 0;
    private Predicate<TagFigures> inView = figures -> true;
    private double begin;
    private Consumer<TagFigures> chosen = figures -> {};
    private Consumer<TagFigures> downward = figures -> {};

    /** An empty cord. */
    public Cord() {
        getStyleClass().add("cord");
        getStylesheets().add(Cord.class.getResource("tags.css").toExternalForm());
        addEventHandler(KeyEvent.KEY_PRESSED, this::walk);
        setPickOnBounds(false);
    }

    /** Told which tag was opened with Enter or a press. */
    public void onChosen(Consumer<TagFigures> listener) {
        chosen = listener;
    }

    /** Told from which tag one goes down to its part. */
    public void onDownward(Consumer<TagFigures> listener) {
        downward = listener;
    }

    /** Keeps so much room free on the left [px], for a legend. */
    public void setBegin(double pixels) {
        begin = pixels;
        requestLayout();
    }

    /**
     * Shows tags.
     *
     * @param tags figures of all, in any order
     * @param wanted where on the cord the middle of a tag would like to hang [px]
     * @param seen whether the point of a tag is in view: where there is room, such a tag is large though it did not move
     */
    public void show(List<TagFigures> tags, ToDoubleFunction<TagFigures> wanted, Predicate<TagFigures> seen) {
        wantedX = wanted;
        inView = seen;
        Set<Check> now = new HashSet<>();
        for (TagFigures figures : tags) {
            now.add(figures.check());
            TagView view = views.get(figures.check());
            if (view == null) {
                TagView made = new TagView(figures);
                made.setOnMouseClicked(e -> chosen.accept(made.figures()));
                views.put(figures.check(), made);
                getChildren().add(made);
            } else {
                view.show(figures, view.size());
            }
        }
        keepTheKeyboard(tags);
        views.entrySet().removeIf(entry -> {
            boolean gone = !now.contains(entry.getKey());
            if (gone) {
                getChildren().remove(entry.getValue());
            }
            return gone;
        });
        arrange();
        requestLayout();
    }

    /** Where the tag with the keyboard goes, because the meter is turned, the one at the same points gets it. */
    private void keepTheKeyboard(List<TagFigures> tags) {
        focused()
                .map(TagFigures::check)
                .filter(had -> tags.stream().noneMatch(t -> t.check().equals(had)))
                .flatMap(had -> tags.stream()
                        .map(TagFigures::check)
                        .filter(c -> samePoints(c, had))
                        .min(Comparator.comparing(c -> !c.from().equals(had.from()))))
                .ifPresent(this::focus);
    }

    /** Whether the leads are on the same two points, whichever is which: volts have one tag a point, ohms may have both ways. */
    private static boolean samePoints(Check one, Check two) {
        return (one.from().equals(two.from()) && one.to().equals(two.to()))
                || (one.from().equals(two.to()) && one.to().equals(two.from()));
    }

    /** The same tags, whose points have moved on the screen. */
    public void moved() {
        requestLayout();
    }

    /** Sorts the views by their points, so that the keyboard walks them from left to right. */
    private List<TagView> inOrder() {
        return views.values().stream()
                .sorted(Comparator.comparingDouble(v -> wantedX.applyAsDouble(v.figures())))
                .toList();
    }

    /** Decides which tags are how large. */
    private void arrange() {
        List<TagView> all = inOrder();
        if (all.size() <= MOST_LARGE) {
            all.forEach(v -> v.show(v.figures(), TagView.Size.LARGE));
            return;
        }
        int fit = Math.max(1, (int) ((getWidth() - begin + GAP) / (TagView.Size.MEDIUM.width + GAP)));
        Set<TagView> large = new HashSet<>(all.stream()
                .filter(v -> v.figures().stands() || inView.test(v.figures()))
                .sorted(Comparator.comparing((TagView v) -> !v.figures().stands())
                        .thenComparing(v -> v.figures().read().isEmpty())
                        .thenComparing(v -> !inView.test(v.figures()))
                        .thenComparing(v -> -v.figures().moved()))
                .limit(getWidth() > 0 ? fit : 10)
                .toList());
        for (TagView view : all) {
            TagView.Size size = large.contains(view)
                    ? TagView.Size.MEDIUM
                    : view.figures().stands() ? TagView.Size.WIDE_STUB : TagView.Size.STUB;
            if (view.size() != size) {
                view.show(view.figures(), size);
            }
        }
    }

    /** Height that tags and cords take [px]. */
    public double height() {
        return rows().stream().mapToDouble(Row::bottom).max().orElse(0);
    }

    /**
     * Where the string of a tag begins, in the cord's own coordinates; where tags are many, those that did not move have one
     * only while they have the keyboard.
     */
    public Map<TagFigures, Point2D> stringStarts() {
        Map<TagFigures, Point2D> starts = new HashMap<>();
        for (TagView view : views.values()) {
            boolean told = view.size() == TagView.Size.LARGE
                    || (!view.size().isStub() && view.figures().stands());
            if (told || view.isFocused()) {
                starts.put(
                        view.figures(),
                        new Point2D(view.getLayoutX() + view.size().width / 2, view.getLayoutY() + view.size().height));
            }
        }
        return starts;
    }

    /** Puts the keyboard on the tag of a check; gives whether there is one. */
    public boolean focus(Check check) {
        TagView view = views.get(check);
        if (view != null) {
            view.requestFocus();
        }
        return view != null;
    }

    /** The tag that has the keyboard. */
    public java.util.Optional<TagFigures> focused() {
        return views.values().stream()
                .filter(TagView::isFocused)
                .map(TagView::figures)
                .findFirst();
    }

    /** Bounds of every tag as laid out, for whoever checks them. */
    List<TagView> tags() {
        return inOrder();
    }

    /** Tags of one cord. */
    private record Row(List<TagView> tags, double cordY, double top, double gap) {
        double bottom() {
            return tags.stream().mapToDouble(t -> top + t.size().height).max().orElse(0);
        }
    }

    private List<Row> rows() {
        List<TagView> whole = inOrder().stream().filter(v -> !v.size().isStub()).toList();
        List<TagView> stubs = inOrder().stream().filter(v -> v.size().isStub()).toList();
        List<Row> rows = new ArrayList<>();
        double y = CORD_Y;
        if (!whole.isEmpty()) {
            Row row = new Row(whole, y, y + 6, GAP);
            rows.add(row);
            y = row.bottom() + 16;
        }
        if (!stubs.isEmpty()) {
            double room = getWidth() - begin;
            double all = CordPlan.width(stubs.stream().map(t -> t.size().width).toList(), STUB_GAP);
            int count = Math.max(1, (int) Math.ceil(all / Math.max(1, room - 120)));
            if (all <= room) {
                count = 1;
            }
            for (int r = 0; r < count; r++) {
                int phase = r;
                int of = count;
                List<TagView> some = java.util.stream.IntStream.range(0, stubs.size())
                        .filter(k -> k % of == phase)
                        .mapToObj(stubs::get)
                        .toList();
                rows.add(new Row(some, y, y + 5, STUB_GAP));
                y += STUB_CORD_DISTANCE + 6;
            }
        }
        return rows;
    }

    @Override
    protected void layoutChildren() {
        arrange();
        List<Row> rows = rows();
        while (cords.size() < rows.size()) {
            Line line = new Line();
            line.setManaged(false);
            line.getStyleClass().add("cord-line");
            cords.add(line);
            getChildren().add(0, line);
        }
        for (int r = 0; r < cords.size(); r++) {
            Line line = cords.get(r);
            line.setVisible(r < rows.size());
            if (r < rows.size()) {
                Row row = rows.get(r);
                line.setStartX(0);
                line.setEndX(getWidth());
                line.setStartY(row.cordY());
                line.setEndY(row.cordY());
                place(row);
            }
        }
    }

    private void place(Row row) {
        List<Double> wanted =
                row.tags().stream().map(t -> wantedX.applyAsDouble(t.figures())).toList();
        List<Double> widths = row.tags().stream().map(t -> t.size().width).toList();
        List<Double> lefts = CordPlan.lefts(wanted, widths, row.gap(), begin, getWidth());
        for (int k = 0; k < row.tags().size(); k++) {
            TagView tag = row.tags().get(k);
            tag.resizeRelocate(Math.rint(lefts.get(k)), row.top(), tag.size().width, tag.size().height);
        }
    }

    private void walk(KeyEvent event) {
        List<TagView> all = inOrder();
        int at = -1;
        for (int k = 0; k < all.size(); k++) {
            if (all.get(k).isFocused()) {
                at = k;
            }
        }
        if (at < 0) {
            return;
        }
        KeyCode code = event.getCode();
        if (code == KeyCode.LEFT || code == KeyCode.RIGHT) {
            int next = Math.max(0, Math.min(all.size() - 1, at + (code == KeyCode.LEFT ? -1 : 1)));
            all.get(next).requestFocus();
            event.consume();
        } else if (code == KeyCode.DOWN) {
            downward.accept(all.get(at).figures());
            event.consume();
        } else if (code == KeyCode.ENTER) {
            chosen.accept(all.get(at).figures());
            event.consume();
        }
    }
}
