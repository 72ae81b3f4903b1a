package fusetale.desk.watch;

import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitFile;
import fusetale.circuit.CircuitReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * Looks now and then whether a circuit file, or a block it includes, is another than the one read last, and reads it anew when
 * it has stood still between two looks. Looking rather than being called by the system works alike on every system and disk, and
 * where an editor puts a new file in the old one's place. The last good circuit stands until there is a new good one.
 */
public final class CircuitWatch implements AutoCloseable {
    /** Time between two looks. */
    public static final Duration BETWEEN = Duration.ofMillis(400);

    private final Path file;
    private final CircuitReader reader;
    private final Consumer<Watched> told;
    private @Nullable ScheduledFuture<?> looking;
    private final ScheduledExecutorService later = Executors.newSingleThreadScheduledExecutor(work -> {
        Thread thread = new Thread(work, "watches the circuit file");
        thread.setDaemon(true);
        return thread;
    });

    private Map<Path, Mark> read = Map.of();
    private Map<Path, Mark> seen = Map.of();
    private @Nullable Circuit board;

    /** What tells one state of a file from another; absent files have none. */
    private record Mark(long bytes, long modified, String key) {
        static final Mark ABSENT = new Mark(-1, 0, "");

        static Mark of(Path file) {
            try {
                BasicFileAttributes of = Files.readAttributes(file, BasicFileAttributes.class);
                return new Mark(
                        of.size(), of.lastModifiedTime().to(TimeUnit.NANOSECONDS), String.valueOf(of.fileKey()));
            } catch (IOException e) {
                return ABSENT;
            }
        }
    }

    private CircuitWatch(Path file, CircuitReader reader, Consumer<Watched> told) {
        this.file = file;
        this.reader = reader;
        this.told = told;
    }

    /**
     * Reads a file, tells what it gave before this returns, and watches it from then on.
     *
     * @param between time between two looks
     * @param told hears of each reading, later ones on a thread of its own
     */
    public static CircuitWatch over(Path file, CircuitReader reader, Duration between, Consumer<Watched> told) {
        CircuitWatch watch = new CircuitWatch(file, reader, told);
        watch.begin();
        ScheduledFuture<?> looking = watch.later.scheduleWithFixedDelay(
                watch::look, between.toMillis(), between.toMillis(), TimeUnit.MILLISECONDS);
        watch.looking = looking;
        return watch;
    }

    /**
     * Watches a file that somebody else has read a moment ago: it is read anew on the watch's own thread at the first look, and told
     * as every later reading.
     */
    public static CircuitWatch later(Path file, CircuitReader reader, Duration between, Consumer<Watched> told) {
        CircuitWatch watch = new CircuitWatch(file, reader, told);
        ScheduledFuture<?> looking = watch.later.scheduleWithFixedDelay(
                watch::lookAtFirst, between.toMillis(), between.toMillis(), TimeUnit.MILLISECONDS);
        watch.looking = looking;
        return watch;
    }

    private synchronized void lookAtFirst() {
        if (read.isEmpty()) {
            begin();
        } else {
            look();
        }
    }

    private synchronized void begin() {
        read = marks(List.of(file));
        readAnew();
    }

    private synchronized void look() {
        Map<Path, Mark> now = marks(List.copyOf(read.keySet()));
        boolean still = now.equals(seen);
        seen = now;
        if (still && !now.equals(read)) {
            readAnew();
        }
    }

    private synchronized void readAnew() {
        // marks first: what changes while it is read is noticed by the next look
        Map<Path, Mark> before = marks(List.copyOf(read.keySet()));
        CircuitFile found = reader.read(file);
        Map<Path, Mark> marks = marks(found.files());
        marks.replaceAll((path, mark) -> before.getOrDefault(path, mark));
        read = marks;
        seen = marks;
        Circuit circuit = found.circuit();
        if (circuit != null) {
            board = circuit;
        }
        told.accept(new Watched(file, board, circuit != null, found.problems()));
    }

    private static Map<Path, Mark> marks(List<Path> files) {
        Map<Path, Mark> marks = new LinkedHashMap<>();
        files.forEach(f -> marks.put(f, Mark.of(f)));
        return marks;
    }

    /** Stops watching. */
    @Override
    public void close() {
        ScheduledFuture<?> looks = looking;
        if (looks != null) {
            looks.cancel(false);
        }
        later.shutdownNow();
    }
}
