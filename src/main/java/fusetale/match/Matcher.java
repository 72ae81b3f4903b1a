package fusetale.match;

import fusetale.bench.Arrangement;
import fusetale.bench.Meter;
import fusetale.bench.UnfitArrangement;
import fusetale.circuit.Circuit;
import fusetale.explore.Progress;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Finds out what is wrong with one machine. Works out what every supposition lets expect as it is asked for, keeps it, and
 * weighs it against what was read. May be used by one thread at a time; {@code stopped} may be set from any.
 */
public final class Matcher {
    /** Machines drawn to see how readings vary together. */
    private static final int DRAWS = 24;

    private static final int CHUNK = 8;
    private static final int FIRST_BOARDS = 16;
    /** Parts from a logic output through its transistors and a connector to what is driven. */
    private static final int ON_THE_WAY = 4;

    /** Of a share of two hundredths that keeps the power off, what a board must have to be asked for its part. */
    private static final double LEAST_DANGER = 1e-4;

    private static final double FIRST_SECONDS = 5;
    private static final double EACH_SECONDS = 4;
    private static final double NANOS = 1e9;

    private static final System.Logger LOG = System.getLogger(Matcher.class.getName());

    private final Circuit circuit;
    private final Workbench bench;
    private final @Nullable DictionaryFile file;
    private Workbench.@Nullable Weighing last;
    private @Nullable Findings lastFindings;
    private boolean whole;

    /**
     * How to work.
     *
     * @param threads machines to solve at once, 1 or more
     * @param seed of the drawn machines
     * @param cache folder in which to keep what was worked out; null for none
     */
    public record Settings(int threads, long seed, @Nullable Path cache) {}

    private Matcher(Circuit circuit, Workbench bench, @Nullable DictionaryFile file) {
        this.file = file;
        this.circuit = circuit;
        this.bench = bench;
    }

    /** For one machine. */
    public static Matcher of(Circuit circuit, Meter meter, Settings settings) {
        Workbench bench =
                new Workbench(circuit, meter, settings.threads(), DRAWS, settings.seed(), Hypotheses.of(circuit));
        Path folder = settings.cache();
        if (folder == null) {
            return new Matcher(circuit, bench, null);
        }
        DictionaryFile file = DictionaryFile.of(folder, circuit, meter + " " + DRAWS + " " + settings.seed());
        bench.recall(file.read());
        return new Matcher(circuit, bench, file);
    }

    /**
     * Weighs all suppositions. The first answer comes after a few seconds, from what was solved by then,
     * or at once from what an earlier run kept; each further one is
     * handed over as the dictionary grows; the last one, from the whole of it, is returned.
     *
     * @param sharper told each better answer, in the calling thread
     * @param progress told how many machines of how many are solved
     * @param stopped asked now and then; true ends the work with what there is
     * @throws UnfitArrangement where an arrangement of the findings does not fit the machine
     */
    public Ranking rank(Findings findings, Consumer<Ranking> sharper, Progress progress, BooleanSupplier stopped)
            throws UnfitArrangement {
        Case found = Case.of(findings);
        Sharpening sharpening = new Sharpening(findings, sharper, stopped);
        if (whole() && last == null) {
            // what an earlier run kept says most at once, before any arrangement is made ready
            sharpening.tellNow(() -> bench.weigh(found));
        } else if (!whole()) {
            // nine in ten commands are answered as they should be: the first answer does not wait for them
            asFound(found, bench.prepareUnanswered(found, stopped), FIRST_BOARDS, sharpening, progress);
        }
        List<Arrangement> arrangements = bench.prepare(found, stopped);
        asFound(found, arrangements, Integer.MAX_VALUE, sharpening, progress);
        Workbench.Weighing weighing = bench.likely(
                found,
                arrangements,
                b -> true,
                (answer, done, of) -> {
                    progress.at(done, of);
                    sharpening.tell(() -> answer);
                },
                stopped);
        bench.workPoweredNow(weighing.posterior().likelierThan(LEAST_DANGER), found, stopped);
        last = weighing;
        lastFindings = findings;
        return new Explanation(bench, weighing).ranking(howFar());
    }

    /** Suppositions as found, in the middle of their amounts: first what is frequent, and near what is out of order. */
    private void asFound(
            Case found, List<Arrangement> arrangements, int most, Sharpening sharpening, Progress progress) {
        if (whole()) {
            progress.at(bench.boards().listed(), bench.boards().listed());
            return;
        }
        Nearness nearness = new Nearness(circuit, bench.outOfOrder(found));
        // what does not answer when commanded is what one came for: what lies near its driver comes first, and
        // commanded
        List<Arrangement> unanswered = bench.commandsOutOfOrder(found, arrangements);
        Predicate<Boards.Board> asked = near(unanswered, nearness);
        List<Boards.Board> missing = bench.boards().list().stream()
                .filter(b -> b.middle() && !bench.known(b))
                .sorted(Comparator.comparing(asked::test)
                        .reversed()
                        .thenComparingDouble(
                                (Boards.Board b) -> -bench.boards().of(b).weight()
                                        * nearness.ratio(b.supposition().faults())))
                .toList();
        List<Arrangement> first = Workbench.first(arrangements);
        List<Arrangement> andCommanded =
                Stream.concat(first.stream(), unanswered.stream()).toList();
        int of = bench.boards().listed();
        int done = of - missing.size();
        progress.at(done, of);
        int end = Math.min(missing.size(), most);
        for (int from = 0; from < end && !sharpening.stopped.getAsBoolean(); from += CHUNK) {
            List<Boards.Board> some = missing.subList(from, Math.min(from + CHUNK, end));
            bench.work(some.stream().filter(asked).toList(), andCommanded, found, sharpening.stopped);
            bench.work(some, first, found, sharpening.stopped);
            bench.readily(some, arrangements, sharpening.stopped);
            done += some.size();
            progress.at(done, of);
            if (done < of) {
                sharpening.tell(() -> bench.weigh(found));
            }
        }
    }

    /** Boards with a fault on the way from the output of a driver that is commanded to what did not answer. */
    private Predicate<Boards.Board> near(List<Arrangement> commands, Nearness unanswered) {
        List<Nearness> drivers = commands.stream()
                .flatMap(a -> a.heldOn().stream())
                .map(bench.asks()::nearDriver)
                .toList();
        return b -> drivers.stream()
                .anyMatch(d -> d.parts(b.supposition().faults())
                                + unanswered.parts(b.supposition().faults())
                        <= ON_THE_WAY);
    }

    /** Hands better answers over as time goes by. */
    private final class Sharpening {
        private final Findings findings;
        private final Consumer<Ranking> sharper;
        private final BooleanSupplier stopped;
        private final long started = System.nanoTime();
        private double due = FIRST_SECONDS;

        Sharpening(Findings findings, Consumer<Ranking> sharper, BooleanSupplier stopped) {
            this.findings = findings;
            this.sharper = sharper;
            this.stopped = stopped;
        }

        void tell(Supplier<Workbench.Weighing> answer) {
            if ((System.nanoTime() - started) / NANOS > due) {
                tellNow(answer);
            }
        }

        void tellNow(Supplier<Workbench.Weighing> answer) {
            Workbench.Weighing weighing = answer.get();
            // whoever is told may ask at once what to measure next
            last = weighing;
            lastFindings = findings;
            sharper.accept(new Explanation(bench, weighing).ranking(howFar()));
            due = (System.nanoTime() - started) / NANOS + EACH_SECONDS;
        }
    }

    /**
     * Keeps on the disk what was worked out since it was last kept, for the next run; to be called when nobody waits. A disk that
     * takes nothing is no trouble: the next run works it out again.
     */
    public void keep() {
        DictionaryFile to = file;
        if (to != null && bench.dictionary().grown()) {
            try {
                to.write(bench.content());
            } catch (IOException e) {
                LOG.log(System.Logger.Level.DEBUG, "dictionary not kept", e);
            }
        }
    }

    private Ranking.HowFar howFar() {
        Set<Integer> hypotheses = new HashSet<>();
        int boards = 0;
        for (Boards.Board board : bench.boards().list()) {
            if (bench.known(board)) {
                boards++;
                hypotheses.add(board.hypothesis());
            }
        }
        int of = bench.boards().listed();
        return new Ranking.HowFar(hypotheses.size(), of, boards, Math.max(boards, boards + of - hypotheses.size()));
    }

    private Workbench.Weighing weighed(Findings findings, Progress progress, BooleanSupplier stopped)
            throws UnfitArrangement {
        if (!findings.equals(lastFindings)) {
            rank(findings, r -> {}, progress, stopped);
        }
        return java.util.Objects.requireNonNull(last);
    }

    /**
     * What to measure next.
     *
     * @param findings as given to {@link #rank} before
     * @param outOfReach points that cannot be reached on this machine
     * @param ruledOut asks the repairer does not want, such as one just refused
     * @throws UnfitArrangement where an arrangement of the findings does not fit the machine
     */
    public NextReadings next(
            Findings findings, Set<String> outOfReach, List<Ask> ruledOut, Progress progress, BooleanSupplier stopped)
            throws UnfitArrangement {
        Workbench.Weighing weighing = weighed(findings, progress, stopped);
        return new Planner(circuit, bench, weighing, whole(), progress, stopped)
                .next(
                        a -> reachable(a, outOfReach) && ruledOut.stream().noneMatch(r -> Case.sameAsk(r, a)),
                        powerMayBeOn(weighing));
    }

    /**
     * Repairs that nothing permitted tells apart, each group with what would part it. A ranking comes without them: they take
     * longer than it.
     *
     * @param findings as given to {@link #rank} before
     * @throws UnfitArrangement where an arrangement of the findings does not fit the machine
     */
    public List<LookAlike> lookAlikes(Findings findings, Progress progress, BooleanSupplier stopped)
            throws UnfitArrangement {
        Workbench.Weighing weighing = weighed(findings, progress, stopped);
        return new Planner(circuit, bench, weighing, whole(), progress, stopped).lookAlikes(powerMayBeOn(weighing));
    }

    /** Power is advised only where every supposition was looked at: what is not known yet may be the short that burns. */
    private boolean powerMayBeOn(Workbench.Weighing weighing) {
        return whole() && new Explanation(bench, weighing).danger().isEmpty();
    }

    /** Whether every supposition was looked at. */
    private boolean whole() {
        // what is known once stays so
        whole = whole || bench.boards().list().stream().allMatch(b -> !b.middle() || bench.known(b));
        return whole;
    }

    private static boolean reachable(Ask ask, Set<String> outOfReach) {
        return !(ask instanceof Ask.Metered m)
                || (!outOfReach.contains(m.check().from())
                        && !outOfReach.contains(m.check().to()));
    }
}
