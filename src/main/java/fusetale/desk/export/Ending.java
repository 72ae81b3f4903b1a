package fusetale.desk.export;

import java.nio.file.Path;
import java.util.Locale;

/** What the name of a file ends in. Not every system's dialog adds it, and a name may have a point in it: "board 2.1". */
public final class Ending {
    private Ending() {}

    /**
     * A file under its whole name: one typed without its ending gets it.
     *
     * @param ending without the point
     */
    public static Path of(Path file, String ending) {
        String name = String.valueOf(file.getFileName());
        return name.toLowerCase(Locale.ROOT).endsWith("." + ending) ? file : file.resolveSibling(name + "." + ending);
    }
}
