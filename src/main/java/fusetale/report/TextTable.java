package fusetale.report;

import java.util.ArrayList;
import java.util.List;

/** A table as plain text, columns two blanks apart, at most {@value #WIDTH} wide: the last column gives way and breaks. */
final class TextTable {
    /** Most columns of a line. */
    static final int WIDTH = 100;

    private static final String GAP = "  ";

    private final List<Column> columns;
    private final List<Row> rows = new ArrayList<>();

    TextTable(Column... columns) {
        this.columns = List.of(columns);
        rows.add(new Row(this.columns.stream().map(Column::head).toList(), false));
    }

    /**
     * A column.
     *
     * @param head its heading
     * @param right whether its cells end at the right
     */
    record Column(String head, boolean right) {
        static Column left(String head) {
            return new Column(head, false);
        }

        static Column right(String head) {
            return new Column(head, true);
        }
    }

    private record Row(List<String> cells, boolean strong) {}

    /** One more row, perhaps standing out. */
    void row(boolean strong, String... cells) {
        if (cells.length != columns.size()) {
            throw new IllegalArgumentException(cells.length + " cells for " + columns.size() + " columns");
        }
        rows.add(new Row(List.of(cells), strong));
    }

    /** The lines, heading first. */
    List<String> lines(Emphasis emphasis) {
        int[] widths = widths();
        int last = columns.size() - 1;
        List<String> lines = new ArrayList<>();
        for (Row row : rows) {
            StringBuilder start = new StringBuilder();
            for (int k = 0; k < last; k++) {
                start.append(padded(
                                row.cells().get(k), widths[k], columns.get(k).right()))
                        .append(GAP);
            }
            int indent = start.length();
            boolean right = columns.get(last).right();
            for (String piece : Paragraph.lines(row.cells().get(last), widths[last])) {
                String line = (start + padded(piece, widths[last], right)).stripTrailing();
                lines.add(row.strong() ? emphasis.strong(line) : line);
                start.setLength(0);
                start.append(" ".repeat(indent));
            }
        }
        return lines;
    }

    private int[] widths() {
        int last = columns.size() - 1;
        int[] widths = new int[columns.size()];
        for (Row row : rows) {
            for (int k = 0; k <= last; k++) {
                widths[k] = Math.max(widths[k], Paragraph.length(row.cells().get(k)));
            }
        }
        int others = 0;
        for (int k = 0; k < last; k++) {
            others += widths[k] + GAP.length();
        }
        widths[last] = Math.max(8, Math.min(widths[last], WIDTH - others));
        return widths;
    }

    private static String padded(String text, int width, boolean right) {
        String blanks = " ".repeat(Math.max(0, width - Paragraph.length(text)));
        return right ? blanks + text : text + blanks;
    }
}
