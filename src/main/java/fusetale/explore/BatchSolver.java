package fusetale.explore;

import fusetale.bench.Bench;
import fusetale.bench.Check;
import fusetale.bench.Seen;
import fusetale.bench.UnfitArrangement;
import fusetale.circuit.Circuit;
import fusetale.fault.Supposition;
import fusetale.fault.UnfitSupposition;
import fusetale.mna.NotSolved;
import fusetale.mna.Solved;
import fusetale.mna.Work;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Solves one machine under many suppositions. Every supposition starts from the same state, that of the healthy machine in
 * the same arrangement, and from nothing that was solved before it: answers are the same to the last bit whatever the
 * number of threads, the order of the suppositions and what else is among them.
 */
public final class BatchSolver {
    private final int threads;

    /**
     * A solver of batches.
     *
     * @param threads suppositions to work on at once, 1 or more
     */
    public BatchSolver(int threads) {
        if (threads < 1) {
            throw new IllegalArgumentException(threads + " threads");
        }
        this.threads = threads;
    }

    /**
     * Solves and keeps the readings.
     *
     * @see #solve(Batch, List, Function, Progress, BooleanSupplier)
     */
    public List<BatchAnswer<Readings>> readings(
            Batch batch, List<Supposition> suppositions, Progress progress, BooleanSupplier stopped) {
        return solve(batch, suppositions, seen -> Readings.of(batch.checks(), seen), progress, stopped);
    }

    /**
     * Solves.
     *
     * @param <T> what is kept
     * @param keep takes from a look what is wanted of it, in the thread that solved it: a whole look of a large machine is
     *     half a megabyte
     * @param progress told how many suppositions are answered, one more each time, from several threads but never from two
     *     at once
     * @param stopped asked now and then, from several threads; true once ends the work, what is left being
     *     {@link NotSolved.Kind#STOPPED}. Interrupting the calling thread does the same
     * @return one answer a supposition, in their order
     */
    public <T> List<BatchAnswer<T>> solve(
            Batch batch,
            List<Supposition> suppositions,
            Function<Seen, T> keep,
            Progress progress,
            BooleanSupplier stopped) {
        AtomicBoolean over = new AtomicBoolean();
        BooleanSupplier enough = () -> {
            if (stopped.getAsBoolean()) {
                over.set(true);
            }
            return over.get();
        };
        Start start;
        try {
            start = Start.of(batch, enough);
        } catch (UnfitArrangement e) {
            String text = String.valueOf(e.getMessage());
            return suppositions.stream()
                    .<BatchAnswer<T>>map(s -> new BatchAnswer.Unfit<>(s, text))
                    .toList();
        }
        Count count = new Count(progress, suppositions.size());
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        try {
            List<Future<BatchAnswer<T>>> futures = new ArrayList<>();
            for (Supposition supposition : suppositions) {
                futures.add(pool.submit(() -> {
                    if (enough.getAsBoolean()) {
                        return new BatchAnswer.NotFound<>(supposition, stopped());
                    }
                    BatchAnswer<T> answer = start.answer(supposition, keep, enough);
                    if (!over.get()) {
                        count.oneMore();
                    }
                    return answer;
                }));
            }
            return inOrder(suppositions, futures, over);
        } finally {
            over.set(true);
            pool.shutdownNow();
        }
    }

    private static <T> List<BatchAnswer<T>> inOrder(
            List<Supposition> suppositions, List<Future<BatchAnswer<T>>> futures, AtomicBoolean over) {
        List<BatchAnswer<T>> answers = new ArrayList<>();
        boolean interrupted = false;
        while (answers.size() < futures.size()) {
            Supposition supposition = suppositions.get(answers.size());
            try {
                answers.add(futures.get(answers.size()).get());
            } catch (InterruptedException e) {
                // the rest is asked to stop, and still waited for: each answers at once
                over.set(true);
                interrupted = true;
            } catch (ExecutionException e) {
                answers.add(new BatchAnswer.Mistaken<>(supposition, Objects.requireNonNullElse(e.getCause(), e)));
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
        return answers;
    }

    private static NotSolved stopped() {
        return new NotSolved(NotSolved.Kind.STOPPED, List.of(), "stopped on request");
    }

    /** Counts answers and tells of each. */
    private static final class Count {
        private final Progress progress;
        private final int of;
        private int done;

        Count(Progress progress, int of) {
            this.progress = progress;
            this.of = of;
        }

        synchronized void oneMore() {
            progress.at(++done, of);
        }
    }

    /**
     * Where every supposition starts from.
     *
     * @param asArranged the healthy machine with the arrangement's deeds done
     * @param near a look at it; null where it has no steady state, and every supposition starts from rest
     */
    private record Start(
            Batch batch, Circuit asArranged, @Nullable Seen near) {
        static Start of(Batch batch, BooleanSupplier stopped) throws UnfitArrangement {
            Bench bench = Bench.of(batch.healthy(), batch.arrangement(), batch.meter());
            Seen first = bench.look(List.of(), null, stopped).orElse(reason -> null);
            if (first == null) {
                return new Start(batch, bench.circuit(), null);
            }
            // once more beside itself: its lamps are then linearised where every supposition will linearise them, and
            // what
            // was worked out for its linear part is theirs too
            Bench again = Bench.of(batch.healthy(), batch.arrangement(), batch.meter());
            return new Start(
                    batch,
                    bench.circuit(),
                    again.look(List.of(), first, stopped).orElse(reason -> first));
        }

        <T> BatchAnswer<T> answer(Supposition supposition, Function<Seen, T> keep, BooleanSupplier stopped) {
            try {
                Machine machine = Machine.of(batch.healthy(), batch.arrangement(), supposition);
                return batch.fuses() == Batch.Fuses.MELT
                        ? settled(machine, supposition, keep, stopped)
                        : held(machine, supposition, keep, stopped);
            } catch (UnfitArrangement | UnfitSupposition e) {
                return new BatchAnswer.Unfit<>(supposition, String.valueOf(e.getMessage()));
            }
        }

        private <T> BatchAnswer<T> held(
                Machine machine, Supposition supposition, Function<Seen, T> keep, BooleanSupplier stopped)
                throws UnfitArrangement {
            Bench bench = Bench.of(machine.arranged(), machine.bare(), batch.meter());
            Solved<Seen> solved = bench.look(List.of(), near, stopped);
            if (!(solved instanceof Solved.Found<Seen> found)) {
                return new BatchAnswer.NotFound<>(supposition, Baseline.reason(solved));
            }
            long solves = found.value().work().solves();
            return read(new Last(machine, bench, found.value(), List.of(), solves), supposition, keep, stopped);
        }

        private <T> BatchAnswer<T> settled(
                Machine machine, Supposition supposition, Function<Seen, T> keep, BooleanSupplier stopped)
                throws UnfitArrangement {
            Set<String> open = Fates.openFromTheStart(batch.arrangement(), supposition);
            Solved<Settled> settling = Settled.of(machine, batch.meter(), near, open, stopped);
            if (!(settling instanceof Solved.Found<Settled> found)) {
                return new BatchAnswer.NotFound<>(supposition, Baseline.reason(settling));
            }
            Settled s = found.value();
            List<String> melted = s.melted().stream().map(c -> c.fuse().name()).toList();
            return read(new Last(s.machine(), s.bench(), s.seen(), melted, s.solves()), supposition, keep, stopped);
        }

        /** A machine with nothing left to melt. */
        private record Last(Machine machine, Bench bench, Seen seen, List<String> melted, long solves) {}

        private <T> BatchAnswer<T> read(
                Last last, Supposition supposition, Function<Seen, T> keep, BooleanSupplier stopped) {
            Seen seen = last.seen();
            if (!batch.checks().isEmpty()) {
                List<Check> here = last.machine().checksHere(batch.checks(), asArranged);
                List<String> refusals = here.stream()
                        .map(last.bench()::refusal)
                        .flatMap(Optional::stream)
                        .distinct()
                        .toList();
                if (!refusals.isEmpty()) {
                    return new BatchAnswer.Unfit<>(supposition, String.join("\n", refusals));
                }
                Solved<Seen> reading = last.bench().read(seen, here, stopped);
                if (!(reading instanceof Solved.Found<Seen> found)) {
                    return new BatchAnswer.NotFound<>(supposition, Baseline.reason(reading));
                }
                seen = found.value();
            }
            Work work = seen.work();
            Effort effort = new Effort(work.method(), work.passes(), last.solves(), work.residual());
            return new BatchAnswer.Found<>(supposition, keep.apply(seen), last.melted(), effort);
        }
    }
}
