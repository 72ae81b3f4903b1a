package fusetale.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Earlier versions of one file, {@value #MOST} at most, numbered as they came.
 *
 * @param folder where they are
 */
public record Versions(Path folder) {
    /** So many are kept. */
    public static final int MOST = 10;

    private static final Pattern NUMBERED = Pattern.compile("\\d{6,}\\.yaml");

    /** Those of a file; files of the same name in two folders have different ones. */
    public static Versions of(Path versions, Path file) {
        Path absolute = file.toAbsolutePath().normalize();
        String id = UUID.nameUUIDFromBytes(absolute.toString().getBytes(StandardCharsets.UTF_8))
                .toString()
                .substring(0, 8);
        String name = String.valueOf(absolute.getFileName()).replaceFirst("\\..*", "");
        return new Versions(versions.resolve(FreeName.plain(name) + "-" + id));
    }

    /**
     * The versions there are, the oldest first.
     *
     * @throws UncheckedIOException where the folder cannot be read
     */
    public List<Path> all() {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(
                            f -> NUMBERED.matcher(f.getFileName().toString()).matches())
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Keeps one more, unless it is the same as the last; the oldest go where there are too many. */
    void keep(byte[] content) throws UnwritableFile {
        Store.folder(folder);
        try {
            List<Path> before = all();
            if (!before.isEmpty() && Arrays.equals(Files.readAllBytes(before.get(before.size() - 1)), content)) {
                return;
            }
            int next = before.isEmpty() ? 1 : number(before.get(before.size() - 1)) + 1;
            AtomicFile.write(folder.resolve(String.format("%06d.yaml", next)), content);
            for (Path old : before.subList(0, Math.max(0, before.size() + 1 - MOST))) {
                Files.deleteIfExists(old);
            }
        } catch (UnwritableFile e) {
            throw e;
        } catch (IOException | UncheckedIOException e) {
            throw new UnwritableFile("cannot keep an earlier version in '" + folder + "': " + e.getMessage());
        }
    }

    private static int number(Path version) {
        return Integer.parseInt(version.getFileName().toString().replaceFirst("\\.yaml$", ""));
    }
}
