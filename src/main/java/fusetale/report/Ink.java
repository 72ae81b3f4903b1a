package fusetale.report;

import java.awt.Color;

/** The colours of the product on light paper. Each difference is also one of shape or weight, never of colour alone. */
public final class Ink {
    /** Lines of a healthy machine, and text. */
    public static final Color INK = new Color(0x22303C);

    /** Text that may stand back. */
    public static final Color SOFT_INK = new Color(0x4C5761);

    /** Lines of what is supposed. */
    public static final Color MARKER_LINE = new Color(0x9A3B06);

    /** Highlighter behind ink; too pale against paper to be a sign by itself. */
    public static final Color MARKER_FILL = new Color(0xFFD45C);

    /** Axis lines and frames. */
    public static final Color RULE = new Color(0x7D7663);

    /** Lines behind everything. */
    public static final Color FAINT_RULE = new Color(0xDAD3C2);

    /** Ground of a page. */
    public static final Color DESK = new Color(0xEBE4D6);

    /** Ground of a drawing or chart. */
    public static final Color PAPER = new Color(0xFCF9F0);

    /** What healthy machines may show, on paper. */
    public static final Color HEALTHY_RANGE = new Color(0xD9D0BC);

    /** Ground of a danger line and dark stripe of its hatch. */
    public static final Color DANGER_GROUND = new Color(0x1D1D1B);

    /** Text on {@link #DANGER_GROUND}. */
    public static final Color DANGER_TEXT = new Color(0xFFF7DE);

    private Ink() {}
}
