package fusetale.match;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * What boards let expect of one ask, remembered from one list of what to measure next to the following: it does not depend on
 * what was found, only on how much of a board was worked out. For any number of threads.
 */
final class Outlook {
    private final Workbench bench;
    private final Wanted wanted;
    private final Map<Integer, Held> byBoard = new ConcurrentHashMap<>();
    private final Map<Integer, Held> byOtherwise = new ConcurrentHashMap<>();

    /** Of a board of which so much was worked out. */
    private record Held(long stamp, Expectation expectation) {}

    Outlook(Workbench bench, Wanted wanted) {
        this.bench = bench;
        this.wanted = wanted;
    }

    /**
     * Of a board on which nothing was replaced.
     *
     * @param otherwise whether its fuses have come out the other way
     */
    Expectation of(Boards.Board board, boolean otherwise) {
        Map<Integer, Held> those = otherwise ? byOtherwise : byBoard;
        long stamp = bench.stamp(board)
                + (otherwise ? bench.after(board, Renewed.NOTHING, true).grown() : 0);
        Held held = those.get(board.number());
        if (held == null || held.stamp() != stamp) {
            held = new Held(stamp, bench.expect(board, wanted, Renewed.NOTHING, otherwise));
            those.put(board.number(), held);
        }
        return held.expectation();
    }
}
