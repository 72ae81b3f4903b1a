package fusetale.desk.kit;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import javafx.scene.text.Font;

/**
 * The typefaces, Atkinson Hyperlegible Next for words and Barlow Semi Condensed for tables and drawings, both under the SIL
 * Open Font License 1.1; its text lies beside the files, which the printed pictures use too.
 */
public enum Faces {
    /** Sentences. */
    WORDS("Atkinson Hyperlegible Next"),
    /** Headings, readings. */
    HEADING("Atkinson Hyperlegible Next SemiBold"),
    /** Danger. */
    SHOUT("Atkinson Hyperlegible Next Bold"),
    /** Tables, labels of drawings and charts. */
    TABLE("Barlow Semi Condensed Medium"),
    /** Names in tables and drawings. */
    TABLE_NAME("Barlow Semi Condensed SemiBold"),
    /** Figures that matter. */
    TABLE_FIGURE("Barlow Semi Condensed Bold");

    private static final List<String> FILES = List.of(
            "AtkinsonHyperlegibleNext_400Regular",
            "AtkinsonHyperlegibleNext_600SemiBold",
            "AtkinsonHyperlegibleNext_700Bold",
            "BarlowSemiCondensed_500Medium",
            "BarlowSemiCondensed_600SemiBold",
            "BarlowSemiCondensed_700Bold");

    private final String face;

    Faces(String face) {
        this.face = face;
    }

    /** This face at a size [px]. */
    public Font at(double pixels) {
        return Font.font(face, pixels);
    }

    /**
     * Makes the typefaces known to JavaFX; once before the first window.
     *
     * @throws IllegalStateException where the jar lacks one
     */
    public static void load() {
        for (String file : FILES) {
            try (InputStream in = Faces.class.getResourceAsStream("/fusetale/report/fonts/" + file + ".ttf")) {
                if (in == null || Font.loadFont(in, 12) == null) {
                    throw new IllegalStateException("the jar lacks the typeface " + file);
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }
}
