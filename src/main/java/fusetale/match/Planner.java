package fusetale.match;

import fusetale.bench.Arrangement;
import fusetale.bench.Check;
import fusetale.bench.Observation;
import fusetale.bench.UnfitArrangement;
import fusetale.circuit.Circuit;
import fusetale.circuit.Fuse;
import fusetale.circuit.Part;
import fusetale.explore.Words;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import java.util.random.RandomGenerator;
import org.jspecify.annotations.Nullable;

/**
 * Chooses what to ask next: most information about what to change for a minute's work, among what tells at least half as
 * much as the best. Greedy; within a few hundredths of the optimum where that can be computed (see the evaluation).
 */
final class Planner {
    /** Boards worth looking at: enough for nearly all of what is likely. */
    private static final int MOST_ALIVE = 60;

    private static final double LEAST_ALIVE = 2e-4;
    /** Sections are commanded, and parts taken apart, for so many of them. */
    private static final int MOST_COMMANDED = 12;

    /** Parts from a logic output through its transistors to what they drive. */
    private static final int NEAR_A_DRIVER = 3;

    private static final double HALF = 0.5;
    /** Below this nothing more is to be learnt [bit]. */
    static final double LEAST_BITS = 0.05;

    private static final double SURE = 0.95;
    private static final double REPLACE_FROM = 0.5;
    private static final int MOST_ADVICE = 12;
    private static final int DRAWN = 24;
    private static final double TAKEN_APART = 0.5;
    private static final double ALIKE_FROM = 0.02;

    private static final Words WORDS = Words.of(Planner.class);

    private final Circuit circuit;
    private final Workbench bench;
    private final Workbench.Weighing weighing;
    private final Normal normal = new Normal();
    private final Costs costs;
    private final List<Place> alive = new ArrayList<>();
    private final List<Repair> groups = new ArrayList<>();
    private final BooleanSupplier stopped;
    /** How drawn machines stand at what was read. */
    private final double[][] drawnOfEvidence;

    /**
     * A board that is still likely.
     *
     * @param group of its repair
     */
    private record Place(
            Boards.Board board,
            double share,
            int group,
            @Nullable Given given) {}

    Planner(Circuit circuit, Workbench bench, Workbench.Weighing weighing, BooleanSupplier stopped) {
        this.circuit = circuit;
        this.bench = bench;
        this.weighing = weighing;
        this.stopped = stopped;
        Case findings = weighing.findings();
        Arrangement now = findings.size() == 0
                ? Arrangement.unpowered()
                : findings.evidence().get(findings.size() - 1).ask().arrangement();
        this.costs = new Costs(circuit, now);
        this.drawnOfEvidence =
                findings.evidence().stream().map(e -> bench.drawn(e.ask())).toArray(double[][]::new);
        collectAlive();
    }

    private void collectAlive() {
        Posterior p = weighing.posterior();
        Integer[] order = new Integer[p.shares().length];
        Arrays.setAll(order, k -> k);
        Arrays.sort(order, Comparator.comparingDouble((Integer k) -> -p.shares()[k]));
        Map<Repair, Integer> places = new LinkedHashMap<>();
        double sum = 0;
        List<Integer> kept = new ArrayList<>();
        for (int k : order) {
            if (kept.size() >= MOST_ALIVE || p.shares()[k] < LEAST_ALIVE) {
                break;
            }
            kept.add(k);
            sum += p.shares()[k];
        }
        for (int k : kept) {
            Boards.Board board = p.boards().get(k);
            Repair repair = bench.boards().of(board).repair();
            int group = places.computeIfAbsent(repair, r -> places.size());
            alive.add(new Place(
                    board, p.shares()[k] / sum, group, Given.of(p.fits().get(k), weighing.common())));
        }
        groups.addAll(places.keySet());
    }

    private List<Boards.Board> boards(int most) {
        return alive.stream().limit(most).map(Place::board).toList();
    }

    /** What to do next. */
    NextReadings next(Predicate<Ask> wanted, boolean powered) throws UnfitArrangement {
        List<Scored> scored = scored(wanted, powered);
        double most = scored.stream().mapToDouble(Scored::bits).max().orElse(0);
        List<Advice> advice = scored.stream()
                .filter(s -> s.bits() >= HALF * most && s.bits() >= LEAST_BITS)
                .sorted(Comparator.comparingDouble((Scored s) -> -s.bits() / costs.minutes(s.ask())))
                .limit(MOST_ADVICE)
                .map(this::advice)
                .toList();
        Map<Repair, Double> repairs = weighing.posterior().repairs(bench.boards());
        double best = repairs.values().stream().findFirst().orElse(0.0);
        boolean suspect = Arrays.stream(weighing.posterior().suspicion()).anyMatch(s -> s > HALF);
        NextReadings.Verdict verdict = suspect
                ? NextReadings.Verdict.REPEAT
                : best >= SURE
                        ? NextReadings.Verdict.SETTLED
                        : advice.isEmpty() ? NextReadings.Verdict.NO_MORE_TO_LEARN : NextReadings.Verdict.GO_ON;
        Advice confirm = scored.stream()
                .max(Comparator.comparingDouble(s -> refutes(s.foresight())))
                .map(this::advice)
                .orElse(null);
        return new NextReadings(advice, verdict, replace(repairs, advice), confirm);
    }

    /** One of all permitted asks, whatever it tells: to compare with. */
    Optional<Advice> any(RandomGenerator random, boolean powered) throws UnfitArrangement {
        List<Ask> all = new ArrayList<>(prepared(powered));
        while (!all.isEmpty()) {
            Optional<Scored> one = scored(all.remove(random.nextInt(all.size())));
            if (one.isPresent()) {
                return one.map(this::advice);
            }
        }
        return Optional.empty();
    }

    /** The one that tells most, whatever it costs: to compare with. */
    Optional<Advice> most(boolean powered) throws UnfitArrangement {
        return scored(a -> true, powered).stream()
                .findFirst()
                .filter(s -> s.bits() >= LEAST_BITS)
                .map(this::advice);
    }

    /** An ask with what it would show and tell. */
    private record Scored(Ask ask, Foresight foresight, double bits) {}

    private List<Scored> scored(Predicate<Ask> wanted, boolean powered) throws UnfitArrangement {
        List<Ask> all = prepared(powered).stream().filter(wanted).toList();
        List<Scored> first = new ArrayList<>();
        for (Ask ask : all) {
            if (stopped.getAsBoolean()) {
                break;
            }
            scored(ask).ifPresent(first::add);
        }
        first.sort(Comparator.comparingDouble(Scored::bits).reversed());
        // what leads is looked at once more with how it varies over good machines
        Map<String, List<Check>> toDraw = new LinkedHashMap<>();
        Map<String, Arrangement> of = new LinkedHashMap<>();
        first.stream().limit(DRAWN).forEach(s -> {
            if (s.ask() instanceof Ask.Metered m && bench.dictionary().drawn(m) == null) {
                String key = Dictionary.key(m.arrangement());
                of.put(key, m.arrangement());
                toDraw.computeIfAbsent(key, k -> new ArrayList<>()).add(m.check());
            }
        });
        for (Map.Entry<String, List<Check>> e : toDraw.entrySet()) {
            bench.dictionary().draw(Objects.requireNonNull(of.get(e.getKey())), e.getValue(), stopped);
        }
        if (toDraw.isEmpty()) {
            return first;
        }
        List<Scored> again = new ArrayList<>();
        for (int k = 0; k < first.size(); k++) {
            Scored s = first.get(k);
            if (k < DRAWN) {
                scored(s.ask()).ifPresent(again::add);
            } else {
                again.add(s);
            }
        }
        again.sort(Comparator.comparingDouble(Scored::bits).reversed());
        return again;
    }

    /** All asks that are permitted, with everything worked out that they need. */
    private List<Ask> prepared(boolean powered) throws UnfitArrangement {
        Dictionary d = bench.dictionary();
        List<Ask> asks = new ArrayList<>();
        Arrangement off = Arrangement.unpowered();
        List<Check> offChecks = bench.asks().powerOff();
        d.prepare(off, offChecks, stopped);
        offChecks.forEach(c -> asks.add(new Ask.Metered(off, c)));
        for (Part part : circuit.parts()) {
            if (part instanceof Fuse) {
                asks.add(new Ask.Noticed(off, part.name(), Observation.Aspect.FUSE));
            }
        }
        if (powered) {
            Arrangement on = d.asFound();
            bench.asks().powerOn().forEach(c -> asks.add(new Ask.Metered(on, c)));
            sights(on).forEach(asks::add);
        }
        bench.work(boards(MOST_ALIVE), List.of(off), weighing.findings(), stopped);
        if (powered) {
            for (Map.Entry<String, Arrangement> command :
                    bench.asks().commands(d.asFound()).entrySet()) {
                if (concerned(command.getKey())) {
                    d.prepare(command.getValue(), bench.asks().powerOn(), stopped);
                    bench.work(boards(MOST_COMMANDED), List.of(command.getValue()), weighing.findings(), stopped);
                    sights(command.getValue()).forEach(asks::add);
                    bench.asks().powerOn().forEach(c -> asks.add(new Ask.Metered(command.getValue(), c)));
                }
            }
        }
        Set<String> taken = new HashSet<>();
        weighing.findings().wanted().forEach(w -> taken.add(w.bench() + w.ask().words()));
        asks.removeIf(a -> taken.contains(Dictionary.key(a.arrangement()) + a.words()));
        return asks;
    }

    /** Whether a likely board lies near the driver of a coil or lamp: near enough to be told apart by commanding it. */
    private boolean concerned(String driven) {
        Nearness nearness = new Nearness(circuit, bench.asks().driver(driven));
        return alive.stream()
                .limit(MOST_COMMANDED)
                .anyMatch(p ->
                        nearness.within(NEAR_A_DRIVER, p.board().supposition().faults()));
    }

    private List<Ask> sights(Arrangement arrangement) {
        return bench.dictionary().healthy().in(Dictionary.key(arrangement)).stream()
                .flatMap(s -> s.sights().values().stream())
                .<Ask>map(o -> new Ask.Noticed(arrangement, o.part(), o.sight().aspect()))
                .toList();
    }

    private Optional<Scored> scored(Ask ask) {
        Wanted wanted = Wanted.of(ask);
        List<Foresight.Alive> shown = new ArrayList<>();
        double known = 0;
        double[] drawn = bench.drawn(ask);
        double own = Common.covariance(drawn, drawn);
        double[] shared = new double[drawnOfEvidence.length];
        for (int j = 0; j < shared.length; j++) {
            shared[j] = Common.covariance(drawn, drawnOfEvidence[j]);
        }
        Set<String> replaced = replacedNow();
        for (Place place : alive) {
            Expectation e = bench.expect(place.board(), wanted, replaced);
            double mean = e.middle();
            double variance = e.ownVariance() + own + e.slope() * e.slope() / 12;
            if (e.kind() == Expectation.Kind.FIGURE && place.given() != null) {
                Given.Law law = place.given().law(shared, drawn.length, e.slope());
                mean += law.shift();
                variance = Math.max(e.ownVariance(), variance - law.explained());
            }
            known += e.kind() == Expectation.Kind.UNKNOWN ? 0 : place.share();
            shown.add(new Foresight.Alive(place.group(), place.share(), e, mean, Math.sqrt(variance)));
        }
        if (known < HALF) {
            return Optional.empty();
        }
        Foresight foresight = Foresight.of(shown, groups, normal);
        return Optional.of(new Scored(ask, foresight, foresight.gain()));
    }

    private Set<String> replacedNow() {
        Case findings = weighing.findings();
        return findings.size() == 0 ? Set.of() : findings.replaced().get(findings.size() - 1);
    }

    /** How likely an ask is to refute the leader: how differently the others look there. */
    private double refutes(Foresight foresight) {
        double most = 0;
        for (int g = 1; g < groups.size(); g++) {
            most = Math.max(most, foresight.apart(0, g));
        }
        return most;
    }

    private Advice advice(Scored scored) {
        Ask ask = scored.ask();
        return new Advice(
                ask,
                costs.deeds(ask.arrangement()),
                costs.minutes(ask),
                scored.bits(),
                new Meanings(scored.foresight(), ask).all(),
                cautions(ask));
    }

    private List<String> cautions(Ask ask) {
        List<String> all = new ArrayList<>();
        if (!ask.arrangement().powerOn() && ask instanceof Ask.Metered) {
            all.add(WORDS.say("caution.discharge"));
        }
        if (ask instanceof Ask.Metered m && ask.arrangement().powerOn()) {
            double volts = bench.dictionary()
                    .healthy()
                    .in(Dictionary.key(ask.arrangement()))
                    .map(s -> s.readings().get(m.check()))
                    .map(r -> Math.abs(r.value()))
                    .orElse(0.0);
            if (volts > Costs.TOUCH_VOLTS) {
                all.add(WORDS.say(
                        "caution.volts",
                        Explanation.figure(m.check(), Axis.at(m.check().function(), volts))));
            }
        }
        return all;
    }

    /** Where trying the leader is quicker than proving it. */
    private String replace(Map<Repair, Double> repairs, List<Advice> advice) {
        Optional<Map.Entry<Repair, Double>> leader = repairs.entrySet().stream().findFirst();
        if (leader.isEmpty()
                || advice.isEmpty()
                || leader.get().getKey().isNothing()
                || leader.get().getValue() < REPLACE_FROM
                || leader.get().getValue() >= SURE) {
            return "";
        }
        double minutes = costs.replacing(leader.get().getKey());
        double[] shares =
                repairs.values().stream().mapToDouble(Double::doubleValue).toArray();
        Advice best = advice.get(0);
        double proving = best.minutes() * Math.max(1, Gain.entropy(shares) / Math.max(best.bits(), LEAST_BITS));
        return minutes < proving * leader.get().getValue()
                ? WORDS.say("replace", leader.get().getKey().words(), Costs.said(minutes), Costs.said(proving))
                : "";
    }

    /** Groups of repairs that nothing permitted tells apart, each with what would. */
    List<LookAlike> lookAlikes(boolean powered) throws UnfitArrangement {
        List<Ask> asks = prepared(powered);
        List<Foresight> foresights = new ArrayList<>();
        for (Ask ask : asks) {
            scored(ask).map(Scored::foresight).ifPresent(foresights::add);
        }
        double[] shares = new double[groups.size()];
        alive.forEach(p -> shares[p.group()] += p.share());
        List<LookAlike> all = new ArrayList<>();
        boolean[] taken = new boolean[groups.size()];
        for (int g = 0; g < groups.size(); g++) {
            if (taken[g] || shares[g] < ALIKE_FROM) {
                continue;
            }
            List<Integer> group = new ArrayList<>(List.of(g));
            for (int other = g + 1; other < groups.size(); other++) {
                int candidate = other;
                boolean alike = !taken[other]
                        && shares[other] >= ALIKE_FROM
                        && group.stream().allMatch(m -> alike(foresights, m, candidate));
                if (alike) {
                    group.add(other);
                    taken[other] = true;
                }
            }
            if (group.size() > 1) {
                all.add(new LookAlike(
                        group.stream().map(groups::get).toList(),
                        Math.min(1, group.stream().mapToDouble(m -> shares[m]).sum()),
                        partedBy(group)));
            }
        }
        return all;
    }

    private static boolean alike(List<Foresight> foresights, int one, int other) {
        return foresights.stream().noneMatch(f -> f.apart(one, other) >= TAKEN_APART);
    }

    /** The best of lifting a lead of one of the parts, and of taking sections apart. */
    private List<Advice> partedBy(List<Integer> group) throws UnfitArrangement {
        List<Ask> isolating = new ArrayList<>();
        for (int g : group) {
            for (String part : groups.get(g).parts()) {
                isolating.addAll(bench.asks().lifted(part));
                for (Arrangement apart : bench.asks().takenApart()) {
                    circuit.part(part)
                            .ifPresent(
                                    p -> bench.asks().across(p).forEach(c -> isolating.add(new Ask.Metered(apart, c))));
                }
            }
        }
        Map<String, Arrangement> arrangements = new LinkedHashMap<>();
        Map<String, List<Check>> checks = new LinkedHashMap<>();
        for (Ask ask : isolating) {
            String key = Dictionary.key(ask.arrangement());
            arrangements.put(key, ask.arrangement());
            checks.computeIfAbsent(key, k -> new ArrayList<>()).add(((Ask.Metered) ask).check());
        }
        List<Boards.Board> concerned = alive.stream()
                .filter(p -> group.contains(p.group()))
                .map(Place::board)
                .toList();
        for (Map.Entry<String, Arrangement> a : arrangements.entrySet()) {
            bench.dictionary().prepare(a.getValue(), checks.getOrDefault(a.getKey(), List.of()), stopped);
            bench.work(concerned, List.of(a.getValue()), weighing.findings(), stopped);
        }
        int one = group.get(0);
        int other = group.get(1);
        return isolating.stream()
                .flatMap(a -> parting(a, group).stream())
                .filter(s -> s.foresight().apart(one, other) >= TAKEN_APART)
                .sorted(Comparator.comparingDouble(s -> costs.minutes(s.ask())))
                .limit(2)
                .map(this::advice)
                .toList();
    }

    private Optional<Scored> parting(Ask ask, List<Integer> group) {
        Wanted wanted = Wanted.of(ask);
        List<Foresight.Alive> shown = new ArrayList<>();
        for (Place place : alive) {
            if (group.contains(place.group())) {
                Expectation e = bench.expect(place.board(), wanted, replacedNow());
                shown.add(new Foresight.Alive(
                        place.group(), place.share(), e, e.middle(), Math.sqrt(e.ownVariance() + 1e-3)));
            }
        }
        if (shown.stream().allMatch(a -> a.expectation().kind() == Expectation.Kind.UNKNOWN)) {
            return Optional.empty();
        }
        Foresight foresight = Foresight.of(shown, groups, normal);
        return Optional.of(new Scored(ask, foresight, foresight.gain()));
    }
}
