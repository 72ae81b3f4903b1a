package fusetale.report.drawing;

/** How wide a line is at 100 %. Caps and joins are round. */
public enum Weight {
    /** No line: the inside is filled. */
    FILLED(0),
    /** A transistor's ring. */
    RING(1.4),
    /** A wire, and the lead of a part. */
    WIRE(1.75),
    /** The body of a symbol. */
    SYMBOL(2.1),
    /** A capacitor's plate. */
    PLATE(2.6),
    /** A transistor's base. */
    BASE(3),
    /** A mark of a fault. */
    MARK(3.2),
    /** The highlighter under the path of a fault. */
    SWIPE(15);

    private final double pixels;

    Weight(double pixels) {
        this.pixels = pixels;
    }

    /** Width [px]. */
    public double pixels() {
        return pixels;
    }
}
