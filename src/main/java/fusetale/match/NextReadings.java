package fusetale.match;

import java.util.List;

/**
 * Where to go from here.
 *
 * @param advice what to measure next, best first; empty where nothing permitted tells more
 * @param verdict whether to go on
 * @param replace a repair that is cheaper to try than to prove, with its reason in words; empty for none
 * @param confirm what would refute the leader, at its own part where that can be measured; null where nothing is left to ask
 */
public record NextReadings(
        List<Advice> advice,
        Verdict verdict,
        String replace,
        @org.jspecify.annotations.Nullable Advice confirm) {
    /** Copies the list. */
    public NextReadings {
        advice = List.copyOf(advice);
    }

    /** Whether to go on measuring. */
    public enum Verdict {
        /** More readings tell more. */
        GO_ON,
        /** One repair is as good as sure. */
        SETTLED,
        /** Nothing permitted tells the rest apart. */
        NO_MORE_TO_LEARN,
        /** A reading does not fit the rest and should be repeated. */
        REPEAT
    }
}
