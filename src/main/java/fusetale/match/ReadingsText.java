package fusetale.match;

import fusetale.circuit.Problem;
import fusetale.explore.Words;
import fusetale.quantity.Spelling;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A file of readings as text: UTF-8, UTF-16 with its mark, and what spreadsheets on older systems write, Windows' Western
 * code page.
 *
 * @param text null where there is none
 * @param problem why; null where there is a text
 */
record ReadingsText(@Nullable String text, @Nullable Problem problem) {
    private static final Words WORDS = Words.of(ReadingsText.class);

    /** Nobody measures so much. */
    private static final int MOST_BYTES = 1 << 20;

    static ReadingsText of(Path path, String name) {
        if (Files.isDirectory(path)) {
            return none(name, "file.folder", "");
        }
        try (InputStream in = Files.newInputStream(path)) {
            byte[] bytes = in.readNBytes(MOST_BYTES + 1);
            return bytes.length > MOST_BYTES ? none(name, "file.large", "") : of(bytes, name);
        } catch (NoSuchFileException e) {
            return none(name, "file.none", neighbour(path));
        } catch (AccessDeniedException e) {
            return none(name, "file.forbidden", "");
        } catch (IOException e) {
            return new ReadingsText(
                    null,
                    new Problem(
                            Problem.Severity.ERROR,
                            name,
                            0,
                            "",
                            WORDS.say("file.unreadable", String.valueOf(e.getMessage())),
                            "",
                            ""));
        }
    }

    private static ReadingsText of(byte[] bytes, String name) {
        String text = decoded(bytes);
        String body = text.startsWith("\uFEFF") ? text.substring(1) : text;
        return body.indexOf('\0') >= 0 ? none(name, "file.binary", "") : new ReadingsText(body, null);
    }

    private static String decoded(byte[] bytes) {
        if (bytes.length > 1 && Set.of(0xFEFF, 0xFFFE).contains(((bytes[0] & 0xFF) << 8) | (bytes[1] & 0xFF))) {
            return new String(bytes, StandardCharsets.UTF_16);
        }
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            return new String(bytes, Charset.forName("windows-1252"));
        }
    }

    private static ReadingsText none(String name, String key, String nearest) {
        return new ReadingsText(null, new Problem(Problem.Severity.ERROR, name, 0, "", WORDS.say(key), "", nearest));
    }

    /** A file in the same folder whose name is spelt nearly so. */
    private static String neighbour(Path path) {
        Path folder = path.toAbsolutePath().getParent();
        Path wanted = path.getFileName();
        if (folder == null || wanted == null || !Files.isDirectory(folder)) {
            return "";
        }
        try (var files = Files.list(folder)) {
            List<String> names =
                    files.map(Path::getFileName).map(String::valueOf).sorted().toList();
            return Spelling.nearestIfAny(wanted.toString(), names);
        } catch (IOException e) {
            return "";
        }
    }
}
