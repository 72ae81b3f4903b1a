package fusetale.desk.export;

import java.io.ByteArrayInputStream;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import javafx.scene.image.Image;
import javafx.scene.input.ClipboardContent;
import org.jspecify.annotations.Nullable;

/**
 * What Ctrl+C takes along of what has the keyboard: words, a picture, a table. Each program it is put into takes the form that it
 * knows.
 *
 * @param text in words; may be empty
 * @param cells rows of a table, heads first; may be empty
 * @param png makes a picture as PNG; null for none
 */
public record Copied(
        String text, List<List<String>> cells, @Nullable Supplier<byte[]> png) {
    /** Copies the rows. */
    public Copied {
        cells = cells.stream().map(List::copyOf).toList();
    }

    /** Words alone. */
    public static Copied text(String text) {
        return new Copied(text, List.of(), null);
    }

    /** The words, then the table, its cells parted by tabs as spreadsheets take them. */
    public String plain() {
        String table = cells.stream()
                .map(row -> row.stream().map(Copied::cell).collect(Collectors.joining("\t")))
                .collect(Collectors.joining("\n"));
        return text.isEmpty() || table.isEmpty() ? text + table : text + "\n" + table;
    }

    /** The same as HTML; empty where there is no table. */
    public String html() {
        if (cells.isEmpty()) {
            return "";
        }
        StringBuilder html = new StringBuilder();
        if (!text.isEmpty()) {
            html.append("<p>").append(escaped(text)).append("</p>");
        }
        html.append("<table>");
        for (List<String> row : cells) {
            String tag = row == cells.get(0) ? "th" : "td";
            html.append("<tr>");
            row.forEach(c -> html.append('<')
                    .append(tag)
                    .append('>')
                    .append(escaped(c))
                    .append("</")
                    .append(tag)
                    .append('>'));
            html.append("</tr>");
        }
        return html.append("</table>").toString();
    }

    /** For the clipboard; on the window's own thread. */
    public ClipboardContent content() {
        ClipboardContent content = new ClipboardContent();
        content.putString(plain());
        String html = html();
        if (!html.isEmpty()) {
            content.putHtml(html);
        }
        Supplier<byte[]> picture = png;
        if (picture != null) {
            content.putImage(new Image(new ByteArrayInputStream(picture.get())));
        }
        return content;
    }

    private static String cell(String text) {
        return text.replaceAll("[\t\r\n]+", " ");
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
