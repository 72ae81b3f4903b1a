package fusetale.report;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** The typefaces, both under the SIL Open Font License 1.1 (its text lies beside the files). */
enum Type {
    /** Sentences. */
    WORDS("AtkinsonHyperlegibleNext_400Regular"),
    /** Headings. */
    HEADING("AtkinsonHyperlegibleNext_600SemiBold"),
    /** Danger. */
    SHOUT("AtkinsonHyperlegibleNext_700Bold"),
    /** Tables, tick labels. */
    TABLE("BarlowSemiCondensed_500Medium"),
    /** Names in tables. */
    TABLE_NAME("BarlowSemiCondensed_600SemiBold"),
    /** Figures that matter. */
    TABLE_FIGURE("BarlowSemiCondensed_700Bold");

    private final Font face;

    Type(String file) {
        try (InputStream in = Type.class.getResourceAsStream("fonts/" + file + ".ttf")) {
            if (in == null) {
                throw new IllegalStateException("the jar lacks the typeface " + file);
            }
            face = Font.createFont(Font.TRUETYPE_FONT, in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (FontFormatException e) {
            throw new IllegalStateException("the jar holds a damaged typeface " + file, e);
        }
    }

    /** This face at a size in pixels of the picture. */
    Font at(double pixels) {
        return face.deriveFont((float) pixels);
    }
}
