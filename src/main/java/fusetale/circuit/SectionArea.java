package fusetale.circuit;

/**
 * A part of the drawing under a heading of its own.
 *
 * @param heading what stands in it: {@code logic supply}
 * @param from its top left square
 * @param to its bottom right square
 */
public record SectionArea(String heading, Square from, Square to) {
    /** Whether a square lies in it. */
    public boolean holds(Square square) {
        return square.column() >= from.column()
                && square.column() <= to.column()
                && square.row() >= from.row()
                && square.row() <= to.row();
    }

    /** Whether two share a square. */
    boolean meets(SectionArea other) {
        return from.column() <= other.to.column()
                && other.from.column() <= to.column()
                && from.row() <= other.to.row()
                && other.from.row() <= to.row();
    }

    /** The same moved by so many columns and rows. */
    SectionArea moved(Square by) {
        return new SectionArea(heading, from.moved(by), to.moved(by));
    }
}
