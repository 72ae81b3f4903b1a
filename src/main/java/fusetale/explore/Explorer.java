package fusetale.explore;

import fusetale.aftermath.Stress;
import fusetale.aftermath.Surfaces;
import fusetale.bench.Bench;
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
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;

/**
 * The one service behind every command and window: a question in, an answer out. Answers do not depend on the number of
 * threads, nor on what was asked before. May be used by several threads at once.
 */
public final class Explorer {
    private static final int PER_CENT = 100;
    private static final Words WORDS = Words.of(Explorer.class);

    private final int threads;

    /**
     * An explorer.
     *
     * @param threads how many suppositions of a batch to work on at once, 1 or more
     */
    public Explorer(int threads) {
        if (threads < 1) {
            throw new IllegalArgumentException(threads + " threads");
        }
        this.threads = threads;
    }

    /**
     * Answers one question.
     *
     * @param progress told how far the spread of healthy machines has come, in hundredths
     * @param stopped asked now and then; true ends the work
     */
    public Answer answer(Question question, Progress progress, BooleanSupplier stopped) {
        try {
            Optional<Answer> refusal = refusal(question);
            if (refusal.isPresent()) {
                return refusal.get();
            }
            Solved<Baseline> baseline =
                    Baseline.of(question, share -> progress.at((int) Math.round(share * PER_CENT), PER_CENT), stopped);
            if (!(baseline instanceof Solved.Found<Baseline> found)) {
                return unanswered(Baseline.reason(baseline));
            }
            return answer(question, found.value(), stopped);
        } catch (UnfitArrangement e) {
            return unusable(e);
        }
    }

    /**
     * Answers one question for many suppositions; what is healthy is worked out once.
     *
     * @param common everything but the supposition, which is not looked at
     * @param progress told how many suppositions are answered
     * @param stopped asked now and then; true ends the work, what is left being {@link Answer.Why#STOPPED}
     * @return one answer a supposition, in their order
     */
    public List<Answer> answerAll(
            Question common, List<Supposition> suppositions, Progress progress, BooleanSupplier stopped) {
        Question healthy = common.supposing(Supposition.NOTHING);
        Baseline baseline;
        try {
            Optional<Answer> refusal = refusal(healthy);
            if (refusal.isPresent()) {
                return suppositions.stream().map(s -> refusal.get()).toList();
            }
            Solved<Baseline> solved = Baseline.of(healthy, share -> {}, stopped);
            if (!(solved instanceof Solved.Found<Baseline> found)) {
                Answer none = unanswered(Baseline.reason(solved));
                return suppositions.stream().map(s -> none).toList();
            }
            baseline = found.value();
        } catch (UnfitArrangement e) {
            Answer none = unusable(e);
            return suppositions.stream().map(s -> none).toList();
        }
        AtomicInteger done = new AtomicInteger();
        List<Callable<Answer>> tasks = new ArrayList<>();
        for (Supposition supposition : suppositions) {
            tasks.add(() -> {
                Answer answer = answer(common.supposing(supposition), baseline, stopped);
                progress.at(done.incrementAndGet(), suppositions.size());
                return answer;
            });
        }
        return all(tasks);
    }

    private List<Answer> all(List<Callable<Answer>> tasks) {
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        try {
            List<Answer> answers = new ArrayList<>();
            for (Future<Answer> future : pool.invokeAll(tasks)) {
                answers.add(future.get());
            }
            return answers;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            Answer stopped = new Answer.Unanswered(Answer.Why.STOPPED, WORDS.say("stopped"), List.of());
            return tasks.stream().map(t -> stopped).toList();
        } catch (ExecutionException e) {
            throw new IllegalStateException(e.getCause());
        } finally {
            pool.shutdownNow();
        }
    }

    /** Why a question cannot be asked of its machine at all, all reasons at once. */
    private static Optional<Answer> refusal(Question question) throws UnfitArrangement {
        Bench bench = Bench.of(question.healthy(), question.arrangement(), question.meter());
        List<String> reasons = question.checks().stream()
                .flatMap(c -> bench.refusal(c).stream())
                .distinct()
                .toList();
        return reasons.isEmpty()
                ? Optional.empty()
                : Optional.of(new Answer.Unanswered(Answer.Why.UNUSABLE, String.join("\n", reasons), List.of()));
    }

    private static Answer answer(Question question, Baseline baseline, BooleanSupplier stopped) {
        try {
            return question.supposition().isNothing()
                    ? complete(healthy(question, baseline), baseline, baseline.settled(), stopped)
                    : supposed(question, baseline, stopped);
        } catch (UnfitArrangement e) {
            return unusable(e);
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
        Solved<Settled> settling = Settled.of(machine, question.meter(), baseline.near(), open, stopped);
        if (!(settling instanceof Solved.Found<Settled> found)) {
            return unanswered(Baseline.reason(settling));
        }
        Settled settled = found.value();
        List<Check> here = settled.machine().checksHere(question.checks(), baseline.asArranged());
        Solved<Seen> looking = settled.bench().read(settled.seen(), here, stopped);
        if (!(looking instanceof Solved.Found<Seen> seen)) {
            return unanswered(Baseline.reason(looking));
        }
        List<Reading> readings = Readings.of(question.checks(), seen.value()).readings();
        Solved<List<ComesAndGoes>> moving = ComesAndGoes.of(question, baseline, readings, stopped);
        if (!(moving instanceof Solved.Found<List<ComesAndGoes>> contacts)) {
            return unanswered(Baseline.reason(moving));
        }
        Forwards played = Forwards.of(question, machine, baseline, stopped);
        if (stopped.getAsBoolean()) {
            return unanswered(new NotSolved(NotSolved.Kind.STOPPED, List.of(), ""));
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
            return unanswered(Baseline.reason(pulses));
        }
        SeriesLamp lamp = SeriesLamp.of(
                question.arrangement().seriesLampWatts(), baseline.settled().seen(), settled.seen());
        return new Answer.Answered(outcome.with(new AtTheBench(lamp, found.value()), Pulses.doubts(found.value())));
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
        List<Stress> all = powerOn ? Strains.of(settled.seen(), asArranged) : List.of();
        List<Stress> over = Outcome.past(all);
        List<Stress> overAsBuilt =
                powerOn ? Outcome.past(Strains.of(baseline.settled().seen(), asArranged)) : List.of();
        List<Doubt> doubts = new Doubts(settled, over, overAsBuilt, compared, played).inOrder(seen.remarks(), powerOn);
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
                noticed(question, baseline, settled),
                taken.contacts(),
                AtTheBench.NOTHING,
                SwapChanges.NONE,
                played.aftermath(),
                powerOn ? Flow.of(baseline.settled().seen(), settled.first()) : List.of());
    }

    private static List<Noticed> noticed(Question question, Baseline baseline, Settled settled) {
        Warmth warmth = new Surfaces(baseline.asArranged());
        Set<String> pulled = Set.copyOf(question.arrangement().pulledFuses());
        List<Observation> built =
                Observations.of(question.healthy(), baseline.settled().seen(), pulled, warmth);
        if (question.supposition().isNothing()) {
            return Noticed.beside(built, built);
        }
        Set<String> absent = Fates.absent(question.arrangement(), question.supposition());
        return Noticed.beside(built, Observations.of(question.healthy(), settled.seen(), absent, warmth));
    }

    private static Answer unusable(UnfitArrangement e) {
        return new Answer.Unanswered(Answer.Why.UNUSABLE, String.valueOf(e.getMessage()), List.of());
    }

    private static Answer unanswered(NotSolved reason) {
        Answer.Why why = switch (reason.kind()) {
            case FLOATING, SOURCE_LOOP, CUT_SET, BAD_VALUE, SINGULAR -> Answer.Why.UNUSABLE;
            case NO_OPERATING_POINT, NO_PERIODIC_STATE, STEP_TOO_SMALL -> Answer.Why.NOT_FOUND;
            case STOPPED -> Answer.Why.STOPPED;
        };
        String text = switch (why) {
            case UNUSABLE -> WORDS.say("unusable", reason.detail());
            case NOT_FOUND -> WORDS.say("not-found", reason.detail());
            case STOPPED -> WORDS.say("stopped");
        };
        return new Answer.Unanswered(why, text, reason.names());
    }
}
