package fusetale.report;

import java.util.ArrayList;
import java.util.List;

/** Plain text broken into lines. */
final class Paragraph {
    private Paragraph() {}

    /** Signs of a text as a terminal counts them. */
    static int length(String text) {
        return text.codePointCount(0, text.length());
    }

    /** Breaks at blanks; a word longer than a line is cut. At least one line. */
    static List<String> lines(String text, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String written : text.split(" ", -1)) {
            String word = written;
            if (!line.isEmpty() && length(line.toString()) + 1 + length(word) > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            while (length(word) > width) {
                int cut = word.offsetByCodePoints(0, width);
                lines.add(word.substring(0, cut));
                word = word.substring(cut);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    /** As much as fits a line, with an ellipsis where it is cut. */
    static String cut(String text, int width) {
        return length(text) <= width
                ? text
                : text.substring(0, text.offsetByCodePoints(0, width - 1)).stripTrailing() + "…";
    }

    /** Breaks like {@link #lines} with something before the first line and as many blanks before the others. */
    static List<String> hanging(String before, String text, int width) {
        List<String> lines = new ArrayList<>();
        String start = before;
        for (String line : lines(text, width - length(before))) {
            lines.add(start + line);
            start = " ".repeat(length(before));
        }
        return lines;
    }
}
