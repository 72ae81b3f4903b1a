package fusetale.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * Keeps one repair in its file: some time after the last change, and at once when asked. What is on the disk is always whole. A
 * file that another window, or a person, changed meanwhile, and one that could not be read whole, is never written over: the
 * repair then goes on in a file beside it, and that is told. May be used by several threads.
 */
public final class Autosave implements AutoCloseable {
    /** How long nothing must have changed before it is written. */
    public static final Duration PAUSE = Duration.ofSeconds(2);

    private final Path versions;
    private final Duration pause;
    private final Clock clock;
    private final Consumer<Saved> told;
    private final ScheduledExecutorService later = Executors.newSingleThreadScheduledExecutor(work -> {
        Thread thread = new Thread(work, "keeps the repair");
        thread.setDaemon(true);
        return thread;
    });

    private Path file;
    private byte @Nullable [] known;
    private String mayNotReplace;
    private @Nullable Repair newest;
    private @Nullable Repair written;
    private @Nullable ScheduledFuture<?> waiting;

    private Autosave(Keeping with, Path file, byte @Nullable [] known, String mayNotReplace) {
        this.versions = with.versions();
        this.pause = with.pause();
        this.clock = with.clock();
        this.told = with.told();
        this.file = file;
        this.known = known;
        this.mayNotReplace = mayNotReplace;
    }

    /**
     * How to keep.
     *
     * @param versions where earlier versions go
     * @param pause how long nothing must have changed before it is written
     * @param clock tells when
     * @param told hears what became of each writing, on a thread of its own or on the one that asked for it
     */
    public record Keeping(Path versions, Duration pause, Clock clock, Consumer<Saved> told) {
        /** The usual way. */
        public Keeping(Store store, Consumer<Saved> told) {
            this(store.versions(), PAUSE, Clock.systemUTC(), told);
        }

        /** For a repair that has no file yet; the file is made with the first change. */
        public Autosave fresh(Path file) {
            return new Autosave(this, file.toAbsolutePath(), null, "");
        }

        /**
         * For a repair as it was just read.
         *
         * @param file its file
         * @param read what was read there
         */
        public Autosave opened(Path file, Kept<Repair> read) {
            Path absolute = file.toAbsolutePath();
            if (!read.whole()) {
                return new Autosave(this, absolute, null, "it could not be read whole");
            }
            byte[] same = read.value().text().getBytes(StandardCharsets.UTF_8);
            try {
                byte[] there = Files.readAllBytes(absolute);
                // written by hand in another form, it still says the same
                boolean alike = Repair.read(absolute)
                        .filter(r -> r.value().equals(read.value()))
                        .isPresent();
                return new Autosave(this, absolute, alike ? there : same, "");
            } catch (IOException e) {
                return new Autosave(this, absolute, same, "");
            }
        }
    }

    /** Tells that the repair changed; it is written when it stays so for a while. */
    public synchronized void changed(Repair repair) {
        newest = repair;
        if (waiting != null) {
            waiting.cancel(false);
        }
        waiting = later.schedule(
                () -> {
                    now();
                },
                pause.toMillis(),
                TimeUnit.MILLISECONDS);
    }

    /** The file it is kept in. */
    public synchronized Path file() {
        return file;
    }

    /**
     * Writes what has changed, if anything, before this returns.
     *
     * @return what became of it; nothing where nothing had changed
     */
    public Optional<Saved> now() {
        Optional<Saved> saved = write();
        saved.ifPresent(told);
        return saved;
    }

    private synchronized Optional<Saved> write() {
        Repair repair = newest;
        if (repair == null || repair.equals(written)) {
            return Optional.empty();
        }
        try {
            Saved saved = written(repair.at(clock.instant()));
            written = repair;
            return Optional.of(saved);
        } catch (UnwritableFile e) {
            return Optional.of(new Saved.Failed(String.valueOf(e.getMessage())));
        }
    }

    private Saved written(Repair repair) throws UnwritableFile {
        byte[] content = repair.text().getBytes(StandardCharsets.UTF_8);
        Path folder = file.toAbsolutePath().getParent();
        if (folder != null) {
            Store.folder(folder);
        }
        Path left = file;
        String why = mayNotReplace;
        try (Guarded guarded = Guarded.over(file)) {
            why = why.isEmpty() ? strange(guarded.file()) : why;
            if (why.isEmpty()) {
                replace(guarded.file(), content);
                return new Saved.There(file, repair.updated());
            }
        }
        file = beside(left, content);
        known = content;
        mayNotReplace = "";
        return new Saved.Elsewhere(file, repair.updated(), left, why);
    }

    /** Writes a new file beside one; gives its name. */
    private static Path beside(Path left, byte[] content) throws UnwritableFile {
        while (true) {
            Path other = FreeName.beside(left);
            try (Guarded guarded = Guarded.over(other)) {
                if (!Files.exists(guarded.file())) {
                    AtomicFile.write(guarded.file(), content);
                    return other;
                }
            }
        }
    }

    private void replace(Path target, byte[] content) throws UnwritableFile {
        byte[] before = known;
        if (before != null && Files.exists(target)) {
            Versions.of(versions, target).keep(before);
        }
        AtomicFile.write(target, content);
        known = content;
    }

    /** Why the file is not the one that this wrote or read last; empty where it is. */
    private String strange(Path target) throws UnwritableFile {
        if (!Files.exists(target)) {
            return "";
        }
        try {
            return Arrays.equals(Files.readAllBytes(target), known)
                    ? ""
                    : "another window or program has changed it meanwhile";
        } catch (IOException e) {
            throw new UnwritableFile("cannot read '" + target + "' before replacing it: " + e.getMessage(), e);
        }
    }

    /** Writes what has changed and ends. */
    @Override
    public void close() {
        later.shutdown();
        now();
    }
}
