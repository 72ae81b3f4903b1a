package fusetale.sentence;

import fusetale.quantity.Spelling;
import java.util.List;
import java.util.Optional;

/** A line that cannot be understood; the message tells what would be. */
public final class SentenceException extends Exception {
    private static final long serialVersionUID = 1;

    private final String found;
    private final transient List<String> allowed;

    /** A line whose fault has been told already, by the part of the program that found it. */
    SentenceException(String found, String message) {
        super(message);
        this.found = found;
        this.allowed = List.of();
    }

    /** A word that is none of those allowed. */
    SentenceException(String found, String what, List<String> allowed) {
        super(what + advice(found, allowed));
        this.found = found;
        this.allowed = List.copyOf(allowed);
    }

    private SentenceException(String found, List<String> near, String message) {
        super(message);
        this.found = found;
        this.allowed = List.copyOf(near);
    }

    /** A message that is complete, and what comes near to what was found. */
    public static SentenceException near(String found, String message, List<String> near) {
        return new SentenceException(found, near, message);
    }

    /** The words that were not understood. */
    public String found() {
        return found;
    }

    /** What could stand there instead; empty where that is no list of words. */
    public List<String> allowed() {
        return allowed;
    }

    /** The allowed word nearest to what was found. */
    public Optional<String> nearest() {
        return Spelling.nearest(found, allowed);
    }

    private static String advice(String found, List<String> allowed) {
        String nearest = Spelling.nearest(found, allowed)
                .map(w -> "; nearest: '" + w + "'")
                .orElse("");
        return nearest + ". Allowed: " + String.join(", ", allowed);
    }
}
