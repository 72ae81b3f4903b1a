package fusetale.report;

/** How text is made to stand out: on a terminal by weight, elsewhere not at all. Never the only sign of anything. */
public enum Emphasis {
    /** Plain text. */
    NONE("", ""),
    /** Bold, by the control sequence of ECMA-48. */
    TERMINAL("\u001B[1m", "\u001B[0m");

    private final String before;
    private final String after;

    Emphasis(String before, String after) {
        this.before = before;
        this.after = after;
    }

    /** The text, standing out. */
    public String strong(String text) {
        return before + text + after;
    }
}
