package fusetale.report.drawing;

import java.util.List;

/**
 * Where a wire ends in a name instead of going on: a rail's flag, or a ground sign. All flags of one net are joined.
 *
 * @param x where the wire meets it [px]
 * @param y where the wire meets it [px]
 * @param ground whether it is a ground sign
 * @param bounds what it covers
 * @param strokes its lines
 * @param labels its name, where it shows one
 */
public record Flag(double x, double y, boolean ground, Box bounds, List<Stroke> strokes, List<Label> labels) {
    /** Copies the lists. */
    public Flag {
        strokes = List.copyOf(strokes);
        labels = List.copyOf(labels);
    }

    Flag moved(double byX, double byY) {
        return new Flag(
                x + byX,
                y + byY,
                ground,
                bounds.moved(byX, byY),
                strokes.stream().map(s -> s.mapped(Placement.by(byX, byY))).toList(),
                labels.stream().map(l -> l.moved(byX, byY)).toList());
    }
}
