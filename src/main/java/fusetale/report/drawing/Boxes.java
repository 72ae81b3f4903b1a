package fusetale.report.drawing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Boxes sorted by where they are, so that few have to be looked at. */
final class Boxes {
    /** Side of a field [px]. */
    private static final double FIELD = 64;

    private final Map<Long, List<Box>> fields = new HashMap<>();

    void add(Box box) {
        each(box, key -> fields.computeIfAbsent(key, k -> new ArrayList<>()).add(box));
    }

    boolean anyMeets(Box box) {
        boolean[] meets = {false};
        each(
                box,
                key -> meets[0] |= !meets[0]
                        && fields.getOrDefault(key, List.of()).stream().anyMatch(box::meets));
        return meets[0];
    }

    int countMeeting(Box box) {
        Set<Box> meeting = new HashSet<>();
        each(
                box,
                key -> fields.getOrDefault(key, List.of()).stream()
                        .filter(box::meets)
                        .forEach(meeting::add));
        return meeting.size();
    }

    /** What to do with a field. */
    private interface Deed {
        void with(long key);
    }

    private static void each(Box box, Deed deed) {
        long firstColumn = (long) Math.floor(box.x() / FIELD);
        long lastColumn = (long) Math.floor(box.right() / FIELD);
        long firstRow = (long) Math.floor(box.y() / FIELD);
        long lastRow = (long) Math.floor(box.bottom() / FIELD);
        for (long row = firstRow; row <= lastRow; row++) {
            for (long column = firstColumn; column <= lastColumn; column++) {
                deed.with(row * 1_000_003L + column);
            }
        }
    }
}
