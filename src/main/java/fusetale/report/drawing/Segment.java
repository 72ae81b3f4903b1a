package fusetale.report.drawing;

/**
 * A straight piece of wire, level or upright [px].
 *
 * @param x1 one end
 * @param y1 one end
 * @param x2 the other end
 * @param y2 the other end
 */
public record Segment(double x1, double y1, double x2, double y2) {
    /** Whether it runs from left to right. */
    public boolean level() {
        return y1 == y2;
    }

    /** Its length [px]. */
    public double length() {
        return Math.abs(x2 - x1) + Math.abs(y2 - y1);
    }

    /** What its line covers. */
    public Box bounds() {
        return Box.between(x1, y1, x2, y2).grown(Weight.WIRE.pixels() / 2);
    }

    /** Whether a point lies on it, ends included. */
    public boolean holds(double x, double y) {
        return Box.between(x1, y1, x2, y2).holds(x, y);
    }

    Segment moved(double byX, double byY) {
        return new Segment(x1 + byX, y1 + byY, x2 + byX, y2 + byY);
    }
}
