package fusetale.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AutosaveTest {
    private static final Instant TIME = Instant.parse("2026-11-25T07:31:00Z");

    @TempDir
    Path folder;

    private final BlockingQueue<Saved> told = new LinkedBlockingQueue<>();

    private Autosave.Keeping after(Duration pause) {
        return new Autosave.Keeping(folder.resolve("versions"), pause, Clock.fixed(TIME, ZoneOffset.UTC), told::add);
    }

    private Autosave fresh() {
        return after(Duration.ofHours(1)).fresh(file());
    }

    private Path file() {
        return folder.resolve("repairs").resolve("a.repair.yaml");
    }

    private static Repair saying(String sentence) {
        return new Repair("a", "", sentence, List.of(), List.of(), Instant.EPOCH);
    }

    private static String sentence(Path file) {
        Kept<Repair> read = Repair.read(file).orElseThrow();
        assertThat(read.lost()).isEmpty();
        return read.value().sentence();
    }

    @Test
    void isWrittenSomeTimeAfterTheLastChange() throws InterruptedException {
        try (Autosave autosave = after(Duration.ofMillis(150)).fresh(file())) {
            autosave.changed(saying("one"));
            autosave.changed(saying("two"));
            assertThat(file()).doesNotExist();

            assertThat(told.poll(20, TimeUnit.SECONDS)).isEqualTo(new Saved.There(file(), TIME));
            assertThat(sentence(file())).isEqualTo("two");
            assertThat(told.poll(400, TimeUnit.MILLISECONDS)).as("once").isNull();
        }
    }

    @Test
    void isWrittenAtOnceWhenAskedAndWhenItEnds() {
        Autosave autosave = fresh();
        autosave.changed(saying("one"));

        assertThat(autosave.now()).contains(new Saved.There(file(), TIME));
        assertThat(autosave.now()).as("nothing has changed since").isEmpty();
        autosave.changed(saying("two"));
        autosave.close();

        assertThat(sentence(file())).isEqualTo("two");
    }

    @Test
    void tenEarlierVersionsAreKept() {
        try (Autosave autosave = fresh()) {
            for (int i = 1; i <= 14; i++) {
                autosave.changed(saying("sentence " + i));
                autosave.now();
            }
        }

        assertThat(Versions.of(folder.resolve("versions"), file()).all())
                .hasSize(10)
                .extracting(AutosaveTest::sentence)
                .startsWith("sentence 4")
                .endsWith("sentence 13");
    }

    @Test
    void twoWindowsDoNotDestroyEachOthersWork() {
        try (Autosave one = fresh()) {
            one.changed(saying("begun"));
            one.now();
            try (Autosave other = after(Duration.ofHours(1))
                    .opened(file(), Repair.read(file()).orElseThrow())) {
                one.changed(saying("by one"));
                other.changed(saying("by the other"));
                one.now();
                Saved saved = other.now().orElseThrow();

                assertThat(saved).isInstanceOf(Saved.Elsewhere.class);
                assertThat(sentence(file())).isEqualTo("by one");
                assertThat(sentence(other.file())).isEqualTo("by the other");

                other.changed(saying("by the other, later"));
                other.now();
                assertThat(sentence(file())).isEqualTo("by one");
                assertThat(sentence(other.file())).isEqualTo("by the other, later");
            }
        }
    }

    @Test
    void aFreshRepairNeverReplacesAFileThatIsThere() throws IOException {
        Files.createDirectories(file().getParent());
        Files.writeString(file(), "somebody's own notes");
        try (Autosave autosave = fresh()) {
            autosave.changed(saying("one"));
            autosave.now();

            assertThat(file()).hasContent("somebody's own notes");
            assertThat(sentence(autosave.file())).isEqualTo("one");
        }
    }

    @Test
    void aDamagedFileStaysAsItIs() throws IOException {
        String damaged = saying("one").text().replace("readings: []", "readings: [");
        Files.createDirectories(file().getParent());
        Files.writeString(file(), damaged);
        Kept<Repair> read = Repair.read(file()).orElseThrow();

        try (Autosave autosave = after(Duration.ofHours(1)).opened(file(), read)) {
            autosave.changed(saying("two"));
            assertThat(autosave.now().orElseThrow()).isInstanceOf(Saved.Elsewhere.class);

            assertThat(file()).hasContent(damaged);
            assertThat(sentence(autosave.file())).isEqualTo("two");
        }
    }

    @Test
    void aFileWrittenByHandIsReplacedWhenItSaysTheSame() throws IOException {
        Files.createDirectories(file().getParent());
        Files.writeString(
                file(), "format: 1\nname: a\ncircuit: ''\nupdated: 1970-01-01T00:00:00Z\nsentence: one\n...\n");
        Kept<Repair> read = Repair.read(file()).orElseThrow();

        try (Autosave autosave = after(Duration.ofHours(1)).opened(file(), read)) {
            autosave.changed(saying("two"));
            autosave.now();
        }

        assertThat(sentence(file())).isEqualTo("two");
    }

    @Test
    void whereItCannotBeWrittenThatIsSaidAndTriedAgain() throws IOException {
        Files.writeString(folder.resolve("repairs"), "a file where the folder belongs");
        try (Autosave autosave = fresh()) {
            autosave.changed(saying("one"));
            assertThat(autosave.now().orElseThrow()).isInstanceOf(Saved.Failed.class);

            Files.delete(folder.resolve("repairs"));
            assertThat(autosave.now()).contains(new Saved.There(file(), TIME));
        }
    }

    /** Writes as fast as it can until it is killed. */
    static final class WritesForEver {
        private WritesForEver() {}

        public static void main(String[] arguments) {
            Path folder = Path.of(arguments[0]);
            Autosave autosave = new Autosave.Keeping(
                            folder.resolve("versions"), Duration.ofHours(1), Clock.systemUTC(), saved -> {})
                    .fresh(folder.resolve("repairs").resolve("a.repair.yaml"));
            String long1 = "a long remark ".repeat(20_000);
            for (int i = 1; i < Integer.MAX_VALUE; i++) {
                autosave.changed(new Repair("a", "", "sentence " + i, List.of(), List.of(long1), Instant.EPOCH));
                autosave.now();
            }
        }
    }

    /** A real process is killed in the midst of writing, several times; the file is whole each time. */
    @Test
    void aKilledProcessLeavesAWholeFile() throws IOException, InterruptedException {
        for (int round = 0; round < 4; round++) {
            Path own = Files.createDirectory(folder.resolve("round-" + round));
            Path repair = own.resolve("repairs").resolve("a.repair.yaml");
            Process process = new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-cp",
                            System.getProperty("java.class.path"),
                            WritesForEver.class.getName(),
                            own.toString())
                    .redirectErrorStream(true)
                    .redirectOutput(own.resolve("said.txt").toFile())
                    .start();
            long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(60);
            while (!Files.exists(repair) && process.isAlive() && System.nanoTime() < end) {
                TimeUnit.MILLISECONDS.sleep(5);
            }
            TimeUnit.MILLISECONDS.sleep(120 + 37L * round);
            process.destroyForcibly().waitFor();

            assertThat(repair).as(Files.readString(own.resolve("said.txt"))).exists();
            assertThat(sentence(repair)).startsWith("sentence ");
            assertThat(Versions.of(own.resolve("versions"), repair).all())
                    .allSatisfy(v -> assertThat(sentence(v)).startsWith("sentence "));

            Kept<Repair> found = Repair.read(repair).orElseThrow();
            try (Autosave next = new Autosave.Keeping(
                            own.resolve("versions"), Duration.ofHours(1), Clock.systemUTC(), saved -> {})
                    .opened(repair, found)) {
                next.changed(saying("after the fall"));
                assertThat(next.now().orElseThrow()).isInstanceOf(Saved.There.class);
            }
        }
    }
}
