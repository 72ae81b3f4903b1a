package fusetale.match;

import fusetale.bench.Arrangement;
import fusetale.bench.Check;
import fusetale.bench.Meter;
import fusetale.bench.Observation;
import fusetale.bench.UnfitArrangement;
import fusetale.circuit.Circuit;
import fusetale.circuit.MeterFunction;
import fusetale.fault.Fault;
import fusetale.fault.Supposition;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The boards of one machine with what has been worked out of each, and how they fit what was found. */
final class Workbench {
    /** What a coil or lamp does when its driver is commanded. */
    private static final Set<Observation.Sight> ANSWERS =
            EnumSet.of(Observation.Sight.PULLS_IN, Observation.Sight.HOLDS, Observation.Sight.LIT);

    /** Where more do not answer, it is the supply of all of them, and shows as found. */
    private static final int MOST_UNANSWERED = 2;

    private static final double OUT_OF_ORDER = 3;
    /** From here on of something else, or of a slip, two faults at once are compared. */
    private static final double PAIRS_FROM = 0.2;

    private static final double SLIP_FROM = 0.5;

    private final Boards boards;
    private final Dictionary dictionary;
    private final Asks asks;
    private final Beside beside;
    private final boolean sideBySide;
    private final Scales scales;
    private final Map<Wanted, Outlook> outlooks = new ConcurrentHashMap<>();
    private final Map<String, Contrast> contrasts = new ConcurrentHashMap<>();
    private final Circuit circuit;
    private final Refining refining;
    private final List<Trial> trials = new ArrayList<>();
    private final String asFoundKey;
    private final Map<Supposition, Integer> pairs = new HashMap<>();
    private DictionaryFile.Content before = DictionaryFile.Content.NOTHING;
    private final Map<String, Trial> mended = new ConcurrentHashMap<>();
    private final Map<Mended, Trial> after = new ConcurrentHashMap<>();

    /** A board after some parts were replaced; with other fuses blown than those it was taken to blow, where there are any. */
    private record Mended(int board, Renewed renewed, Set<String> otherwise) {}

    private @Nullable Readily lastReadily;

    /** Boards that were asked what they show without solving, and where. */
    private record Readily(List<Boards.Board> boards, List<String> arrangements) {}

    Workbench(Circuit circuit, Meter meter, int threads, int draws, long seed, List<Hypothesis> hypotheses) {
        this.boards = new Boards(hypotheses);
        this.dictionary = new Dictionary(circuit, meter, threads, draws, seed);
        this.asks = new Asks(circuit);
        this.beside = new Beside(circuit, asks);
        this.sideBySide = threads > 1;
        this.scales = new Scales(this, sideBySide);
        this.asFoundKey = Dictionary.key(dictionary.asFound());
        this.circuit = circuit;
        this.refining = new Refining(this, circuit);
        tryAll();
    }

    private void tryAll() {
        for (Boards.Board board :
                boards.all().subList(trials.size(), boards.all().size())) {
            Supposition supposition = board.supposition();
            trials.add(recalled(supposition.isNothing() ? dictionary.healthy() : new Trial(supposition, false)));
        }
    }

    /** Takes what an earlier run worked out. */
    void recall(DictionaryFile.Content content) {
        dictionary.recall(content.drawn());
        before = content;
        trials.forEach(this::recalled);
    }

    private Trial recalled(Trial trial) {
        before.trials().getOrDefault(trial.title(), Map.of()).forEach((key, shows) -> {
            if (trial.in(key).isEmpty()) {
                trial.add(key, shows);
            }
        });
        return trial;
    }

    /** What was worked out, for a later run. */
    DictionaryFile.Content content() {
        Map<String, Map<String, Trial.Shows>> kept = new LinkedHashMap<>();
        Stream.concat(mended.values().stream(), trials.stream())
                .filter(t -> !t.all().isEmpty())
                .forEach(t -> kept.put(t.title(), t.all()));
        return new DictionaryFile.Content(kept, dictionary.drawnSoFar());
    }

    Boards boards() {
        return boards;
    }

    /** Whether several threads may work at once. */
    boolean sideBySide() {
        return sideBySide;
    }

    Dictionary dictionary() {
        return dictionary;
    }

    Asks asks() {
        return asks;
    }

    Beside beside() {
        return beside;
    }

    Trial trial(Boards.Board board) {
        return trials.get(board.number());
    }

    /** Arrangements that the evidence needs, made ready. */
    List<Arrangement> prepare(Case findings, BooleanSupplier stopped) throws UnfitArrangement {
        return prepare(findings, key -> true, stopped);
    }

    /** The same without commands that were answered as a healthy machine answers them, which take longest. */
    List<Arrangement> prepareUnanswered(Case findings, BooleanSupplier stopped) throws UnfitArrangement {
        Set<String> unanswered = new LinkedHashSet<>();
        for (Evidence e : findings.evidence()) {
            if (e.ask() instanceof Ask.Noticed n
                    && n.arrangement().heldOn().contains(n.part())
                    && e.shown() instanceof Shown.Seen seen
                    && !ANSWERS.contains(seen.sight())) {
                unanswered.add(Dictionary.key(n.arrangement()));
            }
        }
        List<String> first = unanswered.stream().limit(MOST_UNANSWERED).toList();
        return prepare(findings, a -> a.heldOn().isEmpty() || first.contains(Dictionary.key(a)), stopped);
    }

    private List<Arrangement> prepare(Case findings, Predicate<Arrangement> wanted, BooleanSupplier stopped)
            throws UnfitArrangement {
        Arrangement asFound = dictionary.asFound();
        dictionary.prepare(asFound, asks.powerOn(), stopped);
        Map<String, List<Check>> checks = new LinkedHashMap<>();
        Map<String, Arrangement> arrangements = new LinkedHashMap<>();
        for (Evidence e : findings.evidence()) {
            if (!wanted.test(e.ask().arrangement())) {
                continue;
            }
            String key = Dictionary.key(e.ask().arrangement());
            arrangements.putIfAbsent(key, e.ask().arrangement());
            List<Check> of = checks.computeIfAbsent(key, k -> new ArrayList<>());
            if (e.ask() instanceof Ask.Metered m) {
                of.add(m.check());
            }
        }
        List<Dictionary.Asked> asked = new ArrayList<>();
        for (Map.Entry<String, Arrangement> a : arrangements.entrySet()) {
            List<Check> of = new ArrayList<>(checks.getOrDefault(a.getKey(), List.of()));
            // what is only looked at needs no meter
            boolean measured = !of.isEmpty() && of.stream().noneMatch(c -> c.function() == MeterFunction.DC_AMPS);
            if (a.getValue().powerOn() && measured) {
                of.addAll(asks.powerOn());
            }
            asked.add(new Dictionary.Asked(a.getValue(), of));
        }
        dictionary.prepare(asked, stopped);
        for (Map.Entry<String, Arrangement> a : arrangements.entrySet()) {
            dictionary.draw(a.getValue(), checks.getOrDefault(a.getKey(), List.of()), stopped);
        }
        return List.copyOf(arrangements.values());
    }

    /** The machine of a board after parts were replaced, its fuses as they have come out. */
    Trial after(Boards.Board board, Renewed renewed, Way way) {
        Trial once = after(board, renewed, way == Way.AS_TAKEN ? Set.of() : blownOtherwise(board));
        if (way != Way.OTHERWISE_AGAIN || renewed.isNothing() || !renewed.switchedOn()) {
            return once;
        }
        Set<String> again = blownOtherwise(once);
        return again.isEmpty() ? once : made(once.supposition().faults(), again, false);
    }

    /** How its fuses may have come out by what was found, {@link Way#AS_TAKEN} first; that alone where it is certain. */
    List<Way> ways(Boards.Board board, Collection<Renewed> spells) {
        List<Way> ways = new ArrayList<>();
        ways.add(Way.AS_TAKEN);
        if (!blownOtherwise(board).isEmpty()) {
            ways.add(Way.OTHERWISE);
        }
        if (spells.stream()
                .filter(r -> !r.isNothing())
                .anyMatch(r -> !after(board, r, Way.OTHERWISE_AGAIN).equals(after(board, r, Way.OTHERWISE)))) {
            ways.add(Way.OTHERWISE_AGAIN);
        }
        return ways;
    }

    /** The machine of a board after parts were replaced. */
    Trial after(Boards.Board board, Renewed renewed) {
        return after(board, renewed, Set.of());
    }

    private Trial after(Boards.Board board, Renewed renewed, Set<String> otherwise) {
        Trial trial = trial(board);
        if (renewed.isNothing() && otherwise.isEmpty()) {
            return trial;
        }
        return trial.in(asFoundKey).isEmpty()
                ? madeAfter(board, renewed, otherwise)
                : after.computeIfAbsent(
                        new Mended(board.number(), renewed, otherwise), m -> madeAfter(board, renewed, otherwise));
    }

    /** Boards that come to the same are one; what was replaced where nothing was wrong leaves a board as it was. */
    private Trial madeAfter(Boards.Board board, Renewed renewed, Set<String> otherwise) {
        Trial trial = trial(board);
        Set<String> blown = new HashSet<>(otherwise.isEmpty() ? trial.blown(asFoundKey) : otherwise);
        blown.removeAll(renewed.parts());
        List<Fault> left = board.supposition().faults().stream()
                .filter(f -> !renewed.parts().contains(f.part()))
                .toList();
        boolean asItWas = left.equals(board.supposition().faults())
                && blown.isEmpty()
                && trial.in(asFoundKey)
                        .filter(s -> s.melted().isEmpty() && s.mayMelt().isEmpty())
                        .isPresent();
        if (asItWas) {
            return trial;
        }
        return made(left, blown, !renewed.switchedOn());
    }

    private Trial made(List<Fault> left, Set<String> blown, boolean rested) {
        String key = left + " after " + blown.stream().sorted().toList() + (rested ? " at rest" : "");
        return mended.computeIfAbsent(key, k -> recalled(new Trial(Trial.after(left, blown), rested)));
    }

    /**
     * Which fuses are blown once the machine has been on, where it is not certain (decision 5 of the design): one more, that may have
     * melted or may have held; else one that may have melted sooner than what was taken to melt, and ended the current. Both ways are
     * weighed. Empty where it is certain.
     */
    Set<String> blownOtherwise(Boards.Board board) {
        return blownOtherwise(trial(board));
    }

    private Set<String> blownOtherwise(Trial trial) {
        Trial.Shows shows = trial.in(asFoundKey).orElse(Trial.Shows.UNSOLVED);
        if (!shows.mayMelt().isEmpty()) {
            Set<String> blown = new HashSet<>(trial.blown(asFoundKey));
            blown.add(shows.mayMelt().get(0));
            return blown;
        }
        return shows.instead().isEmpty() ? Set.of() : Set.of(shows.instead().get(0));
    }

    /**
     * Works out boards in arrangements, as they were found and as they are after repairs. Middle amounts come first, then the
     * ends of their range; what lies between two that look and read alike looks and reads like them.
     */
    void work(List<Boards.Board> some, List<Arrangement> arrangements, Case findings, BooleanSupplier stopped) {
        List<Boards.Board> between = some.stream().filter(Boards.Board::between).toList();
        solve(some.stream().filter(Boards.Board::middle).toList(), arrangements, findings, stopped);
        solve(some.stream().filter(b -> !b.middle() && !b.between()).toList(), arrangements, findings, stopped);
        between.forEach(b -> borrow(b, dictionary.asFound()));
        solve(between, List.of(), findings, stopped);
        for (Arrangement arrangement : arrangements) {
            between.forEach(b -> borrow(b, arrangement));
        }
        solve(between, arrangements, findings, stopped);
    }

    /** What drivers commanded show of boards whose fault lies elsewhere: known at once. */
    void readily(List<Boards.Board> some, List<Arrangement> arrangements, BooleanSupplier stopped) {
        dictionary.readily(some.stream().map(this::trial).toList(), arrangements, stopped);
    }

    /** The same, unless just these were asked of just these arrangements the last time. */
    void readilyOnce(List<Boards.Board> some, List<Arrangement> arrangements, BooleanSupplier stopped) {
        Readily now =
                new Readily(some, arrangements.stream().map(Dictionary::key).toList());
        if (!now.equals(lastReadily)) {
            readily(some, arrangements, stopped);
            lastReadily = stopped.getAsBoolean() ? null : now;
        }
    }

    private void borrow(Boards.Board board, Arrangement arrangement) {
        List<Boards.Board> all = boards.of(board.hypothesis());
        dictionary.borrow(
                trial(board), trial(all.get(board.place() - 1)), trial(all.get(board.place() + 1)), arrangement);
    }

    private void solve(
            List<Boards.Board> some, List<Arrangement> arrangements, Case findings, BooleanSupplier stopped) {
        dictionary.work(some.stream().map(this::trial).toList(), arrangements, stopped);
        Set<Renewed> spells = new LinkedHashSet<>(findings.renewals());
        spells.add(Renewed.NOTHING);
        // whether a new fuse may have melted as well is known once it is known what the machine with it does
        solve(some, spells, List.of(Way.AS_TAKEN, Way.OTHERWISE), arrangements, stopped);
        spells.remove(Renewed.NOTHING);
        solve(some, spells, List.of(Way.OTHERWISE_AGAIN), arrangements, stopped);
    }

    private void solve(
            List<Boards.Board> some,
            Set<Renewed> spells,
            List<Way> ways,
            List<Arrangement> arrangements,
            BooleanSupplier stopped) {
        List<Trial> later = spells.stream()
                .flatMap(r -> some.stream().flatMap(b -> ways.stream().map(w -> after(b, r, w))))
                .distinct()
                .toList();
        dictionary.work(later, arrangements, stopped);
    }

    /** Works out what boards come to on full power with all that is new by now: a danger goes by that. */
    void workPoweredNow(List<Boards.Board> some, Case findings, BooleanSupplier stopped) {
        List<Boards.Board> missing = some.stream()
                .filter(b -> after(b, findings.now()).in(asFoundKey).isEmpty())
                .toList();
        if (!missing.isEmpty()) {
            solve(missing, List.of(), findings, stopped);
        }
    }

    /** Points and parts at which something was found that a healthy machine does not show. */
    Set<String> outOfOrder(Case findings) {
        Set<String> points = new HashSet<>();
        for (Ask ask : asksOutOfOrder(findings)) {
            if (ask instanceof Ask.Metered m) {
                points.add(m.check().from());
                points.add(m.check().to());
            } else if (ask instanceof Ask.Noticed n) {
                points.add(n.part());
            }
        }
        return points;
    }

    /** Commands under which something was found that a healthy machine does not show, as they were prepared. */
    List<Arrangement> commandsOutOfOrder(Case findings, List<Arrangement> prepared) {
        Set<String> keys = asksOutOfOrder(findings).stream()
                .map(a -> Dictionary.key(a.arrangement()))
                .collect(Collectors.toSet());
        return prepared.stream()
                .filter(a -> !a.heldOn().isEmpty() && keys.contains(Dictionary.key(a)))
                .limit(MOST_UNANSWERED)
                .toList();
    }

    private List<Ask> asksOutOfOrder(Case findings) {
        double[] away = scales.away(findings);
        List<Ask> all = new ArrayList<>();
        for (int j = 0; j < away.length; j++) {
            if (Math.abs(away[j]) > OUT_OF_ORDER) {
                all.add(findings.evidence().get(j).ask());
            }
        }
        return all;
    }

    /** Whether it is known what a board shows as found, which is the least. */
    boolean known(Boards.Board board) {
        return trial(board).in(asFoundKey).isPresent();
    }

    /** Whether something that the evidence asks of a board was never worked out. */
    boolean lacks(Boards.Board board, Case findings) {
        for (int j = 0; j < findings.size(); j++) {
            Renewed renewed = findings.renewed().get(j);
            Wanted wanted = findings.wanted().get(j);
            if (ways(board, List.of(renewed)).stream().anyMatch(w -> lacks(after(board, renewed, w), wanted))) {
                return true;
            }
        }
        return false;
    }

    private static boolean lacks(Trial trial, Wanted wanted) {
        Trial.Shows shows = trial.in(wanted.bench()).orElse(null);
        if (shows == null) {
            return true;
        }
        boolean there = wanted.ask() instanceof Ask.Metered m
                ? shows.readings().containsKey(m.check())
                : shows.sights().containsKey(wanted.sight());
        return shows.solvable() && !there;
    }

    /** What boards on which nothing was replaced let expect of an ask. */
    Outlook outlook(Wanted ask) {
        return outlooks.computeIfAbsent(ask, a -> new Outlook(this, a));
    }

    /** What tells hypotheses from the healthy machine in an arrangement, parts that are new by now taken into account. */
    Contrast contrast(String arrangement, Collection<Integer> hypotheses, Renewed renewed) {
        return renewed.isNothing()
                ? Objects.requireNonNull(contrasts.compute(
                        arrangement,
                        (a, known) -> (known == null ? Contrast.of(a) : known).upToDate(this, hypotheses, renewed)))
                : Contrast.of(arrangement).upToDate(this, hypotheses, renewed);
    }

    /** What a board lets expect of an ask, its fuses as they were taken to come out. */
    Expectation expect(Boards.Board board, Wanted ask, Renewed renewed) {
        return expect(board, ask, renewed, Way.AS_TAKEN);
    }

    /** What a board lets expect of an ask, its fuses as they have come out. */
    Expectation expect(Boards.Board board, Wanted ask, Renewed renewed, Way way) {
        // what is looked at has no slope
        boolean varies = ask.ask() instanceof Ask.Metered && boards.of(board).varies();
        return Expectation.of(
                ask,
                after(board, renewed, way),
                dictionary.healthy(),
                varies ? neighbour(board, -1, renewed, way) : null,
                varies ? neighbour(board, +1, renewed, way) : null,
                varies);
    }

    private @Nullable Trial neighbour(Boards.Board board, int by, Renewed renewed, Way way) {
        int place = board.place() + by;
        if (place < 0 || place >= Boards.PLACES) {
            return null;
        }
        Boards.Board next = boards.of(board.hypothesis()).get(place);
        List<Renewed> then = List.of(renewed);
        boolean alike = way == Way.AS_TAKEN || ways(next, then).equals(ways(board, then));
        return alike ? after(next, renewed, way) : null;
    }

    double[] drawn(Ask ask) {
        double[] away = ask instanceof Ask.Metered m ? dictionary.drawn(m) : null;
        return away == null ? new double[0] : away;
    }

    /** Changes whenever more is worked out of what {@link #expect} looks at, parts replaced left aside. */
    long stamp(Boards.Board board) {
        long stamp = trial(board).grown() + ((long) dictionary.healthy().grown() << Integer.SIZE);
        if (boards.of(board).varies()) {
            for (Boards.Board beside : boards.of(board.hypothesis())) {
                stamp += beside.number() == board.number() ? 0 : trial(beside).grown();
            }
        }
        return stamp;
    }

    /** Weighs all boards of the list of which it is known what they show as found. */
    Weighing weigh(Case findings) {
        return weigh(findings, boards::fromTheStart);
    }

    /** Weighs boards of which it is known what they show as found. */
    Weighing weigh(Case findings, Predicate<Boards.Board> listed) {
        return scales.weigh(findings, listed);
    }

    /**
     * What is worked out of every board, whatever it shows as found. Drivers commanded come later, and only of boards that are
     * still likely then.
     */
    static List<Arrangement> first(List<Arrangement> arrangements) {
        return arrangements.stream().filter(a -> a.heldOn().isEmpty()).toList();
    }

    /**
     * Weighs, and works out what the evidence asks of boards that are still likely, until no other could become so. Where one
     * fault leaves something unexplained, two at once are compared as well.
     *
     * @param listed which boards are compared at all
     * @param sharper told each better answer, in the calling thread
     */
    Weighing likely(
            Case findings,
            List<Arrangement> arrangements,
            Predicate<Boards.Board> listed,
            Sharper sharper,
            BooleanSupplier stopped) {
        Predicate<Boards.Board> singles = listed.and(boards::fromTheStart);
        Weighing weighing = refining.settled(findings, arrangements, singles, sharper, stopped);
        boolean slip = Arrays.stream(weighing.posterior().suspicion()).anyMatch(x -> x > SLIP_FROM);
        if (!(slip || weighing.posterior().somethingElse() > PAIRS_FROM) || stopped.getAsBoolean()) {
            return weighing;
        }
        Set<Integer> pairs = pairs(weighing, arrangements, stopped);
        return pairs.isEmpty()
                ? weighing
                : refining.settled(
                        findings, arrangements, singles.or(b -> pairs.contains(b.hypothesis())), sharper, stopped);
    }

    /** Each pair is made once, and compared only where it was called for. */
    private Set<Integer> pairs(Weighing weighing, List<Arrangement> arrangements, BooleanSupplier stopped) {
        Set<Integer> numbers = new LinkedHashSet<>();
        for (Hypothesis both : new Doubles(circuit, boards, weighing.posterior(), weighing.common()).all()) {
            numbers.add(pairs.computeIfAbsent(both.usual(), s -> {
                boards.add(both);
                return boards.hypotheses().size() - 1;
            }));
        }
        tryAll();
        List<Boards.Board> fresh =
                numbers.stream().flatMap(h -> boards.of(h).stream()).toList();
        work(fresh.stream().filter(Boards.Board::middle).toList(), first(arrangements), weighing.findings(), stopped);
        return numbers;
    }

    /** Told how far the work has come, with the answer until then. */
    interface Sharper {
        /** For whoever waits for the end. */
        Sharper NOBODY = (weighing, done, of) -> {};

        /** Called before each round. */
        void told(Weighing weighing, int done, int of);
    }

    /**
     * The outcome of weighing.
     *
     * @param posterior of the boards that were known
     */
    record Weighing(Case findings, Common common, Posterior posterior) {}
}
