package fusetale.report;

import fusetale.explore.SwapChange;
import fusetale.explore.SwapChange.Band;
import fusetale.explore.SwapChanges;
import fusetale.explore.SwapFigure;
import fusetale.explore.Words;
import fusetale.quantity.Notation;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** What swaps change, as plain text. */
final class SwapTable {
    private static final Words WORDS = Words.of(SwapTable.class);

    /** Less than this is nothing, whatever the unit: leakage of a bridge that feeds nothing. */
    private static final double NOTHING = 5e-7;

    /** Less I²t [A²s] than this heats nothing that is looked at here. */
    private static final double NEGLIGIBLE = 0.005;

    private SwapTable() {}

    /** The section with its heading and what it rests on; no lines where nothing was swapped. */
    static List<String> lines(SwapChanges changes, Emphasis emphasis) {
        List<String> lines = new ArrayList<>();
        if (changes.rows().isEmpty()) {
            return lines;
        }
        lines.add("");
        lines.add(emphasis.strong(WORDS.say("table.swaps")));
        TextTable table = new TextTable(
                TextTable.Column.left(WORDS.say("head.part")),
                TextTable.Column.left(WORDS.say("head.what")),
                TextTable.Column.right(WORDS.say("head.built")),
                TextTable.Column.right(WORDS.say("head.supposed")),
                TextTable.Column.right(WORDS.say("head.rating")));
        String before = "";
        for (SwapChange row : changes.rows()) {
            table.row(
                    row.over(),
                    row.part().equals(before) ? "" : row.part(),
                    row.figure().words(),
                    band(row.asBuilt(), row.figure()),
                    band(row.asSupposed(), row.figure()),
                    Double.isInfinite(row.rating()) ? "" : figure(row.rating(), row.figure()));
            before = row.part();
        }
        lines.addAll(table.lines(emphasis));
        for (String assumption : changes.assumptions()) {
            lines.addAll(Paragraph.hanging("- ", assumption, TextTable.WIDTH));
        }
        return lines;
    }

    private static String band(@Nullable Band band, SwapFigure figure) {
        if (band == null) {
            return "-";
        }
        String low = figure(band.low(), figure);
        String high = figure(band.high(), figure);
        if (low.equals(high)) {
            return low;
        }
        int space = low.indexOf(' ');
        boolean sameUnit = space > 0 && high.endsWith(low.substring(space));
        return WORDS.say("swap.range", sameUnit ? low.substring(0, space) : low, high);
    }

    private static String figure(double value, SwapFigure figure) {
        if (figure.unit() == Unit.CELSIUS) {
            return String.format(Locale.ROOT, "%.0f °C", value);
        }
        if (figure == SwapFigure.CONDUCTION_ANGLE) {
            return String.format(Locale.ROOT, "%.0f°", value);
        }
        if (figure.unit() == Unit.AMPERE_SQUARED_SECOND) {
            return value < NEGLIGIBLE
                    ? "0 A²s"
                    : String.format(Locale.ROOT, value < 10 ? "%.2f A²s" : "%.0f A²s", value);
        }
        double shown = Math.abs(value) < NOTHING ? 0 : value;
        return Notation.format(new Quantity(shown, figure.unit()), figure == SwapFigure.SAFE_CURRENT ? 2 : 3);
    }
}
