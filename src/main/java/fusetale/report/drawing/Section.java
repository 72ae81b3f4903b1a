package fusetale.report.drawing;

import java.util.List;

/**
 * A part of the sheet with a heading.
 *
 * @param heading its heading; a capital first
 * @param bounds what it takes
 * @param title where its heading stands
 * @param parts names of the parts in it
 */
public record Section(String heading, Box bounds, Label title, List<String> parts) {
    /** As much larger than drawn a heading gets before everything else is too small to read. */
    private static final double HEADING_GROWS = 1.4;

    /** Copies the list. */
    public Section {
        parts = List.copyOf(parts);
    }

    /** What the lines of its frame cover. */
    List<Box> frame() {
        double half = 1;
        return List.of(
                new Box(bounds.x(), bounds.y(), bounds.width(), 0).grown(half),
                new Box(bounds.x(), bounds.bottom(), bounds.width(), 0).grown(half),
                new Box(bounds.x(), bounds.y(), 0, bounds.height()).grown(half),
                new Box(bounds.right(), bounds.y(), 0, bounds.height()).grown(half));
    }

    /** What its heading covers, and what it grows over on a screen where the sheet is seen smaller than drawn and is still read. */
    Box headed() {
        Box drawn = title.bounds();
        return new Box(drawn.x(), drawn.y(), drawn.width() * HEADING_GROWS, drawn.height() * HEADING_GROWS);
    }

    Section moved(double byX, double byY) {
        return new Section(heading, bounds.moved(byX, byY), title.moved(byX, byY), parts);
    }
}
