package fusetale.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.concurrent.locks.LockSupport;
import org.jspecify.annotations.Nullable;

/**
 * The right to look at a file and replace it with nobody doing the same meanwhile: neither another window nor another process.
 * Held through a lock on a small file beside it, which stays; the system lets go of it when a process dies.
 */
final class Guarded implements AutoCloseable {
    private static final Duration PATIENCE = Duration.ofSeconds(10);
    private static final Duration BETWEEN = Duration.ofMillis(5);

    private final Path file;
    private final FileChannel channel;

    private Guarded(Path file, FileChannel channel) {
        this.file = file;
        this.channel = channel;
    }

    /** Waits its turn. */
    static Guarded over(Path file) throws UnwritableFile {
        Path beside = file.resolveSibling("." + file.getFileName() + ".lock");
        try {
            FileChannel channel = FileChannel.open(beside, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            if (locked(channel)) {
                return new Guarded(file, channel);
            }
            channel.close();
        } catch (IOException e) {
            throw new UnwritableFile("cannot write '" + file + "': " + e.getMessage(), e);
        }
        throw new UnwritableFile("cannot write '" + file + "': another window has been writing it for "
                + PATIENCE.toSeconds() + " seconds; close that one");
    }

    private static boolean locked(FileChannel channel) throws IOException {
        long end = System.nanoTime() + PATIENCE.toNanos();
        while (System.nanoTime() < end) {
            if (tryLock(channel) != null) {
                return true;
            }
            LockSupport.parkNanos(BETWEEN.toNanos());
        }
        return false;
    }

    private static @Nullable FileLock tryLock(FileChannel channel) throws IOException {
        try {
            return channel.tryLock();
        } catch (OverlappingFileLockException e) {
            return null; // another window of this very process has it
        }
    }

    Path file() {
        return file;
    }

    @Override
    public void close() throws UnwritableFile {
        try {
            channel.close();
        } catch (IOException e) {
            throw new UnwritableFile("cannot write '" + file + "': " + e.getMessage(), e);
        }
    }
}
