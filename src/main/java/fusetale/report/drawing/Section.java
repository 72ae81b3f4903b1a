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

    Section moved(double byX, double byY) {
        return new Section(heading, bounds.moved(byX, byY), title.moved(byX, byY), parts);
    }
}
