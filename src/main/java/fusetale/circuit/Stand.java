package fusetale.circuit;

/**
 * How a part stands on the drawing.
 *
 * @param square where its middle is
 * @param turn how it is turned from its usual way: two pins side by side, the first on the left; three pins with their
 *     control pin on the left
 * @param mirrored whether left and right are exchanged before it is turned
 * @param spread squares between one winding of a transformer, or one check of a controller, and the next; 0 for the usual
 */
public record Stand(Square square, Turn turn, boolean mirrored, int spread) {
    /** The usual way round. */
    public Stand(Square square) {
        this(square, Turn.NONE, false, 0);
    }

    /** A turn in the plane of the drawing. */
    public enum Turn {
        /** As it is. */
        NONE,
        /** A quarter clockwise: the first pin on top. */
        RIGHT,
        /** Upside down: the first pin on the right. */
        HALF,
        /** A quarter the other way: the first pin at the bottom. */
        LEFT
    }

    /** The same moved by so many columns and rows. */
    Stand moved(Square by) {
        return new Stand(square.moved(by), turn, mirrored, spread);
    }
}
