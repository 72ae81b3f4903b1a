package fusetale.report;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;

/**
 * The typefaces, Atkinson Hyperlegible Next and Barlow Semi Condensed, both under the SIL Open Font License 1.1 (its text
 * lies beside the files).
 */
public final class Type {
    /** Sentences. */
    public static final Type WORDS = new Type("AtkinsonHyperlegibleNext_400Regular");

    /** Headings. */
    public static final Type HEADING = new Type("AtkinsonHyperlegibleNext_600SemiBold");

    /** Danger. */
    public static final Type SHOUT = new Type("AtkinsonHyperlegibleNext_700Bold");

    /** Tables, tick labels. */
    public static final Type TABLE = new Type("BarlowSemiCondensed_500Medium");

    /** Names in tables. */
    public static final Type TABLE_NAME = new Type("BarlowSemiCondensed_600SemiBold");

    /** Figures that matter. */
    public static final Type TABLE_FIGURE = new Type("BarlowSemiCondensed_700Bold");

    /** Every one. */
    static final List<Type> ALL = List.of(WORDS, HEADING, SHOUT, TABLE, TABLE_NAME, TABLE_FIGURE);

    private final String file;
    private final Font face;

    private Type(String file) {
        this.file = file;
        try (InputStream in = file()) {
            face = Font.createFont(Font.TRUETYPE_FONT, in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (FontFormatException e) {
            throw new IllegalStateException("the jar holds a damaged typeface " + file, e);
        }
    }

    /** The face's own file; the caller closes it. */
    InputStream file() {
        InputStream in = Type.class.getResourceAsStream("fonts/" + file + ".ttf");
        if (in == null) {
            throw new IllegalStateException("the jar lacks the typeface " + file);
        }
        return in;
    }

    /** This face at a size in pixels of the picture. */
    public Font at(double pixels) {
        return face.deriveFont((float) pixels);
    }
}
