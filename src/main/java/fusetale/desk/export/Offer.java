package fusetale.desk.export;

import java.util.function.Supplier;

/**
 * One file that can be written.
 *
 * @param what what it shows: readings, drawing, bench sheet
 * @param kind what kind of file: {@code PNG 2×}, {@code SVG}
 * @param fileName name to propose
 * @param bytes makes its content; may take a second, runs on a thread of its own
 */
public record Offer(String what, String kind, String fileName, Supplier<byte[]> bytes) {
    /** The ending of its file, without the dot. */
    public String ending() {
        return fileName.substring(fileName.lastIndexOf('.') + 1);
    }
}
