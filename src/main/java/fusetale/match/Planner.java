package fusetale.match;

import fusetale.bench.Arrangement;
import fusetale.bench.Check;
import fusetale.bench.Observation;
import fusetale.bench.UnfitArrangement;
import fusetale.circuit.Circuit;
import fusetale.circuit.Fuse;
import fusetale.circuit.MeterFunction;
import fusetale.circuit.Part;
import fusetale.explore.Progress;
import fusetale.explore.Words;
import fusetale.fault.FailureMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.random.RandomGenerator;
import java.util.stream.Stream;

/**
 * Chooses what to ask next: most information about what to change for a minute's work, among what tells at least half as
 * much as the best. Greedy; within a few hundredths of the optimum where that can be computed (see the evaluation).
 */
final class Planner {
    /** Boards that carry so much of what is likely are taken apart with the power off: the rest tells next to nothing. */
    private static final double WEIGHED = 0.95;
    /** And never more: where so many are as likely as each other, no one reading tells much. */
    private static final int MOST_TAKEN_APART = 320;

    /** As many are, while the dictionary still grows. */
    private static final int FIRST_BOARDS = 60;
    /** Boards that are looked at with a driver commanded or a lamp in series: those that lie near, likeliest first. */
    private static final int MOST_COMMANDED = 40;

    private static final int AT_ONCE = 16;

    private static final int MOST_COMMANDS = 3;
    /** A driver is worth commanding where so much of what is likely lies near it. */
    private static final double WORTH_COMMANDING = 0.05;
    /**
     * Nothing is commanded whose driver is shorted with more than this probability; nor, but through a lamp, what takes a fuse or a part
     * along with more.
     */
    private static final double DRIVER_SHORT = 0.2;

    private static final double SERIES_LAMP_WATTS = 100;
    /** Parts from a logic output through its transistors; what they drive may lie a part further. */
    private static final int NEAR_A_DRIVER = 3;
    /** What draws more than a driver stands for long, and too little for a fuse. */
    private static final Set<FailureMode> OVERLOADS = EnumSet.of(FailureMode.SHORTED_TURNS, FailureMode.REVERSED);

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
    private final Survivors alive;
    private final Costs costs;
    private final BooleanSupplier stopped;
    private final boolean whole;
    private final Progress progress;

    /**
     * For one weighing.
     *
     * @param progress told how many boards of how many are taken apart, where that takes long
     * @param whole whether every supposition was looked at, so that it is worth taking all of them apart
     */
    Planner(
            Circuit circuit,
            Workbench bench,
            Workbench.Weighing weighing,
            boolean whole,
            Progress progress,
            BooleanSupplier stopped) {
        this.progress = progress;
        this.circuit = circuit;
        this.bench = bench;
        this.weighing = weighing;
        this.stopped = stopped;
        this.whole = whole;
        this.alive = new Survivors(bench, weighing);
        this.costs = new Costs(circuit, now(weighing.findings()));
    }

    /**
     * How the bench is set: as for the last reading, with the series lamp of the last one with the power on; what was only seen may have
     * been seen long ago.
     */
    private static Arrangement now(Case findings) {
        Arrangement now = Arrangement.unpowered();
        Double lamp = null;
        int last = -1;
        int lastOn = -1;
        for (int j = 0; j < findings.size(); j++) {
            // what was read twice stands at its first place
            int index = findings.index().get(j);
            if (findings.evidence().get(j).ask() instanceof Ask.Metered m) {
                now = index > last ? m.arrangement() : now;
                last = Math.max(last, index);
                boolean on = m.arrangement().powerOn();
                lamp = on && index > lastOn ? m.arrangement().seriesLampWatts() : lamp;
                lastOn = on ? Math.max(lastOn, index) : lastOn;
            }
        }
        return now.powerOn() ? now : now.withSeriesLamp(lamp);
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
        NextReadings.Verdict verdict =
                !weighing.posterior().doubted(weighing.findings()).isEmpty()
                        ? NextReadings.Verdict.REPEAT
                        : best >= SURE
                                ? NextReadings.Verdict.SETTLED
                                : advice.isEmpty() ? NextReadings.Verdict.NO_MORE_TO_LEARN : NextReadings.Verdict.GO_ON;
        Scored refuting = new Refuting(bench, alive, weighing.findings()).best(scored);
        return new NextReadings(advice, verdict, replace(repairs, advice), refuting == null ? null : advice(refuting));
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

    private List<Scored> scored(Predicate<Ask> wanted, boolean powered) throws UnfitArrangement {
        List<Ask> all = prepared(powered).stream().filter(wanted).toList();
        List<Scored> first = new ArrayList<>((bench.sideBySide() ? all.parallelStream() : all.stream())
                .filter(ask -> !stopped.getAsBoolean())
                .flatMap(ask -> scored(ask).stream())
                .toList());
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
                asks.add(new Ask.Noticed(off, part.name(), Observation.Aspect.RATING));
            }
        }
        takeApart(off);
        if (powered) {
            Arrangement on = d.asFound();
            bench.asks().powerOn().forEach(c -> asks.add(new Ask.Metered(on, c)));
            sights(on).forEach(asks::add);
            commanded(asks, command -> command);
        } else if (whole) {
            behindLamp(asks);
            commanded(asks, command -> command.withSeriesLamp(SERIES_LAMP_WATTS));
        }
        alive.again();
        Set<String> taken = new HashSet<>();
        Case findings = weighing.findings();
        for (int j = 0; j < findings.size(); j++) {
            boolean sinceThen = findings.renewed().get(j).equals(alive.renewed());
            if (sinceThen && !weighing.posterior().mayBeMisseen(findings, j)) {
                Wanted w = findings.wanted().get(j);
                taken.add(w.bench() + w.ask().words());
            }
        }
        asks.removeIf(a -> taken.contains(Dictionary.key(a.arrangement()) + a.words()));
        asks.removeIf(this::lookedAt);
        return asks;
    }

    /** Whether a fuse or its cap was looked at since parts were last replaced: the plug makes no difference to it. */
    private boolean lookedAt(Ask ask) {
        Case findings = weighing.findings();
        for (int j = 0; j < findings.size(); j++) {
            if (ask instanceof Ask.Noticed now
                    && findings.evidence().get(j).ask() instanceof Ask.Noticed then
                    && (now.aspect() == Observation.Aspect.FUSE || now.aspect() == Observation.Aspect.RATING)
                    && now.aspect() == then.aspect()
                    && now.part().equals(then.part())
                    && findings.renewed().get(j).equals(alive.renewed())
                    && !(Case.sameAsk(now, then) && weighing.posterior().mayBeMisseen(findings, j))) {
                return true;
            }
        }
        return false;
    }

    /** With the power off: most boards are measured there and nowhere else. */
    private void takeApart(Arrangement off) {
        List<Boards.Board> missing = alive.boards(WEIGHED).stream()
                .limit(whole ? MOST_TAKEN_APART : FIRST_BOARDS)
                .filter(b -> !bench.dictionary().knows(bench.after(b, alive.renewed()), off))
                .toList();
        for (int from = 0; from < missing.size() && !stopped.getAsBoolean(); from += AT_ONCE) {
            progress.at(from, missing.size());
            List<Boards.Board> some = missing.subList(from, Math.min(missing.size(), from + AT_ONCE));
            bench.work(some, List.of(off), weighing.findings(), stopped);
        }
    }

    /**
     * Drivers near which much of what is likely lies, nearest first since a rail brings all of them within a few parts: what they drive,
     * and the readings beside.
     */
    private void commanded(List<Ask> asks, UnaryOperator<Arrangement> power) throws UnfitArrangement {
        Map<String, List<Survivors.Place>> near = new LinkedHashMap<>();
        Map<String, Double> shares = new LinkedHashMap<>();
        Map<String, Double> nearest = new HashMap<>();
        Map<String, Arrangement> commands = Intake.commands(circuit);
        Set<Integer> weighed = new HashSet<>();
        alive.boards(WEIGHED).forEach(b -> weighed.add(b.number()));
        for (String driven : commands.keySet()) {
            Nearness nearness = bench.asks().nearDriver(driven);
            List<Survivors.Place> places = alive.places().stream()
                    .filter(p -> nearness.within(
                                    NEAR_A_DRIVER, p.board().supposition().faults())
                            || bench.asks()
                                    .isInChain(driven, p.board().supposition().faults()))
                    .toList();
            near.put(driven, places);
            shares.put(
                    driven, places.stream().mapToDouble(Survivors.Place::share).sum());
            nearest.put(
                    driven,
                    places.stream()
                            .mapToDouble(p -> p.share()
                                    * nearness.ratio(p.board().supposition().faults()))
                            .sum());
        }
        List<String> worth = shares.entrySet().stream()
                .filter(e -> e.getValue() >= WORTH_COMMANDING)
                .map(Map.Entry::getKey)
                .sorted(Comparator.comparingDouble((String d) -> -nearest.getOrDefault(d, 0.0)))
                .filter(d -> shorted(near.getOrDefault(d, List.of())) <= DRIVER_SHORT)
                .limit(MOST_COMMANDS)
                .toList();
        for (String driven : worth) {
            List<Boards.Board> boards = near.getOrDefault(driven, List.of()).stream()
                    .map(Survivors.Place::board)
                    .distinct()
                    .filter(b -> weighed.contains(b.number()))
                    .limit(MOST_COMMANDED)
                    .toList();
            Arrangement command = power.apply(Objects.requireNonNull(commands.get(driven)));
            workedOut(command, boards);
            if (command.seriesLampWatts() == null
                    && harmed(command, near.getOrDefault(driven, List.of())) > DRIVER_SHORT) {
                command = command.withSeriesLamp(SERIES_LAMP_WATTS);
                workedOut(command, boards);
            }
            for (Ask sight : sights(command)) {
                if (sight instanceof Ask.Noticed n && n.part().equals(driven)) {
                    asks.add(sight);
                }
            }
            for (Check check : bench.asks().powerOn()) {
                asks.add(new Ask.Metered(command, check));
            }
        }
    }

    private void workedOut(Arrangement command, List<Boards.Board> boards) throws UnfitArrangement {
        bench.dictionary().prepare(command, bench.asks().powerOn(), stopped);
        bench.work(boards, List.of(command), weighing.findings(), stopped);
    }

    /**
     * Probability that under a command a fuse melts or may, or that its driver has an overload: shorted turns and a diode the
     * wrong way round draw what a driver does not stand for long, and a slow fuse does.
     */
    private double harmed(Arrangement command, List<Survivors.Place> near) {
        String key = Dictionary.key(command);
        return near.stream()
                .filter(p -> bench.after(p.board(), alive.renewed(), p.way())
                                .in(key)
                                .map(s -> !s.melted().isEmpty() || !s.mayMelt().isEmpty())
                                .orElse(false)
                        || OVERLOADS.stream().anyMatch(mode -> has(p, mode)))
                .mapToDouble(Survivors.Place::share)
                .sum();
    }

    private static double shorted(List<Survivors.Place> near) {
        return near.stream()
                .filter(p -> has(p, FailureMode.SHORT))
                .mapToDouble(Survivors.Place::share)
                .sum();
    }

    private static boolean has(Survivors.Place place, FailureMode mode) {
        return place.board().supposition().faults().stream().anyMatch(f -> f.mode() == mode);
    }

    /** While there may be a short, power comes on only through a lamp, which takes what a short would; fuses are new. */
    private void behindLamp(List<Ask> asks) throws UnfitArrangement {
        Arrangement lamp = bench.dictionary().asFound().withSeriesLamp(SERIES_LAMP_WATTS);
        bench.dictionary().prepare(lamp, bench.asks().powerOn(), stopped);
        List<Boards.Board> some =
                alive.boards(WEIGHED).stream().limit(MOST_COMMANDED).toList();
        bench.work(some, List.of(lamp), weighing.findings(), stopped);
        bench.asks().powerOn().forEach(c -> asks.add(new Ask.Metered(lamp, c)));
        sights(lamp).forEach(asks::add);
    }

    private List<Ask> sights(Arrangement arrangement) {
        return bench.dictionary().healthy().in(Dictionary.key(arrangement)).stream()
                .flatMap(s -> s.sights().values().stream())
                .<Ask>map(o -> new Ask.Noticed(arrangement, o.part(), o.sight().aspect()))
                .toList();
    }

    private Optional<Scored> scored(Ask ask) {
        Wanted wanted = Wanted.of(ask);
        Expectation healthy = bench.expect(bench.boards().all().get(0), wanted, alive.renewed());
        if (healthy.kind() == Expectation.Kind.UNKNOWN) {
            return Optional.empty();
        }
        Foresight foresight = alive.lumped(ask);
        return Optional.of(new Scored(ask, foresight, foresight.gain()));
    }

    private Advice advice(Scored scored) {
        Ask ask = scored.ask();
        List<String> deeds = costs.deeds(ask.arrangement());
        if (weighing.findings().evidence().stream().anyMatch(e -> Case.sameAsk(e.ask(), ask))) {
            deeds.add(WORDS.say("deed.again"));
        }
        Meanings meanings = new Meanings(alive.foresight(ask), ask);
        return new Advice(ask, deeds, costs.minutes(ask), scored.bits(), meanings.all(), cautions(ask));
    }

    private List<String> cautions(Ask ask) {
        List<String> all = new ArrayList<>();
        if (!ask.arrangement().powerOn() && ask instanceof Ask.Metered) {
            all.add(WORDS.say("caution.discharge"));
        }
        if (ask instanceof Ask.Metered m && ask.arrangement().powerOn()) {
            Check touched = touching(m);
            double volts = healthyVolts(m.arrangement(), touched);
            if (volts > Costs.TOUCH_VOLTS) {
                all.add(WORDS.say("caution.volts", Explanation.figure(touched, Axis.at(touched.function(), volts))));
            }
        }
        return all;
    }

    /** The most that either lead touches, whatever the meter is set to: between both, and of each to ground. */
    private Check touching(Ask.Metered m) {
        String ground = circuit.ground().name();
        return Stream.of(
                        m.check(),
                        new Check(m.check().from(), m.check().to(), MeterFunction.DC_VOLTS),
                        new Check(m.check().from(), m.check().to(), MeterFunction.AC_VOLTS),
                        new Check(m.check().from(), ground, MeterFunction.DC_VOLTS),
                        new Check(m.check().from(), ground, MeterFunction.AC_VOLTS),
                        new Check(m.check().to(), ground, MeterFunction.DC_VOLTS),
                        new Check(m.check().to(), ground, MeterFunction.AC_VOLTS))
                .filter(c -> c.function().ofVolts())
                .max(Comparator.comparingDouble(c -> healthyVolts(m.arrangement(), c)))
                .orElse(m.check());
    }

    private double healthyVolts(Arrangement arrangement, Check check) {
        return bench.dictionary()
                .healthy()
                .in(Dictionary.key(arrangement))
                .map(s -> s.readings().get(check))
                .map(r -> Math.abs(r.value()))
                .orElse(0.0);
    }

    /** Where trying the leader is quicker than proving it. */
    private String replace(Map<Repair, Double> repairs, List<Advice> advice) {
        Optional<Map.Entry<Repair, Double>> leader = repairs.entrySet().stream().findFirst();
        if (leader.isEmpty()
                || advice.isEmpty()
                || alive.renewed().parts().containsAll(leader.get().getKey().parts())
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
        List<Foresight> foresights = new ArrayList<>();
        for (Ask ask : prepared(powered)) {
            scored(ask).map(Scored::lumped).ifPresent(foresights::add);
        }
        List<Repair> groups = alive.groups();
        double[] shares = alive.shares();
        // among those alive something else does not count; what is told leaves it its share
        Map<Repair, Double> told = weighing.posterior().repairs(bench.boards());
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
                        && group.stream().allMatch(m -> alike(foresights, groups.get(m), groups.get(candidate)));
                if (alike) {
                    group.add(other);
                    taken[other] = true;
                }
            }
            if (group.size() > 1) {
                all.add(new LookAlike(
                        group.stream().map(groups::get).toList(),
                        Math.min(
                                1,
                                group.stream()
                                        .mapToDouble(m -> told.getOrDefault(groups.get(m), 0.0))
                                        .sum()),
                        partedBy(group)));
            }
        }
        return all;
    }

    private static boolean alike(List<Foresight> foresights, Repair one, Repair other) {
        return foresights.stream().noneMatch(f -> f.apart(f.place(one), f.place(other)) >= TAKEN_APART);
    }

    /** Whether nothing permitted tells two repairs apart: to compare with. */
    boolean alike(Repair one, Repair other, boolean powered) throws UnfitArrangement {
        if (!alive.groups().contains(one) || !alive.groups().contains(other)) {
            return false;
        }
        for (Ask ask : prepared(powered)) {
            Optional<Foresight> foresight = scored(ask).map(Scored::lumped);
            if (foresight.isPresent() && !alike(List.of(foresight.get()), one, other)) {
                return false;
            }
        }
        return true;
    }

    /** The best of lifting a lead of one of the parts, and of taking sections apart. */
    private List<Advice> partedBy(List<Integer> group) throws UnfitArrangement {
        List<Ask> isolating = new ArrayList<>();
        for (int g : group) {
            for (String part : alive.groups().get(g).parts()) {
                isolating.addAll(bench.asks().lifted(part));
                for (Arrangement apart : bench.asks().takenApart()) {
                    bench.asks().across(part).forEach(c -> isolating.add(new Ask.Metered(apart, c)));
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
        List<Boards.Board> concerned = alive.places().stream()
                .filter(p -> group.contains(p.group()))
                .map(Survivors.Place::board)
                .distinct()
                .toList();
        for (Map.Entry<String, Arrangement> a : arrangements.entrySet()) {
            bench.dictionary().prepare(a.getValue(), checks.getOrDefault(a.getKey(), List.of()), stopped);
            bench.work(concerned, List.of(a.getValue()), weighing.findings(), stopped);
        }
        alive.again();
        return isolating.stream()
                .flatMap(a -> parting(a, group).stream())
                .filter(s -> partedShare(s, group) > 0)
                .sorted(Comparator.comparingDouble(s -> costs.minutes(s.ask()) / partedShare(s, group)))
                .limit(2)
                .map(this::advice)
                .toList();
    }

    /** How likely those of a group are that an ask tells from its likeliest: of two that nothing parts, it may still part a third. */
    private double partedShare(Scored scored, List<Integer> group) {
        return group.stream()
                .skip(1)
                .filter(other -> scored.lumped().apart(group.get(0), other) >= TAKEN_APART)
                .mapToDouble(other -> alive.shares()[other])
                .sum();
    }

    private Optional<Scored> parting(Ask ask, List<Integer> group) {
        Wanted wanted = Wanted.of(ask);
        List<Foresight.Alive> shown = new ArrayList<>();
        for (Survivors.Place place : alive.places()) {
            if (group.contains(place.group())) {
                Expectation e = bench.expect(place.board(), wanted, alive.renewed(), place.way());
                shown.add(new Foresight.Alive(
                        place.group(), place.share(), e, e.middle(), Math.sqrt(e.ownVariance() + 1e-3)));
            }
        }
        if (shown.stream().allMatch(a -> a.expectation().kind() == Expectation.Kind.UNKNOWN)) {
            return Optional.empty();
        }
        Foresight foresight = Foresight.of(shown, alive.groups(), new Normal());
        return Optional.of(new Scored(ask, foresight, foresight.gain()));
    }
}
