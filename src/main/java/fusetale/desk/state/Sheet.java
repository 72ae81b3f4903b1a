package fusetale.desk.state;

import fusetale.circuit.Circuit;
import fusetale.desk.work.Newest;
import fusetale.report.drawing.DrawingPlan;
import fusetale.report.drawing.DrawingText;
import fusetale.report.drawing.Marks;
import fusetale.report.drawing.SymbolStyle;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/**
 * The drawing of the board and what is marked on it. Both are worked out away from the window; of each the newest wins, and marks
 * are never shown on another drawing than theirs. Belongs to the window's thread; knows no scene.
 */
public final class Sheet {
    private final Newest drawing;
    private final Newest marking;
    private final ReadOnlyObjectWrapper<Optional<DrawnBoard>> drawn = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Marked> marked = new ReadOnlyObjectWrapper<>(Marked.NOTHING);
    private Optional<Wanted> wanted = Optional.empty();
    private boolean marksPending;

    /** An empty sheet. */
    public Sheet(Workers workers) {
        this.drawing = workers.line();
        this.marking = workers.line();
    }

    private record Wanted(Circuit board, SymbolStyle style) {}

    /**
     * What is marked, and every part in words.
     *
     * @param marks swipes, strokes, labels
     * @param spoken what a screen reader says of a part, by its name
     */
    public record Marked(Marks marks, Map<String, String> spoken) {
        private static final Marked NOTHING = new Marked(Marks.NONE, Map.of());

        /** Copies what can change. */
        public Marked {
            spoken = Collections.unmodifiableMap(new LinkedHashMap<>(spoken));
        }

        private static Marked of(DrawingPlan plan, Marks marks) {
            DrawingText text = new DrawingText(plan, marks);
            Map<String, String> spoken = new LinkedHashMap<>();
            plan.symbols().forEach(p -> spoken.put(p.name(), text.describe(p)));
            return new Marked(marks, spoken);
        }

        /** A part in words; its name where it is not drawn. */
        public String words(String part) {
            return spoken.getOrDefault(part, part);
        }
    }

    /** The drawing; empty before the first is ready. */
    public ReadOnlyObjectProperty<Optional<DrawnBoard>> drawnProperty() {
        return drawn.getReadOnlyProperty();
    }

    /** What is marked on it. */
    public ReadOnlyObjectProperty<Marked> markedProperty() {
        return marked.getReadOnlyProperty();
    }

    /** Draws a board, unless it is drawn or being drawn. */
    public void draw(Circuit board, SymbolStyle style) {
        draw(board, style, () -> DrawnBoard.of(board, style));
    }

    /** Takes a drawing of a board that somebody else has begun. */
    public void draw(Circuit board, SymbolStyle style, Supplier<DrawnBoard> begun) {
        Optional<Wanted> now = Optional.of(new Wanted(board, style));
        if (now.equals(wanted)) {
            return;
        }
        wanted = now;
        drawing.start(turn -> {
            DrawnBoard made = begun.get();
            Marked plain = Marked.of(made.plan(), Marks.NONE);
            turn.show(() -> {
                marking.stop();
                marksPending = false;
                marked.set(plain);
                drawn.set(Optional.of(made));
            });
        });
    }

    /** Marks the drawing of a board; nothing while there is none of it. */
    public void mark(Circuit board, Function<DrawingPlan, Marks> marks) {
        Optional<DrawnBoard> on = drawn.get().filter(d -> d.board().equals(board));
        if (on.isEmpty()) {
            return;
        }
        DrawingPlan plan = on.get().plan();
        marksPending = true;
        marking.start(turn -> {
            Marked made = Marked.of(plan, marks.apply(plan));
            turn.show(() -> {
                marksPending = false;
                marked.set(made);
            });
        });
    }

    /** Whether nothing of it is being worked out. */
    public boolean rests() {
        return !marksPending
                && drawn.get().map(d -> new Wanted(d.board(), d.style())).equals(wanted);
    }
}
