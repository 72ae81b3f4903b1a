package fusetale.report.drawing;

/**
 * A line through what of a part a fault can befall: the whole part, a leg of a bridge, a winding, a transistor between two
 * of its pins. Marks stand on it.
 *
 * @param x1 where it begins [px]
 * @param y1 where it begins [px]
 * @param x2 where it ends [px]
 * @param y2 where it ends [px]
 * @param body how much of it, around its middle, the symbol's body takes [px]
 */
public record Leg(double x1, double y1, double x2, double y2, double body) {
    /** Its length [px]. */
    public double length() {
        return Math.hypot(x2 - x1, y2 - y1);
    }

    Leg mapped(Outline.Place place) {
        double[] one = place.of(x1, y1);
        double[] two = place.of(x2, y2);
        return new Leg(one[0], one[1], two[0], two[1], body);
    }
}
