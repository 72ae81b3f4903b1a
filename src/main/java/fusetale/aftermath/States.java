package fusetale.aftermath;

import fusetale.fault.Fault;
import fusetale.mna.Solved;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * The states of a machine that were asked for, each solved once: many drawn machines go through the same few. One thread's.
 */
final class States {
    /** Temperature [°C] at which windings are stated. */
    static final double COLD_CELSIUS = 25;

    /** Copper that would warm up by less than this [K] is left as it is stated. */
    private static final double WARM_KELVIN = 40;

    private final Board board;
    private final List<Body> bodies;
    private final Map<Set<Fault>, Optional<State>> known = new HashMap<>();

    States(Board board) {
        this.board = board;
        this.bodies = board.bodies();
    }

    /** One state: heat of each body cold and hot [W], the same where none warms up; heat beside bodies by part; what wears. */
    static final class State {
        private final double[] cold;
        private final double[] hot;
        private final double[] outer;
        private final List<Pair> wears;

        private State(double[] cold, double[] hot, double[] outer, List<Pair> wears) {
            this.cold = cold;
            this.hot = hot;
            this.outer = outer;
            this.wears = wears;
        }

        /** Heat of a body with windings at their stated temperature [W]. */
        double cold(DrawnBody body) {
            return cold[body.index];
        }

        /** Heat of a body with windings that warm up at {@link Board#HOT_CELSIUS} [W]. */
        double hot(DrawnBody body) {
            return hot[body.index];
        }

        /** Heat of a body's part that is none of its bodies' [W]. */
        double outer(DrawnBody body) {
            return outer[body.index];
        }

        /** What wears, cold beside hot. */
        List<Pair> wears() {
            return wears;
        }
    }

    /** One process at both. */
    record Pair(Wear cold, Wear hot) {}

    List<Body> bodies() {
        return bodies;
    }

    /** The state after some things have happened, whose order does not matter; empty where none was found. */
    Optional<State> after(List<Fault> happened) {
        Set<Fault> key = new HashSet<>(happened);
        Optional<State> state = known.get(key);
        if (state == null) {
            state = solved(happened);
            known.put(key, state);
        }
        return state;
    }

    private Optional<State> solved(List<Fault> happened) {
        Optional<Loads> cold = loads(board.after(happened, Set.of()));
        if (cold.isEmpty()) {
            return Optional.empty();
        }
        Set<String> warm = warm(cold.get().heat());
        Optional<Loads> hot = warm.isEmpty() ? cold : loads(board.after(happened, warm));
        return hot.map(h -> new State(
                watts(cold.get().heat()), watts(h.heat()), outer(cold.get().heat()), pairs(cold.get(), h)));
    }

    private double[] outer(Heat heat) {
        return bodies.stream().mapToDouble(heat::outer).toArray();
    }

    private double[] watts(Heat heat) {
        return bodies.stream().mapToDouble(heat::own).toArray();
    }

    private static Optional<Loads> loads(Solved<Loads> solved) {
        return solved instanceof Solved.Found<Loads> found ? Optional.of(found.value()) : Optional.empty();
    }

    private Set<String> warm(Heat cold) {
        return bodies.stream()
                .filter(b -> b.nature().copper())
                .filter(b -> b.network().settledKelvin(cold.own(b), cold.ofPart(b, bodies)) > WARM_KELVIN)
                .map(Body::name)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** What wears in one of the two only lasts for good in the other. */
    private static List<Pair> pairs(Loads cold, Loads hot) {
        List<Pair> pairs = new ArrayList<>();
        for (Wear wear : cold.wears()) {
            pairs.add(new Pair(wear, counterpart(wear, hot)));
        }
        for (Wear wear : hot.wears()) {
            if (cold.wears().stream().noneMatch(wear::sameAs)) {
                pairs.add(new Pair(never(wear), wear));
            }
        }
        return pairs;
    }

    private static Wear counterpart(Wear wear, Loads loads) {
        return loads.wears().stream().filter(wear::sameAs).findFirst().orElseGet(() -> never(wear));
    }

    private static Wear never(Wear w) {
        return new Wear(w.part(), w.place(), w.harm(), w.consequence(), Melting.NEVER, w.source());
    }
}
