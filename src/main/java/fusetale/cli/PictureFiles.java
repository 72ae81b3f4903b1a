package fusetale.cli;

import fusetale.explore.Words;
import fusetale.report.Picture;
import fusetale.report.PictureFile;
import fusetale.store.AtomicFile;
import fusetale.store.UnwritableFile;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** Pictures as commands write them. */
final class PictureFiles {
    private static final Words WORDS = Words.of(PictureFiles.class);

    private PictureFiles() {}

    /**
     * Looks at a file's ending before any work is done.
     *
     * @throws Refused where no picture can be written so
     */
    static void check(@Nullable String file) throws Refused {
        if (file != null && PictureFile.of(CircuitFiles.path(file)).isEmpty()) {
            throw new Refused(ExitCodes.UNUSABLE, WORDS.say("picture.ending", file));
        }
    }

    /**
     * Writes a picture and says so.
     *
     * @throws Refused where the file cannot be written
     */
    static void write(String file, Picture drawn, Console console) throws Refused {
        Path path = CircuitFiles.path(file);
        try {
            AtomicFile.write(path, PictureFile.of(path).orElseThrow().bytes(drawn));
            console.err().print(WORDS.say("picture.written", path) + "\n");
        } catch (UnwritableFile e) {
            throw new Refused(ExitCodes.UNUSABLE, String.valueOf(e.getMessage()));
        }
    }
}
