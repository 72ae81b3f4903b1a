package fusetale.desk.state;

import java.util.ArrayList;
import java.util.List;

/**
 * Where one has been and can go back to. Immutable.
 *
 * @param states all states, the oldest first
 * @param at which of them is the present one
 */
public record History(List<BenchState> states, int at) {
    /** Copies the list. */
    public History {
        states = List.copyOf(states);
        if (at < 0 || at >= states.size()) {
            throw new IllegalArgumentException(at + " of " + states.size());
        }
    }

    /** Nowhere to go back to. */
    public static History of(BenchState first) {
        return new History(List.of(first), 0);
    }

    /** The present state. */
    public BenchState present() {
        return states.get(at);
    }

    /** Goes on to a state; what was undone before is forgotten. The present state again changes nothing. */
    public History plus(BenchState next) {
        if (next.equals(present())) {
            return this;
        }
        List<BenchState> kept = new ArrayList<>(states.subList(0, at + 1));
        kept.add(next);
        return new History(kept, kept.size() - 1);
    }

    /** One back, or the same at the oldest. */
    public History back() {
        return new History(states, Math.max(0, at - 1));
    }

    /** One forward, or the same at the newest. */
    public History forward() {
        return new History(states, Math.min(states.size() - 1, at + 1));
    }
}
