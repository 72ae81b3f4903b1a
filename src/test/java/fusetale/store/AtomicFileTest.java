package fusetale.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AtomicFileTest {
    @TempDir
    Path folder;

    @Test
    void writesTextAsUtf8() throws IOException {
        AtomicFile.write(folder.resolve("a.txt"), "4.7 kΩ");

        // the omega is CE A9 in UTF-8 (Unicode code chart U+03A9)
        assertThat(folder.resolve("a.txt"))
                .hasBinaryContent(new byte[] {'4', '.', '7', ' ', 'k', (byte) 0xCE, (byte) 0xA9});
    }

    @Test
    void replacesWhatWasThere() throws IOException {
        Path file = Files.writeString(folder.resolve("a.txt"), "a longer text than the new one");

        AtomicFile.write(file, "new");

        assertThat(file).hasContent("new");
    }

    @Test
    void leavesNothingBeside() throws IOException {
        AtomicFile.write(folder.resolve("a.txt"), "text");

        assertThat(names()).containsExactly("a.txt");
    }

    @Test
    void aReaderOfTheOldFileSeesTheOldContentToItsEnd() throws IOException {
        Path file = Files.writeString(folder.resolve("a.txt"), "old");
        try (var reader = Files.newBufferedReader(file)) {
            AtomicFile.write(file, "new");

            assertThat(reader.readLine()).isEqualTo("old");
        }
    }

    @Test
    void writesThroughALink() throws IOException {
        Path file = Files.writeString(folder.resolve("a.txt"), "old");
        Path link = Files.createSymbolicLink(folder.resolve("link"), file);

        AtomicFile.write(link, "new");

        assertThat(file).hasContent("new");
        assertThat(link).isSymbolicLink();
    }

    @Test
    void doesNotModifyTheBytesGiven() throws IOException {
        byte[] content = {1, 2, 3};
        byte[] before = Arrays.copyOf(content, content.length);

        AtomicFile.write(folder.resolve("a.bin"), content);

        assertThat(content).isEqualTo(before);
    }

    @Test
    void namesTheFolderThatIsMissing() {
        Path file = folder.resolve("none").resolve("a.txt");

        assertThatExceptionOfType(UnwritableFile.class)
                .isThrownBy(() -> AtomicFile.write(file, "text"))
                .withMessage("cannot write '%s': there is no folder '%s'; make it first", file, folder.resolve("none"));
    }

    @Test
    void refusesToReplaceAFolder() {
        assertThatExceptionOfType(UnwritableFile.class)
                .isThrownBy(() -> AtomicFile.write(folder, "text"))
                .withMessage("cannot write '%s': it is a folder; name a file in it", folder);
    }

    @Test
    void aNameTooLongForTheDiskLeavesNothingBeside() throws IOException {
        // POSIX file systems in common use hold names of 255 bytes
        Path file = folder.resolve("a".repeat(300));

        assertThatExceptionOfType(UnwritableFile.class)
                .isThrownBy(() -> AtomicFile.write(file, "text"))
                .withMessageStartingWith("cannot write '" + file + "': ");
        assertThat(names()).isEmpty();
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).toList();
        }
    }
}
