package fusetale.report.drawing;

/** What a stroke or a text is drawn with; each toolkit has its colours for them, light and dark. */
public enum Tone {
    /** A healthy machine, and text. */
    INK,
    /** Text that may stand back. */
    SOFT_INK,
    /** Frames. */
    RULE,
    /** Frames behind everything. */
    FAINT_RULE,
    /** The ground. */
    PAPER,
    /** What is supposed, and figures of it. */
    MARKER_LINE,
    /** The highlighter, behind ink. */
    MARKER_FILL,
    /** Ground of a part that is dead. */
    SHADE,
    /** A box of slanting stripes: above its rating. */
    HATCH
}
