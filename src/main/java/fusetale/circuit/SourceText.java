package fusetale.circuit;

import fusetale.quantity.Spelling;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** Takes a file from disk as text, or says why it cannot be one of ours. */
final class SourceText {
    /** No circuit comes near this size; a larger file was named by mistake. */
    static final int MOST_BYTES = 4 << 20;

    /** The YAML parser takes time with the square of a line's length. */
    private static final int LONGEST_LINE = 20_000;

    private SourceText() {}

    /** The text, or null where a problem was reported. */
    static @Nullable String read(Path path, String name, Findings findings) {
        Place whole = Place.of(name, 0);
        try {
            if (Files.isDirectory(path)) {
                findings.error(whole, "", "this is a folder, not a file");
                return null;
            }
            long size = Files.size(path);
            if (size > MOST_BYTES) {
                findings.error(whole, "", tooLarge(size));
                return null;
            }
            // devices and pipes have no size, and some no end
            try (InputStream in = Files.newInputStream(path)) {
                byte[] bytes = in.readNBytes(MOST_BYTES + 1);
                if (bytes.length > MOST_BYTES) {
                    findings.error(whole, "", "this does not end within 4 MiB; none of our files is larger");
                    return null;
                }
                return decode(bytes, name, findings);
            }
        } catch (NoSuchFileException e) {
            findings.error(whole, "", "there is no such file", "", neighbour(path));
        } catch (AccessDeniedException e) {
            findings.error(whole, "", "this file may not be read: its permissions forbid it");
        } catch (IOException e) {
            findings.error(whole, "", "this file cannot be read: " + e.getMessage());
        }
        return null;
    }

    private static String tooLarge(long bytes) {
        return "the file is " + Math.round(bytes / 1048576.0) + " MiB large; none of ours is larger than 4 MiB";
    }

    /** A file in the same folder whose name is spelt nearly so. */
    static String neighbour(Path path) {
        Path folder = path.toAbsolutePath().getParent();
        Path wanted = path.getFileName();
        if (folder == null || wanted == null || !Files.isDirectory(folder)) {
            return "";
        }
        try (var files = Files.list(folder)) {
            return Spelling.nearestIfAny(
                    wanted.toString(),
                    files.map(Path::getFileName).map(String::valueOf).sorted().toList());
        } catch (IOException e) {
            return "";
        }
    }

    /** The bytes as UTF-8 text, or null where a problem was reported. */
    static @Nullable String decode(byte[] bytes, String name, Findings findings) {
        if (bytes.length > MOST_BYTES) {
            findings.error(Place.of(name, 0), "", tooLarge(bytes.length));
            return null;
        }
        int line = 1;
        int length = 0;
        for (byte b : bytes) {
            length = b == '\n' ? 0 : length + 1;
            if (length > LONGEST_LINE) {
                findings.error(Place.of(name, line), "", "this line is longer than 20 000 characters; break it up");
                return null;
            }
            if (b == 0) {
                findings.error(
                        Place.of(name, line),
                        "",
                        "this is not a text file (it holds zero bytes)",
                        "a text file saved as UTF-8",
                        "");
                return null;
            }
            line += b == '\n' ? 1 : 0;
        }
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        try {
            String text = decoder.decode(in).toString();
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (CharacterCodingException e) {
            int bad = 1;
            for (int i = 0; i < in.position(); i++) {
                bad += bytes[i] == '\n' ? 1 : 0;
            }
            findings.error(
                    Place.of(name, bad), "", "a character on this line is not UTF-8", "a text file saved as UTF-8", "");
            return null;
        }
    }
}
