package fusetale.report.drawing;

/**
 * A rectangle on the sheet [px].
 *
 * @param x left edge
 * @param y upper edge
 * @param width 0 or more
 * @param height 0 or more
 */
public record Box(double x, double y, double width, double height) {
    /** By its edges, in any order. */
    public static Box between(double x1, double y1, double x2, double y2) {
        return new Box(Math.min(x1, x2), Math.min(y1, y2), Math.abs(x2 - x1), Math.abs(y2 - y1));
    }

    /** Right edge. */
    public double right() {
        return x + width;
    }

    /** Lower edge. */
    public double bottom() {
        return y + height;
    }

    /** Middle between left and right. */
    public double middleX() {
        return x + width / 2;
    }

    /** Middle between top and bottom. */
    public double middleY() {
        return y + height / 2;
    }

    /** Larger by so much on every side; smaller where it is negative. */
    public Box grown(double by) {
        return new Box(x - by, y - by, Math.max(0, width + 2 * by), Math.max(0, height + 2 * by));
    }

    /** Whether two share more than an edge. */
    public boolean meets(Box other) {
        return x < other.right() && other.x < right() && y < other.bottom() && other.y < bottom();
    }

    /** Whether another lies in it, edges included. */
    public boolean holds(Box other) {
        return x <= other.x && y <= other.y && right() >= other.right() && bottom() >= other.bottom();
    }

    /** Whether a point lies in it, edges included. */
    public boolean holds(double pointX, double pointY) {
        return pointX >= x && pointX <= right() && pointY >= y && pointY <= bottom();
    }

    /** The least that holds both. */
    public Box with(Box other) {
        return between(
                Math.min(x, other.x),
                Math.min(y, other.y),
                Math.max(right(), other.right()),
                Math.max(bottom(), other.bottom()));
    }

    /** The same elsewhere. */
    public Box moved(double byX, double byY) {
        return new Box(x + byX, y + byY, width, height);
    }
}
