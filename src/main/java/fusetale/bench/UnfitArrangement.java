package fusetale.bench;

/** An arrangement that does not fit its circuit; the message tells all that is wrong and what would fit. */
public final class UnfitArrangement extends Exception {
    private static final long serialVersionUID = 1;

    /** With a message for the person who asked. */
    public UnfitArrangement(String message) {
        super(message);
    }
}
