package fusetale.store;

import java.util.List;

/**
 * What was found in one of the program's own files.
 *
 * @param value as much as could be read, the rest being what it is without a file
 * @param lost what could not be read, a sentence each that names file and line; empty where all is well
 * @param <T> what the file holds
 */
public record Kept<T>(T value, List<String> lost) {
    /** Copies the list. */
    public Kept {
        lost = List.copyOf(lost);
    }

    /** Whether everything in the file was understood. */
    public boolean whole() {
        return lost.isEmpty();
    }
}
