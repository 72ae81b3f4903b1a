package fusetale.explore;

import fusetale.bench.Bench;
import fusetale.bench.Seen;
import fusetale.bench.Spread;
import fusetale.bench.UnfitArrangement;
import fusetale.circuit.Circuit;
import fusetale.fault.Supposition;
import fusetale.fault.UnfitSupposition;
import fusetale.mna.NotSolved;
import fusetale.mna.Solved;
import java.util.List;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleConsumer;

/**
 * The healthy side of a question: what it reads and how far healthy machines stray. Answers to several suppositions share
 * one.
 *
 * @param asArranged the healthy machine with the arrangement's deeds done
 * @param settled the same after fuses that melt even in a healthy machine (a clip lead in the wrong place) have melted, as it is
 *     shown
 * @param near the settled machine, in the steps in which machines are compared, looked at once more beside itself: its lamps are
 *     then linearised where every supposition will linearise them, and what was worked out for its linear part is theirs too
 * @param seen the look that the readings as built were taken from
 * @param spread ranges of the readings, in the order of the checks
 * @param currents the settled machine for whoever asks for most of its voltages and currents
 */
record Baseline(Circuit asArranged, Settled settled, Seen near, Seen seen, Spread spread, Seen currents) {
    static Solved<Baseline> of(Question question, DoubleConsumer progress, BooleanSupplier stopped)
            throws UnfitArrangement {
        Circuit healthy = question.healthy();
        Circuit asArranged = question.arrangement().appliedTo(healthy);
        Machine machine = healthy(question);
        Set<String> pulled = Set.copyOf(question.arrangement().pulledFuses());
        Solved<Settled> settling = Settled.of(machine, question.meter(), null, pulled, stopped);
        if (!(settling instanceof Solved.Found<Settled> settled)) {
            return new Solved.Failed<>(reason(settling));
        }
        Settled rest = settled.value();
        Bench again = Bench.of(rest.machine().arranged(), rest.machine().bare(), question.meter());
        Seen near = again.look(List.of(), rest.seen(), stopped).orElse(reason -> rest.seen());
        Circuit left = healthy;
        for (Settled.Carrying melted : rest.melted()) {
            left = new Machine(left, machine.bare())
                    .withBlown(melted.fuse().name())
                    .arranged();
        }
        Solved<Spread> spreading = Spread.of(
                left,
                Bench.of(left, question.arrangement(), question.meter()),
                rest.seen(),
                question.checks(),
                new Spread.Settings(
                        question.options().draws(), question.options().seed()),
                progress,
                stopped);
        if (!(spreading instanceof Solved.Found<Spread> spread)) {
            return new Solved.Failed<>(reason(spreading));
        }
        Solved<Settled> refining = rest.shown(stopped);
        if (!(refining instanceof Solved.Found<Settled> refined)) {
            return new Solved.Failed<>(reason(refining));
        }
        Settled shown = refined.value();
        Solved<Seen> reading = Bench.of(left, question.arrangement(), question.meter())
                .shown()
                .look(question.checks(), shown.seen(), stopped);
        if (!(reading instanceof Solved.Found<Seen> read)) {
            return new Solved.Failed<>(reason(reading));
        }
        return new Solved.Found<>(new Baseline(
                asArranged,
                shown,
                near,
                read.value(),
                spread.value(),
                shown.seen().tabled()));
    }

    static NotSolved reason(Solved<?> failed) {
        return ((Solved.Failed<?>) failed).reason();
    }

    private static Machine healthy(Question question) throws UnfitArrangement {
        try {
            return Machine.of(question.healthy(), question.arrangement(), Supposition.NOTHING);
        } catch (UnfitSupposition e) {
            throw new IllegalStateException("nothing always fits", e);
        }
    }
}
