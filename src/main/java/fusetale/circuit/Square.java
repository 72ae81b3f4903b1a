package fusetale.circuit;

/**
 * A place on the drawing's grid.
 *
 * @param column from the left, 0-based
 * @param row from the top, 0-based
 */
public record Square(int column, int row) {}
