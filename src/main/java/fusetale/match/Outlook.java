package fusetale.match;

import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;

/**
 * What boards let expect of one ask, remembered from one list of what to measure next to the following: it does not depend on
 * what was found, only on how much of a board was worked out. For any number of threads.
 */
final class Outlook {
    private final Workbench bench;
    private final Wanted wanted;
    private final Map<Way, Map<Integer, Held>> held = new EnumMap<>(Way.class);

    /** Of a board of which so much was worked out. */
    private record Held(long stamp, Expectation expectation) {}

    Outlook(Workbench bench, Wanted wanted) {
        this.bench = bench;
        this.wanted = wanted;
        for (Way way : Way.values()) {
            held.put(way, new ConcurrentHashMap<>());
        }
    }

    /** Of a board on which nothing was replaced, its fuses as they have come out. */
    Expectation of(Boards.Board board, Way way) {
        Map<Integer, Held> those = Objects.requireNonNull(held.get(way));
        long stamp = bench.stamp(board)
                + (way == Way.AS_TAKEN
                        ? 0
                        : bench.after(board, Renewed.NOTHING, way).grown());
        Held known = those.get(board.number());
        if (known == null || known.stamp() != stamp) {
            known = new Held(stamp, bench.expect(board, wanted, Renewed.NOTHING, way));
            those.put(board.number(), known);
        }
        return known.expectation();
    }
}
