package fusetale.cli;

/** What commands exit with. */
final class ExitCodes {
    /** Done. */
    static final int DONE = 0;

    /** Answered no: of a match, nothing in the list explains what was read. */
    static final int NO = 1;

    /** Unusable input: command line, file, supposition, arrangement. */
    static final int UNUSABLE = 2;

    /** No answer was found, though the input is in order. */
    static final int NO_ANSWER = 3;

    private ExitCodes() {}
}
