package fusetale.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;

/**
 * Writes whole files: first to a new file beside the target, forced to the disk, then put in the target's place in one
 * step. Whoever reads the target sees all of the old content or all of the new; a failed write leaves the old one and
 * nothing beside it.
 */
public final class AtomicFile {
    private AtomicFile() {}

    /**
     * Writes a text as UTF-8.
     *
     * @param target the file; where it is a link, the file it leads to
     * @throws UnwritableFile where that cannot be done
     */
    public static void write(Path target, String text) throws UnwritableFile {
        write(target, text.getBytes(StandardCharsets.UTF_8));
    }

    /**
     * Writes bytes.
     *
     * @param target the file; where it is a link, the file it leads to
     * @param content not modified
     * @throws UnwritableFile where that cannot be done
     */
    public static void write(Path target, byte[] content) throws UnwritableFile {
        if (Files.isDirectory(target)) {
            throw new UnwritableFile("cannot write '" + target + "': it is a folder; name a file in it");
        }
        try {
            Path real = Files.exists(target) ? target.toRealPath() : target.toAbsolutePath();
            Path folder = real.getParent();
            if (folder == null || !Files.isDirectory(folder)) {
                throw new UnwritableFile("cannot write '" + target + "': there is no folder '"
                        + (folder == null ? real : folder) + "'; make it first");
            }
            Path beside = folder.resolve("." + real.getFileName() + "." + UUID.randomUUID() + ".part");
            try {
                writeForced(beside, content);
                Files.move(beside, real, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            } finally {
                Files.deleteIfExists(beside);
            }
        } catch (AccessDeniedException e) {
            throw new UnwritableFile("cannot write '" + target + "': writing is not permitted there", e);
        } catch (FileSystemException e) {
            // its message would name the file beside; the reason is the system's word: "File name too long"
            String reason = e.getReason() == null ? "the disk refuses it" : e.getReason();
            throw new UnwritableFile("cannot write '" + target + "': " + reason, e);
        } catch (UnwritableFile e) {
            throw e;
        } catch (IOException e) {
            throw new UnwritableFile("cannot write '" + target + "': " + e.getMessage(), e);
        }
    }

    private static void writeForced(Path file, byte[] content) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            ByteBuffer buffer = ByteBuffer.wrap(content);
            while (buffer.hasRemaining()) {
                channel.write(buffer);
            }
            channel.force(true);
        }
    }
}
