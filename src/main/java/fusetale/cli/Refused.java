package fusetale.cli;

/** A command that cannot be done; the message tells the user what to change. */
final class Refused extends Exception {
    private static final long serialVersionUID = 1;

    private final int exitCode;

    Refused(int exitCode, String message) {
        super(message);
        this.exitCode = exitCode;
    }

    /** What the command exits with. */
    int exitCode() {
        return exitCode;
    }
}
