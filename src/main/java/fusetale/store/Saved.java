package fusetale.store;

import java.nio.file.Path;
import java.time.Instant;

/** What became of a repair that was to be kept. */
public sealed interface Saved {
    /**
     * It is in its file.
     *
     * @param file the file
     * @param time when
     */
    record There(Path file, Instant time) implements Saved {}

    /**
     * It is in another file from now on, since the one it had must not be written over.
     *
     * @param file where it is
     * @param time when
     * @param left the file that stays as it is
     * @param why in plain words
     */
    record Elsewhere(Path file, Instant time, Path left, String why) implements Saved {}

    /**
     * It could not be kept; it is tried again with the next change.
     *
     * @param why what to change
     */
    record Failed(String why) implements Saved {}
}
