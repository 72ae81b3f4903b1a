package fusetale.match;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Comma-separated values (RFC 4180) as spreadsheets write them: a cell may stand in quotes and then hold separators, line
 * ends and doubled quotes; lines end with any of CR LF, LF and CR; the separator is whichever of comma, semicolon and tab
 * the first line has most of.
 *
 * @param rows rows that hold anything
 * @param separator what parts their cells
 * @param unclosedLine line on which a quote opens that nothing closes, from 1; 0 for none
 */
record CsvRows(List<Row> rows, char separator, int unclosedLine) {
    private static final String SEPARATORS = ",;\t";

    CsvRows {
        rows = List.copyOf(rows);
    }

    /**
     * A row.
     *
     * @param line line of the file on which it begins, from 1
     * @param number which row it is in a spreadsheet, from 1
     * @param cells its cells as written, quotes taken off
     */
    record Row(int line, int number, List<String> cells) {
        Row {
            cells = List.copyOf(cells);
        }

        /** The cell, blanks around it taken off; empty where the row is shorter. */
        String cell(int column) {
            return written(column).strip();
        }

        /** The cell as written; empty where the row is shorter. */
        String written(int column) {
            return column >= 0 && column < cells.size() ? cells.get(column) : "";
        }

        private boolean blank() {
            return cells.stream().allMatch(String::isBlank);
        }
    }

    /** Takes a text apart. Whatever it is, there is an answer. */
    static CsvRows of(String text) {
        return new Cutter(text, separatorOf(text)).cut();
    }

    private static char separatorOf(String text) {
        int[] counts = new int[SEPARATORS.length()];
        boolean quoted = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '"') {
                quoted = !quoted;
            } else if (!quoted && (c == '\n' || c == '\r')) {
                break;
            } else if (!quoted && SEPARATORS.indexOf(c) >= 0) {
                counts[SEPARATORS.indexOf(c)]++;
            }
        }
        int most = 0;
        for (int k = 1; k < counts.length; k++) {
            most = counts[k] > counts[most] ? k : most;
        }
        return SEPARATORS.charAt(most);
    }

    /** Goes through a text once. */
    private static final class Cutter {
        private final String text;
        private final char separator;
        private final List<Row> rows = new ArrayList<>();
        private List<String> cells = new ArrayList<>();
        private final StringBuilder cell = new StringBuilder();
        private int line = 1;
        private int begun = 1;
        private int number = 1;
        private int quoteLine;

        Cutter(String text, char separator) {
            this.text = text;
            this.separator = separator;
        }

        CsvRows cut() {
            boolean quoted = false;
            int i = 0;
            while (i < text.length()) {
                char c = text.charAt(i);
                char next = i + 1 < text.length() ? text.charAt(i + 1) : 0;
                boolean end = c == '\n' || c == '\r';
                boolean pair = c == '\r' && next == '\n';
                if (quoted) {
                    if (c == '"' && next == '"') {
                        cell.append('"');
                        i++;
                    } else if (c == '"') {
                        quoted = false;
                    } else {
                        cell.append(c);
                        // of a pair the second counts
                        line += end && !pair ? 1 : 0;
                    }
                } else if (c == '"' && cell.toString().isBlank()) {
                    cell.setLength(0);
                    quoted = true;
                    quoteLine = line;
                } else if (c == separator) {
                    endCell();
                } else if (end) {
                    i += pair ? 1 : 0;
                    line++;
                    endRow();
                } else {
                    cell.append(c);
                }
                i++;
            }
            endRow();
            return new CsvRows(rows, separator, quoted ? quoteLine : 0);
        }

        private void endCell() {
            cells.add(cell.toString());
            cell.setLength(0);
        }

        private void endRow() {
            endCell();
            Row row = new Row(begun, number, cells);
            if (!row.blank()) {
                rows.add(row);
            }
            cells = new ArrayList<>();
            begun = line;
            number++;
        }
    }

    /** A line, with the line end that RFC 4180 asks for. No cell of it is taken for a formula by a spreadsheet. */
    static String line(List<String> cells) {
        return cells.stream().map(c -> quoted(harmless(c))).collect(Collectors.joining(",")) + "\r\n";
    }

    /**
     * Text that a spreadsheet would work out gets an apostrophe before it, which the spreadsheet, or {@link #asMeant}, takes
     * off again. Negative figures are no formulas.
     */
    private static String harmless(String cell) {
        return cell.matches("(?s)'*[=+\\-@\\t\\r].*") && !cell.matches("[+-]?[\\d.]+") ? "'" + cell : cell;
    }

    /** What a cell says once the apostrophe is taken off that keeps it from being a formula. */
    static String asMeant(String cell) {
        return cell.matches("(?s)'+[=+\\-@\\t\\r].*") ? cell.substring(1) : cell;
    }

    private static String quoted(String cell) {
        boolean plain = cell.equals(cell.strip()) && cell.chars().noneMatch(c -> ",;\t\"\r\n".indexOf(c) >= 0);
        return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
    }
}
