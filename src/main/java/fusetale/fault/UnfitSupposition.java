package fusetale.fault;

/** A supposition that does not fit its circuit; the message tells what would. */
public final class UnfitSupposition extends Exception {
    private static final long serialVersionUID = 1;

    /** With a message for the person who typed it. */
    public UnfitSupposition(String message) {
        super(message);
    }
}
