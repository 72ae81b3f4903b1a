package fusetale.quantity;

/** A text that is no quantity of the kind asked for; the message tells what to write instead. */
public final class NotationException extends Exception {
    private static final long serialVersionUID = 1;

    private final Kind kind;
    private final String found;

    /** What is the matter. */
    public enum Kind {
        /** Nothing is written. */
        EMPTY,
        /** No number can be read. */
        NOT_A_NUMBER,
        /** A number that can be read in two ways. */
        AMBIGUOUS,
        /** A number without the unit it needs. */
        NO_UNIT,
        /** A unit, but of another kind. */
        WRONG_UNIT,
        /** What follows the number is no unit. */
        UNKNOWN_UNIT,
        /** Beyond what can be computed with, or ends in the wrong order. */
        OUT_OF_BOUNDS
    }

    NotationException(Kind kind, String found, String message) {
        super(message);
        this.kind = kind;
        this.found = found;
    }

    /** What is the matter. */
    public Kind kind() {
        return kind;
    }

    /** The text as it was written. */
    public String found() {
        return found;
    }
}
