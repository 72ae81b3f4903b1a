package fusetale.desk.start;

import fusetale.explore.Words;
import fusetale.store.AtomicFile;
import fusetale.store.Store;
import fusetale.store.UnwritableFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/** The boards that come with the program. They travel in the jar and are copied where they can be looked at and changed. */
public enum BuiltInBoard {
    /** The smallest useful supply. */
    FIRST_LIGHT("first-light"),
    /** A table game. */
    NIGHT_FERRY("night-ferry"),
    /** A lamp board. */
    FOG_BELL("fog-bell");

    private static final List<String> BLOCKS =
            List.of("blocks/coil-driver.yaml", "blocks/dual-coil-driver.yaml", "blocks/lamp-driver.yaml");
    private static final Words WORDS = Words.of(BuiltInBoard.class);

    private final String key;

    BuiltInBoard(String key) {
        this.key = key;
    }

    /** What it is called, as in its file. */
    public String title() {
        return WORDS.say(key);
    }

    /** What it is good for, in one sentence. */
    public String says() {
        return WORDS.say(key + ".says");
    }

    /**
     * Its file, copied with the blocks it may include where it is not there yet. A file that somebody has changed stays as it is;
     * one that was only copied by an earlier program is replaced.
     *
     * @return the file in the store
     * @throws UnwritableFile where it cannot be copied
     */
    public Path file(Store store) throws UnwritableFile {
        for (String block : BLOCKS) {
            copied(block, store);
        }
        return copied(key + ".yaml", store);
    }

    /** What the program ships of a file. */
    private static byte[] shipped(String name) {
        try (InputStream in = BuiltInBoard.class.getResourceAsStream("circuits/" + name)) {
            if (in == null) {
                throw new IllegalStateException("the jar lacks the circuit " + name);
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Path copied(String name, Store store) throws UnwritableFile {
        Path target = store.circuits().resolve(name);
        // what was copied, beside what somebody may have made of it
        Path asCopied = store.circuits().resolve(".as-shipped").resolve(name);
        byte[] shipped = shipped(name);
        if (!Files.exists(target) || (same(target, asCopied) && !same(target, shipped))) {
            Store.folder(Objects.requireNonNull(target.getParent()));
            Store.folder(Objects.requireNonNull(asCopied.getParent()));
            AtomicFile.write(target, shipped);
            AtomicFile.write(asCopied, shipped);
        }
        return target;
    }

    private static boolean same(Path one, Path other) {
        try {
            return Files.exists(other) && Files.mismatch(one, other) < 0;
        } catch (IOException e) {
            return false;
        }
    }

    private static boolean same(Path file, byte[] content) {
        try {
            return Arrays.equals(Files.readAllBytes(file), content);
        } catch (IOException e) {
            return false;
        }
    }
}
