package fusetale.explore;

import fusetale.aftermath.Aftermath;
import fusetale.aftermath.Stress;
import fusetale.aftermath.Surfaces;
import fusetale.bench.Check;
import fusetale.bench.Observation;
import fusetale.bench.Observations;
import fusetale.bench.Reading;
import fusetale.bench.Seen;
import fusetale.bench.Spread;
import fusetale.bench.UnfitArrangement;
import fusetale.bench.Warmth;
import fusetale.circuit.Circuit;
import fusetale.fault.Supposition;
import fusetale.fault.UnfitSupposition;
import fusetale.mna.NotSolved;
import fusetale.mna.Solved;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;

/**
 * The healthy side of a question, worked out once and ready for one supposition after another. Answers are those of
 * {@link Explorer#answer} to the last bit. Immutable; may be used by several threads at once.
 */
public final class Prepared {
    private final Question common;
    private final Baseline baseline;

    Prepared(Question common, Baseline baseline) {
        this.common = common;
        this.baseline = baseline;
    }

    /** What was prepared: everything but the supposition. */
    public Question question() {
        return common;
    }

    /** What a healthy machine whose parts are all nominal shows, in the order of the checks. */
    public List<Reading> asBuilt() {
        return baseline.seen().readings();
    }

    /**
     * Answers for one supposition as thoroughly as the question asked.
     *
     * @param stopped asked now and then; true ends the work
     */
    public Answer answer(Supposition supposition, BooleanSupplier stopped) {
        return answer(common.supposing(supposition), baseline, stopped);
    }

    /**
     * Answers for one supposition.
     *
     * @param aftermath what to play forward; null for nothing
     * @param stopped asked now and then; true ends the work
     */
    public Answer answer(Supposition supposition, Aftermath.@Nullable Settings aftermath, BooleanSupplier stopped) {
        Question.Options options = common.options();
        Question question = new Question(
                common.healthy(),
                supposition,
                common.arrangement(),
                common.meter(),
                common.checks(),
                new Question.Options(options.draws(), options.seed(), options.traces(), aftermath));
        return answer(question, baseline, stopped);
    }

    Baseline baseline() {
        return baseline;
    }

    private static Answer answer(Question question, Baseline baseline, BooleanSupplier stopped) {
        try {
            return question.supposition().isNothing()
                    ? complete(healthy(question, baseline), baseline, baseline.settled(), stopped)
                    : supposed(question, baseline, stopped);
        } catch (UnfitArrangement e) {
            return Explorer.unusable(e);
        } catch (UnfitSupposition e) {
            return new Answer.Unanswered(Answer.Why.UNUSABLE, String.valueOf(e.getMessage()), List.of());
        }
    }

    private static Outcome healthy(Question question, Baseline baseline) {
        return outcome(
                question,
                baseline,
                baseline.settled(),
                new Taken(
                        baseline.seen(),
                        baseline.seen().readings(),
                        List.of(),
                        baseline.settled().solves() + baseline.seen().work().solves()),
                Forwards.NOTHING);
    }

    private static Answer supposed(Question question, Baseline baseline, BooleanSupplier stopped)
            throws UnfitArrangement, UnfitSupposition {
        Machine machine = Machine.of(question.healthy(), question.arrangement(), question.supposition());
        Set<String> open = Fates.openFromTheStart(question.arrangement(), question.supposition());
        Solved<Settled> settling = Settled.shown(machine, question.meter(), baseline.near(), open, stopped);
        if (!(settling instanceof Solved.Found<Settled> found)) {
            return Explorer.unanswered(Baseline.reason(settling));
        }
        Settled settled = found.value();
        List<Check> here = settled.machine().checksHere(question.checks(), baseline.asArranged());
        Solved<Seen> looking = settled.bench().read(settled.seen(), here, stopped);
        if (!(looking instanceof Solved.Found<Seen> seen)) {
            return Explorer.unanswered(Baseline.reason(looking));
        }
        List<Reading> readings = Readings.of(question.checks(), seen.value()).readings();
        Solved<List<ComesAndGoes>> moving = ComesAndGoes.of(question, baseline, readings, stopped);
        if (!(moving instanceof Solved.Found<List<ComesAndGoes>> contacts)) {
            return Explorer.unanswered(Baseline.reason(moving));
        }
        Forwards played = Forwards.of(question, machine, baseline, stopped);
        if (stopped.getAsBoolean()) {
            return Explorer.unanswered(new NotSolved(NotSolved.Kind.STOPPED, List.of(), ""));
        }
        Taken taken = new Taken(seen.value(), readings, contacts.value(), settled.solves());
        Outcome outcome = outcome(question, baseline, settled, taken, played);
        return complete(
                outcome.withSwaps(SwapEffects.of(question, baseline, settled, stopped)), baseline, settled, stopped);
    }

    /** Adds what the arrangement itself shows: a series lamp, pulses. */
    private static Answer complete(Outcome outcome, Baseline baseline, Settled settled, BooleanSupplier stopped) {
        Question question = outcome.question();
        Solved<List<Pulsed>> pulses = Pulses.of(question, baseline.settled(), settled, stopped);
        if (!(pulses instanceof Solved.Found<List<Pulsed>> found)) {
            return Explorer.unanswered(Baseline.reason(pulses));
        }
        SeriesLamp lamp = SeriesLamp.of(
                question.arrangement().seriesLampWatts(), baseline.settled().seen(), settled.seen());
        return new Answer.Answered(outcome.with(new AtTheBench(lamp, found.value()), PulseDoubts.of(found.value())));
    }

    /**
     * Readings, and the look they were taken in.
     *
     * @param contacts readings that come and go with a contact
     * @param solves solves it took in all
     */
    private record Taken(Seen seen, List<Reading> readings, List<ComesAndGoes> contacts, long solves) {}

    private static Outcome outcome(
            Question question, Baseline baseline, Settled settled, Taken taken, Forwards played) {
        Seen seen = taken.seen();
        List<Reading> readings = taken.readings();
        List<Compared> compared = new ArrayList<>();
        for (int k = 0; k < readings.size(); k++) {
            Spread.Range range = baseline.spread().ranges().get(k);
            compared.add(Compared.of(baseline.seen().readings().get(k), readings.get(k), HealthyRange.of(range)));
        }
        boolean powerOn = question.arrangement().powerOn();
        Circuit asArranged = baseline.asArranged();
        Seen built = baseline.currents();
        boolean asBuilt = question.supposition().isNothing();
        Seen now = asBuilt ? built : settled.seen().tabled();
        Seen first = settled.melted().isEmpty() ? now : settled.first().tabled();
        List<Stress> allAsBuilt = powerOn ? Strains.of(built, asArranged) : List.of();
        List<Stress> all = asBuilt || !powerOn ? allAsBuilt : Strains.of(now, asArranged);
        List<Stress> over = Outcome.past(all);
        List<Doubt> doubts =
                new Doubts(settled, over, Outcome.past(allAsBuilt), compared, played).inOrder(seen.remarks(), powerOn);
        List<Trace> traces = powerOn ? new Traces(question, baseline, settled, seen).chosen(compared) : List.of();
        return new Outcome(
                question,
                compared.stream()
                        .sorted(Comparator.comparingDouble(Compared::movedInTwoFigures)
                                .reversed())
                        .toList(),
                Fates.of(question, settled),
                all,
                traces,
                doubts,
                new Effort(
                        seen.work().method(),
                        seen.work().passes(),
                        taken.solves(),
                        seen.work().residual()),
                noticed(question, baseline, now),
                taken.contacts(),
                AtTheBench.NOTHING,
                SwapChanges.NONE,
                played.aftermath(),
                powerOn ? Flow.of(built, first) : List.of());
    }

    private static List<Noticed> noticed(Question question, Baseline baseline, Seen now) {
        Warmth warmth = new Surfaces(baseline.asArranged());
        Set<String> pulled = Set.copyOf(question.arrangement().pulledFuses());
        List<Observation> built = Observations.of(question.healthy(), baseline.currents(), pulled, warmth);
        if (question.supposition().isNothing()) {
            return Noticed.beside(built, built);
        }
        Set<String> absent = Fates.absent(question.arrangement(), question.supposition());
        return Noticed.beside(built, Observations.of(question.healthy(), now, absent, warmth));
    }
}
