package fusetale.report;

import fusetale.circuit.Circuit;
import fusetale.explore.Compared;
import java.awt.Font;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Readings that show the same, as built and as supposed, in the same function: one rail seen from several points.
 *
 * @param rows the readings, in their order
 */
record Alike(List<Compared> rows) {
    private static final int NAMED = 2;

    /** Gathers readings that show the same, each group where its first one stood. */
    static List<Alike> gathered(List<Compared> rows) {
        Map<List<String>, List<Compared>> groups = new LinkedHashMap<>();
        for (Compared row : rows) {
            List<String> shown = List.of(
                    row.check().function().words(),
                    row.asBuilt().shows(),
                    row.asSupposed().shows(),
                    Figures.range(row));
            groups.computeIfAbsent(shown, k -> new ArrayList<>()).add(row);
        }
        return groups.values().stream().map(Alike::new).toList();
    }

    /** The reading that stands for all. */
    Compared first() {
        return rows.get(0);
    }

    /** {@code TP4}, {@code TP4, TP5}, {@code TP4, TP5 + 11}: as many names as fit a width, one at least. */
    String names(Circuit circuit, Font font, double width) {
        List<String> names =
                rows.stream().map(r -> Pairs.name(circuit, r.check())).toList();
        for (int named = Math.min(NAMED, names.size()); named > 1; named--) {
            String text = names(names, named);
            if (Pen.width(text, font) <= width) {
                return text;
            }
        }
        return Pen.fitted(names(names, 1), font, width);
    }

    private static String names(List<String> names, int named) {
        String text = String.join(", ", names.subList(0, named));
        return names.size() == named ? text : text + " + " + (names.size() - named);
    }
}
