package fusetale.report;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.font.FontRenderContext;
import java.util.ArrayList;
import java.util.List;

/**
 * Writes text on a picture. Widths are measured without hinting, so that a PNG and an SVG break their lines in the same
 * places.
 */
public final class Pen {
    private static final FontRenderContext MEASURE = new FontRenderContext(null, true, true);

    private final Graphics2D g;

    public Pen(Graphics2D g) {
        this.g = g;
    }

    /** Width of a text [px]. */
    public static double width(String text, Font font) {
        return font.getStringBounds(text, MEASURE).getWidth();
    }

    /** Writes from {@code x} to the right, {@code y} being the base line; gives the x behind the text. */
    public double write(String text, Font font, Color color, double x, double y) {
        g.setFont(font);
        g.setColor(color);
        g.drawString(text, (float) x, (float) y);
        return x + width(text, font);
    }

    /** Writes so that the text ends at {@code right}. */
    public void writeEndingAt(String text, Font font, Color color, double right, double y) {
        write(text, font, color, right - width(text, font), y);
    }

    /** As much of a text as fits a width, with an ellipsis where it is cut. */
    public static String fitted(String text, Font font, double width) {
        if (width(text, font) <= width) {
            return text;
        }
        int length = text.length();
        while (length > 0 && width(text.substring(0, length).stripTrailing() + "…", font) > width) {
            length--;
        }
        return text.substring(0, length).stripTrailing() + "…";
    }

    /** Breaks a text at its blanks into lines that fit a width. */
    public static List<String> lines(String text, Font font, double width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && width(longer, font) > width) {
                lines.add(line.toString());
                line.setLength(0);
                line.append(word);
            } else {
                line.setLength(0);
                line.append(longer);
            }
        }
        lines.add(line.toString());
        return lines;
    }
}
