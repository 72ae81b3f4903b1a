package fusetale.circuit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** How a circuit file says where everything stands on its drawing. */
final class DrawingForms {
    private static final int MOST_SPREAD = 99;

    private static final Key<Square> SQUARE =
            Key.required("square", Forms.SQUARE, "[column, row] of its middle, counted from 0 at the top left");
    private static final Key<Stand.Turn> TURN = Key.optional(
            "turn",
            Forms.choice(turns()),
            "right: a quarter turn clockwise, first pin on top; left: first pin at the bottom; half: upside down");
    private static final Key<Boolean> MIRRORED =
            Key.defaulted("mirrored", Forms.TRUTH, "false", "left and right exchanged before it is turned");
    private static final Key<Integer> SPREAD = Key.optional(
            "spread",
            Forms.integer(1, MOST_SPREAD),
            "squares from one winding of a transformer, or one check of a controller, to the next");
    private static final Form<Stand> STAND = new Shape<>(
            "a place on the drawing",
            "Where a part, a connector's pin or a test point stands.",
            List.of(SQUARE, TURN, MIRRORED, SPREAD),
            DrawingForms::stand);

    /** Where parts, connectors' pins and test points stand. */
    static final Key<List<Declared<Stand>>> DRAWING = Key.required(
            "drawing",
            new NamedForm<>(NameForm.DRAWN, STAND, false),
            "where each part stands: {square: [column, row]}; pins of connectors (J1.3) and test points may be placed too");

    private static final Key<Square> FROM = Key.required("from", Forms.SQUARE, "[column, row] of its top left square");
    private static final Key<Square> TO = Key.required("to", Forms.SQUARE, "[column, row] of its bottom right square");
    private static final Form<SectionArea> SECTION = new Shape<>(
            "a section of the drawing",
            "A part of the drawing with a heading.",
            List.of(FROM, TO),
            DrawingForms::section);

    /** Parts of the drawing with a heading. */
    static final Key<List<Declared<SectionArea>>> SECTIONS = Key.optional(
            "sections",
            new NamedForm<>(NameForm.ARRANGEMENT, SECTION, false),
            "parts of the drawing by heading: {from: [column, row], to: [column, row]}");

    private DrawingForms() {}

    private static Stand stand(Values v) {
        Stand.Turn turn = v.find(TURN);
        Integer spread = v.find(SPREAD);
        return new Stand(
                v.get(SQUARE), turn == null ? Stand.Turn.NONE : turn, v.get(MIRRORED), spread == null ? 0 : spread);
    }

    private static @Nullable SectionArea section(Values v) {
        Square from = v.get(FROM);
        Square to = v.get(TO);
        if (to.column() <= from.column() || to.row() <= from.row()) {
            v.error(TO, "this corner does not lie below and to the right of 'from'", "", "");
            return null;
        }
        return new SectionArea(v.name(), from, to);
    }

    private static Map<String, Stand.Turn> turns() {
        Map<String, Stand.Turn> turns = new LinkedHashMap<>();
        turns.put("right", Stand.Turn.RIGHT);
        turns.put("half", Stand.Turn.HALF);
        turns.put("left", Stand.Turn.LEFT);
        return turns;
    }
}
