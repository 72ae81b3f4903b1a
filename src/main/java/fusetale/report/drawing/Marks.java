package fusetale.report.drawing;

import fusetale.explore.Outcome;
import fusetale.explore.Question;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a supposition, an arrangement and their outcome leave on a drawing, free of any toolkit. Painted in this order: the
 * swipes, the drawing itself, strokes, texts.
 *
 * <p>Shorted is a strap around the part, open two slashes and a gap, leaky a dotted strap; what has an amount has it written
 * beside it; a blown fuse is a broken line in a shaded box; above its rating is a hatched box with the figure.
 *
 * @param swipes of the highlighter, under the ink: what is supposed, the path of its current
 * @param strokes over the ink
 * @param labels beside what they belong to
 * @param said the same in words, by the name of the part, of the connector's pin, or of the mains
 */
public record Marks(List<Stroke> swipes, List<Stroke> strokes, List<Label> labels, Map<String, List<String>> said) {
    /** Of a healthy machine. */
    public static final Marks NONE = new Marks(List.of(), List.of(), List.of(), Map.of());

    /** Copies what can change. */
    public Marks {
        swipes = List.copyOf(swipes);
        strokes = List.copyOf(strokes);
        labels = List.copyOf(labels);
        Map<String, List<String>> copy = new LinkedHashMap<>();
        said.forEach((name, words) -> copy.put(name, List.copyOf(words)));
        said = Collections.unmodifiableMap(copy);
    }

    /** What is supposed and how the bench is set, before anything is worked out. */
    public static Marks of(DrawingPlan plan, Question question) {
        MarkSketch sketch = new MarkSketch(plan);
        new ArrangementMarks(sketch, question).draw();
        new FaultMarks(sketch, question).draw();
        return sketch.marks();
    }

    /** The same with what came of it: the path of the current, fuses that melt, parts above their rating. */
    public static Marks of(DrawingPlan plan, Outcome outcome) {
        MarkSketch sketch = new MarkSketch(plan);
        new FaultPath(plan, outcome).strokes().forEach(sketch::swipe);
        new ArrangementMarks(sketch, outcome.question()).draw();
        new FaultMarks(sketch, outcome.question()).draw();
        new OutcomeMarks(sketch, outcome).draw();
        return sketch.marks();
    }
}
