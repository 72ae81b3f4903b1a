package fusetale.circuit;

/**
 * A place on the drawing's grid.
 *
 * @param column from the left, 0-based
 * @param row from the top, 0-based
 */
public record Square(int column, int row) {
    /** The place so many columns and rows further. */
    Square moved(Square by) {
        return new Square(column + by.column, row + by.row);
    }
}
