package fusetale.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Objects;

/** Names for files that stand in nobody's way. */
final class FreeName {
    private static final int LONGEST = 80;

    private FreeName() {}

    /** Letters, digits, blanks, dots within and hyphens of a name: what every file system takes. */
    static String plain(String name) {
        String kept = name.strip()
                .replaceAll("[^\\p{L}\\p{N} ._-]", " ")
                .replaceAll("\\s+", " ")
                .replaceAll("^[. ]+|[. ]+$", "");
        String cut = kept.length() > LONGEST ? kept.substring(0, LONGEST).strip() : kept;
        return cut.isEmpty() ? "repair" : cut.toLowerCase(Locale.ROOT).replace(' ', '-');
    }

    /** {@code night-ferry.repair.yaml}, or {@code night-ferry-2.repair.yaml} where that exists. */
    static Path in(Path folder, String stem, String ending) {
        Path file = folder.resolve(stem + ending);
        for (int number = 2; Files.exists(file); number++) {
            file = folder.resolve(stem + "-" + number + ending);
        }
        return file;
    }

    /** The folder a file lies in; a file always lies in one. */
    private static Path folderOf(Path file) {
        return Objects.requireNonNull(file.toAbsolutePath().getParent());
    }

    /** A name beside a file for what cannot go into it: {@code night-ferry-2.repair.yaml}. */
    static Path beside(Path file) {
        String name = file.getFileName().toString();
        int dot = name.indexOf('.', 1);
        String stem = (dot < 0 ? name : name.substring(0, dot)).replaceFirst("-\\d+$", "");
        return in(folderOf(file), stem, dot < 0 ? "" : name.substring(dot));
    }

    /** Gives a file that could not be understood another name, so that nothing is written over it. */
    static void moveAside(Path file) throws UnwritableFile {
        String name = file.getFileName().toString();
        try {
            Files.move(file, in(folderOf(file), name, ".unreadable"));
        } catch (IOException e) {
            throw new UnwritableFile("cannot put the damaged '" + file + "' aside: " + e.getMessage(), e);
        }
    }
}
