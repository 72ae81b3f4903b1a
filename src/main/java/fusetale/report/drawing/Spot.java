package fusetale.report.drawing;

/**
 * A point of the sheet [px].
 *
 * @param x from the left
 * @param y from the top
 */
public record Spot(double x, double y) {
    Spot moved(double byX, double byY) {
        return new Spot(x + byX, y + byY);
    }
}
