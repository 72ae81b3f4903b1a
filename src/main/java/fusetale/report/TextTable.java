package fusetale.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A table as plain text, columns two blanks apart, at most {@value #WIDTH} wide: the last column gives way. */
final class TextTable {
    /** Most columns of a line. */
    static final int WIDTH = 100;

    private static final String GAP = "  ";

    /** Columns that the last one keeps where it has more to say. */
    private static final int LEAST = 8;

    private final List<Column> columns;
    private final List<Row> rows = new ArrayList<>();
    private boolean cut;

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

    /** Cuts the last column instead of breaking it. */
    TextTable cuttingLast() {
        cut = true;
        return this;
    }

    /** The lines, heading first. */
    List<String> lines(Emphasis emphasis) {
        int[] widths = widths();
        int last = columns.size() - 1;
        List<String> lines = new ArrayList<>();
        for (Row row : rows) {
            StringBuilder start = new StringBuilder();
            for (int k = 0; k < last; k++) {
                String cell = Paragraph.cut(row.cells().get(k), widths[k]);
                start.append(padded(cell, widths[k], columns.get(k).right())).append(GAP);
            }
            int indent = start.length();
            boolean right = columns.get(last).right();
            String text = row.cells().get(last);
            for (String piece :
                    cut ? List.of(Paragraph.cut(text, widths[last])) : Paragraph.lines(text, widths[last])) {
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
        int over = Arrays.stream(widths).sum() + last * GAP.length() - WIDTH;
        if (over > 0) {
            int given = Math.min(over, widths[last] - LEAST);
            widths[last] -= Math.max(0, given);
            // names so long that not even that is enough are cut themselves
            widths[widest(widths)] -= over - Math.max(0, given);
        }
        return widths;
    }

    private static int widest(int[] widths) {
        int widest = 0;
        for (int k = 1; k < widths.length; k++) {
            widest = widths[k] > widths[widest] ? k : widest;
        }
        return widest;
    }

    private static String padded(String text, int width, boolean right) {
        String blanks = " ".repeat(Math.max(0, width - Paragraph.length(text)));
        return right ? blanks + text : text + blanks;
    }
}
