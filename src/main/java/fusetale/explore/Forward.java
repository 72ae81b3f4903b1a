package fusetale.explore;

import fusetale.aftermath.Board;
import fusetale.aftermath.Bodies;
import fusetale.aftermath.Body;
import fusetale.aftermath.Limit;
import fusetale.aftermath.Loads;
import fusetale.bench.Bench;
import fusetale.bench.Seen;
import fusetale.bench.UnfitArrangement;
import fusetale.circuit.Circuit;
import fusetale.fault.FailureMode;
import fusetale.fault.Fault;
import fusetale.fault.Supposition;
import fusetale.fault.UnfitSupposition;
import fusetale.mna.NotSolved;
import fusetale.mna.Solved;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;

/** The machine of a question, to be played forward: what happens to it is added to what was supposed, and solved again. */
final class Forward implements Board {
    private static final Set<FailureMode> LOST = EnumSet.of(FailureMode.SHORT, FailureMode.OPEN);

    private final Question question;
    private final Circuit start;
    private final Seen asBuilt;
    private final BooleanSupplier stopped;
    private final Map<Set<Fault>, Seen> looks = new HashMap<>();

    /**
     * A machine to play forward.
     *
     * @param start as arranged and as supposed, before anything happens
     * @param asBuilt a look at it with nothing supposed
     */
    Forward(Question question, Circuit start, Seen asBuilt, BooleanSupplier stopped) {
        this.question = question;
        this.start = start;
        this.asBuilt = asBuilt;
        this.stopped = stopped;
    }

    @Override
    public List<Body> bodies() {
        return Bodies.of(start).stream().map(b -> lostAlready(b) ? spent(b) : b).toList();
    }

    /**
     * A junction that was supposed to be a short or open does not fail again by getting warm. One that does less than it should, or
     * leaks, is still there to be lost.
     */
    private boolean lostAlready(Body body) {
        return body.nature() == Body.Nature.JUNCTION
                && body.limits().stream()
                        .map(Limit::consequence)
                        .filter(Objects::nonNull)
                        .anyMatch(next -> supposed().anyMatch(f -> LOST.contains(f.mode()) && contradict(f, next)));
    }

    private Stream<Fault> supposed() {
        return question.supposition().faults().stream();
    }

    private boolean contradict(Fault there, Fault next) {
        return there.part().equals(next.part())
                && !Step.fits(
                        question.healthy(),
                        new Supposition(
                                List.of(there, next), question.supposition().swaps()));
    }

    /** Nothing more happens to it, but what heat it makes still warms what shares its case and its plate. */
    private static Body spent(Body body) {
        return new Body(body.part(), body.place(), body.nature(), body.network(), body.spread(), List.of());
    }

    @Override
    public Solved<Loads> after(List<Fault> happened, Set<String> hot) {
        try {
            Supposition all = Step.after(question.healthy(), question.supposition(), happened);
            Machine machine = Machine.of(question.healthy(), question.arrangement(), all);
            Circuit circuit = Board.warmed(machine.arranged(), hot);
            Bench bench = Bench.of(circuit, machine.bare(), question.meter());
            Solved<Seen> looked = bench.look(List.of(), near(happened), stopped);
            if (!(looked instanceof Solved.Found<Seen> found)) {
                return new Solved.Failed<>(Baseline.reason(looked));
            }
            looks.putIfAbsent(new HashSet<>(happened), found.value());
            return new Solved.Found<>(Loads.of(found.value(), asBuilt, all, start));
        } catch (UnfitArrangement | UnfitSupposition e) {
            return new Solved.Failed<>(
                    new NotSolved(NotSolved.Kind.BAD_VALUE, List.of(), String.valueOf(e.getMessage())));
        }
    }

    /** The look that has most in common: the same with windings cold, or before the last thing happened. */
    private Seen near(List<Fault> happened) {
        for (int k = happened.size(); k >= 0; k--) {
            Seen seen = looks.get(new HashSet<>(happened.subList(0, k)));
            if (seen != null) {
                return seen;
            }
        }
        return asBuilt;
    }
}
