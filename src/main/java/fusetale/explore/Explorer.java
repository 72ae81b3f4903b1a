package fusetale.explore;

import fusetale.bench.Bench;
import fusetale.bench.UnfitArrangement;
import fusetale.fault.Supposition;
import fusetale.mna.NotSolved;
import fusetale.mna.Solved;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
        Preparation preparation = prepare(question, progress, stopped);
        return preparation instanceof Preparation.Ready ready
                ? ready.prepared().answer(question.supposition(), stopped)
                : ((Preparation.None) preparation).reason();
    }

    /**
     * Works out the healthy side of a question once, for one supposition after another.
     *
     * @param common everything but the supposition, which is not looked at
     * @param progress told how far the spread of healthy machines has come, in hundredths
     * @param stopped asked now and then; true ends the work
     */
    public Preparation prepare(Question common, Progress progress, BooleanSupplier stopped) {
        Question healthy = common.supposing(Supposition.NOTHING);
        try {
            Optional<Answer.Unanswered> refusal = refusal(healthy);
            if (refusal.isPresent()) {
                return new Preparation.None(refusal.get());
            }
            Solved<Baseline> baseline =
                    Baseline.of(healthy, share -> progress.at((int) Math.round(share * PER_CENT), PER_CENT), stopped);
            return baseline instanceof Solved.Found<Baseline> found
                    ? new Preparation.Ready(new Prepared(healthy, found.value()))
                    : new Preparation.None(unanswered(Baseline.reason(baseline)));
        } catch (UnfitArrangement e) {
            return new Preparation.None(unusable(e));
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
        Preparation preparation = prepare(common, Progress.SILENT, stopped);
        if (!(preparation instanceof Preparation.Ready ready)) {
            Answer none = ((Preparation.None) preparation).reason();
            return suppositions.stream().map(s -> none).toList();
        }
        Prepared prepared = ready.prepared();
        AtomicInteger done = new AtomicInteger();
        List<Callable<Answer>> tasks = new ArrayList<>();
        for (Supposition supposition : suppositions) {
            tasks.add(() -> {
                Answer answer = prepared.answer(supposition, stopped);
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
    private static Optional<Answer.Unanswered> refusal(Question question) throws UnfitArrangement {
        Bench bench = Bench.of(question.healthy(), question.arrangement(), question.meter());
        List<String> reasons = question.checks().stream()
                .flatMap(c -> bench.refusal(c).stream())
                .distinct()
                .toList();
        return reasons.isEmpty()
                ? Optional.empty()
                : Optional.of(new Answer.Unanswered(Answer.Why.UNUSABLE, String.join("\n", reasons), List.of()));
    }

    static Answer.Unanswered unusable(UnfitArrangement e) {
        return new Answer.Unanswered(Answer.Why.UNUSABLE, String.valueOf(e.getMessage()), List.of());
    }

    static Answer.Unanswered unanswered(NotSolved reason) {
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
