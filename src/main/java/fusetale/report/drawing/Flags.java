package fusetale.report.drawing;

import fusetale.circuit.Net;
import java.util.List;

/** Shapes of the flags of rails and of ground signs. */
final class Flags {
    private static final double ARROW = 9;
    private static final double TEXT_GAP = 4;
    private static final double LEAD = 7;

    private Flags() {}

    /** A rail's name at the end of a wire that leaves to a side. */
    static Flag rail(Net net, double x, double y, Side side) {
        String name = net.name();
        double width = Letters.width(name, Label.Role.NET);
        if (side.level()) {
            int way = side.stepX();
            double text = x + way * (ARROW + TEXT_GAP + 2);
            return new Flag(
                    x,
                    y,
                    false,
                    Box.between(x + way, y - 8, text + way * (width + 1), y + 8),
                    List.of(new Stroke(
                            Outline.of("M " + x + " " + (y - 5.5) + " L " + (x + way * ARROW) + " " + y + " L " + x
                                    + " " + (y + 5.5) + " Z"),
                            Weight.FILLED)),
                    List.of(new Label(
                            name, text, y + 5, way > 0 ? Label.Anchor.START : Label.Anchor.END, Label.Role.NET)));
        }
        int way = side.stepY();
        double bar = y + way * LEAD;
        double half = Math.max(8, width / 2) + 1;
        double base = way < 0 ? bar - 5 : bar + 15;
        return new Flag(
                x,
                y,
                false,
                Box.between(x - half, y + way, x + half, y + way * (LEAD + 17)),
                List.of(
                        new Stroke(Outline.line(x, y, x, bar), Weight.WIRE),
                        new Stroke(Outline.line(x - 8, bar, x + 8, bar), Weight.SYMBOL)),
                List.of(new Label(name, x, base, Label.Anchor.MIDDLE, Label.Role.NET)));
    }

    /** The machine's ground: three bars. */
    static Flag ground(double x, double y) {
        return new Flag(
                x,
                y,
                true,
                Box.between(x - 11, y + 1, x + 11, y + 17),
                List.of(
                        new Stroke(Outline.line(x, y, x, y + 6), Weight.WIRE),
                        new Stroke(Outline.line(x - 10, y + 6, x + 10, y + 6), Weight.SYMBOL),
                        new Stroke(Outline.line(x - 6, y + 10.5, x + 6, y + 10.5), Weight.SYMBOL),
                        new Stroke(Outline.line(x - 2, y + 15, x + 2, y + 15), Weight.SYMBOL)),
                List.of());
    }

    /** A ground of its own, joined to the machine's by wire: a triangle with its name. */
    static Flag ground(Net net, double x, double y) {
        double half = Math.max(9, Letters.width(net.name(), Label.Role.NOTE) / 2 + 1);
        return new Flag(
                x,
                y,
                true,
                Box.between(x - half, y + 1, x + half, y + 29),
                List.of(
                        new Stroke(Outline.line(x, y, x, y + 6), Weight.WIRE),
                        new Stroke(
                                Outline.of("M " + (x - 8) + " " + (y + 6) + " L " + (x + 8) + " " + (y + 6) + " L " + x
                                        + " " + (y + 14) + " Z"),
                                Weight.SYMBOL)),
                List.of(new Label(net.name(), x, y + 26, Label.Anchor.MIDDLE, Label.Role.NOTE)));
    }
}
