package fusetale.circuit;

/** A text that does not say what its key asks for. */
final class Unfit extends Exception {
    private static final long serialVersionUID = 1L;
    private final String nearest;
    private final boolean whole;

    /** With a clause that follows the text: {@code is not a whole number}. */
    Unfit(String message) {
        this(message, "");
    }

    /** As {@link #Unfit(String)}, with the right spelling that comes closest. */
    Unfit(String message, String nearest) {
        this(message, nearest, false);
    }

    private Unfit(String message, String nearest, boolean whole) {
        super(message);
        this.nearest = nearest;
        this.whole = whole;
    }

    /** With a clause that names the text itself. */
    static Unfit saying(String clause) {
        return new Unfit(clause, "", true);
    }

    /** The whole clause. */
    String clause(Located.Text text) {
        return whole ? String.valueOf(getMessage()) : text.what() + " " + getMessage();
    }

    String nearest() {
        return nearest;
    }
}
