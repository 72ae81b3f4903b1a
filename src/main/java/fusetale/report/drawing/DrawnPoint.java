package fusetale.report.drawing;

import org.jspecify.annotations.Nullable;

/**
 * A test point on the sheet: a ring of radius {@value #RADIUS} px with its number.
 *
 * @param name {@code TP2}
 * @param number what stands in its ring: {@code 2}
 * @param label what it is
 * @param red middle of the ring where the red lead goes
 * @param black middle of the ring where the black lead goes; null where that is the machine's ground, or drawn as one
 */
public record DrawnPoint(
        String name,
        String number,
        String label,
        Spot red,
        @Nullable Spot black) {
    /** Radius of its ring [px]. */
    public static final double RADIUS = 8.5;

    /** What a ring around a place covers. */
    static Box ring(Spot middle) {
        return new Box(middle.x(), middle.y(), 0, 0).grown(RADIUS + Weight.WIRE.pixels() / 2);
    }

    DrawnPoint moved(double byX, double byY) {
        Spot other = black;
        return new DrawnPoint(name, number, label, red.moved(byX, byY), other == null ? null : other.moved(byX, byY));
    }
}
