package fusetale.match;

import fusetale.bench.Arrangement;
import fusetale.bench.Drawn;
import fusetale.bench.Meter;
import fusetale.bench.Observation;
import fusetale.bench.Reading;
import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitReader;
import fusetale.circuit.Mains;
import fusetale.explore.Foretold;
import fusetale.explore.Progress;
import fusetale.explore.Simulated;
import fusetale.explore.Specimen;
import fusetale.fault.FailureMode;
import fusetale.fault.Fault;
import fusetale.fault.Supposition;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * How often matching is right, on simulated truths: machines and faults drawn by another generator than the dictionary's,
 * amounts uniform on a log scale, readings with the meter's error and its digits. Each case starts with what is seen of the
 * machine as found and of its coils and lamps when
 * commanded, then takes the readings that the planner asks for.
 *
 * <p>{@code mistake}: one of the first three figures ten times too large or too small; {@code left-out}: no supposition of the
 * true parts in the dictionary, and where nothing more is asked, what the answer says to measure to be sure; {@code biased}: all readings 2 % high; {@code coarse}: a meter four times worse.
 *
 * <p>Of a true part that was left out a twin is told where what leads shows the same at every point: nothing can raise it.
 *
 * <p>{@code -Dfusetale.dictionaries=FOLDER} starts from what {@code match} has kept there; {@code -Dfusetale.strange=true}
 * draws again where nothing seen is out of order, since such a machine is not brought in; {@code -Dfusetale.tell=true} tells
 * every step.
 *
 * <pre>MatchEvaluation CIRCUIT.yaml CASES SEED [READINGS] [advised|random|gain|mistake|left-out|biased|coarse]…</pre>
 */
public final class MatchEvaluation {
    private static final int[] MARKS = {0, 3, 5, 8};
    private static final double SURE = 0.9;

    private final Circuit circuit;
    private final Meter meter = Meter.trueRms4000();
    private final Workbench bench;
    private final List<Hypothesis> hypotheses;
    private final int most;
    private final List<Truth> truths = new ArrayList<>();
    private final List<Evidence> healthy;

    private MatchEvaluation(Circuit circuit, int cases, long seed, int most) throws InterruptedException {
        this.circuit = circuit;
        this.hypotheses = Hypotheses.of(circuit);
        this.bench = new Workbench(circuit, meter, 2, 24, 1, hypotheses);
        this.most = most;
        String folder = System.getProperty("fusetale.dictionaries", "");
        if (!folder.isEmpty()) {
            bench.recall(
                    DictionaryFile.of(Path.of(folder), circuit, meter + " 24 1").read());
        }
        this.healthy = new Truth(new Simulated(Specimen.nominal(circuit), meter), hypotheses.get(0)).intake(circuit);
        Random random = new Random(seed);
        boolean onlyStrange = Boolean.getBoolean("fusetale.strange");
        int drawn = 0;
        while (truths.size() < cases) {
            List<Truth> some = new ArrayList<>();
            while (some.size() < cases - truths.size()) {
                draw(random).ifPresent(some::add);
            }
            drawn += some.size();
            takeIn(some);
            some.removeIf(t -> onlyStrange && strange(t) == 0);
            truths.addAll(some);
        }
        System.out.printf(Locale.ROOT, "%d truths drawn%n", drawn);
        // those that show something first: they are quickly told, and a study that is cut short has them
        truths.sort(Comparator.comparingLong((Truth t) -> -strange(t)));
    }

    /** How many sights are not as on the healthy machine. */
    private long strange(Truth truth) {
        return truth.intake.stream().filter(e -> !healthy.contains(e)).count();
    }

    /** Runs. */
    public static void main(String[] args) throws Exception {
        Circuit circuit = Objects.requireNonNull(
                CircuitReader.withShippedParts().read(Path.of(args[0])).circuit());
        int cases = Integer.parseInt(args[1]);
        long seed = Long.parseLong(args[2]);
        int most = args.length > 3 ? Integer.parseInt(args[3]) : 8;
        long started = System.nanoTime();
        MatchEvaluation evaluation = new MatchEvaluation(circuit, cases, seed, most);
        System.out.printf(
                Locale.ROOT,
                "%s: %d hypotheses, %d boards; %d truths, seed %d%n",
                circuit.name(),
                evaluation.hypotheses.size(),
                evaluation.bench.boards().all().size(),
                cases,
                seed);
        List<String> runs = args.length > 4 ? List.of(args).subList(4, args.length) : List.of("advised", "random");
        for (String run : runs) {
            evaluation.run(run, seed);
            evaluation.keep();
            System.out.printf(Locale.ROOT, "  after %.0f s%n", (System.nanoTime() - started) / 1e9);
        }
    }

    /** What was worked out is kept for the next study of this machine. */
    private void keep() throws java.io.IOException, fusetale.store.UnwritableFile {
        String folder = System.getProperty("fusetale.dictionaries", "");
        if (!folder.isEmpty()) {
            DictionaryFile.of(Path.of(folder), circuit, meter + " 24 1").write(bench.content());
        }
    }

    /** A machine with what is wrong with it. */
    private static final class Truth {
        final Hypothesis hypothesis;
        final Supposition supposition;
        final Foretold asFound;
        final Simulated machine;
        final Map<String, Foretold> shown = new HashMap<>();
        final List<Evidence> intake = new ArrayList<>();

        Truth(Simulated machine, Hypothesis hypothesis, Supposition supposition, Foretold asFound) {
            this.machine = machine;
            this.hypothesis = hypothesis;
            this.supposition = supposition;
            this.asFound = asFound;
        }

        /** The healthy machine. */
        Truth(Simulated machine, Hypothesis nothing) {
            this(
                    machine,
                    nothing,
                    Supposition.NOTHING,
                    machine.under(Supposition.NOTHING, Arrangement.unpowered(), List.of())
                            .orElseThrow());
        }

        List<Evidence> intake(Circuit circuit) {
            Intake.of(circuit).forEach(a -> noticed(this, a, supposition).ifPresent(intake::add));
            return intake;
        }

        Supposition after() {
            Set<String> blown = new TreeSet<>(asFound.melted());
            List<Fault> faults = new ArrayList<>(supposition.faults());
            faults.removeIf(f -> blown.contains(f.part()));
            blown.forEach(b -> faults.add(new Fault(b, "", FailureMode.BLOWN, null)));
            return new Supposition(faults);
        }
    }

    private Optional<Truth> draw(Random random) throws IllegalStateException {
        double at = random.nextDouble() * Hypotheses.LISTED;
        Hypothesis chosen = hypotheses.get(hypotheses.size() - 1);
        for (Hypothesis h : hypotheses) {
            at -= h.weight();
            if (at < 0) {
                chosen = h;
                break;
            }
        }
        Supposition supposition = chosen.at(random.nextDouble());
        Mains mains = circuit.mains();
        double low = mains.lowestVolts().si();
        double volts = low + (mains.highestVolts().si() - low) * random.nextDouble();
        Specimen specimen = new Specimen(
                new Drawn(new Random(random.nextLong())).circuit(circuit),
                volts / mains.volts().si());
        Simulated machine = new Simulated(specimen, meter);
        Hypothesis of = chosen;
        return machine.under(supposition, Arrangement.powered(circuit), List.of())
                .map(found -> new Truth(machine, of, supposition, found));
    }

    private Evidence ask(Truth truth, Ask ask, Random random, String run) throws Exception {
        Supposition now = ask.arrangement().seriesLampWatts() == null
                ? truth.after()
                : Dictionary.freshFuses(circuit, truth.supposition);
        if (ask instanceof Ask.Noticed n) {
            return noticed(truth, n, now).orElseThrow();
        }
        Ask.Metered m = (Ask.Metered) ask;
        Reading reading = truth.machine
                .under(now, m.arrangement(), List.of(m.check()))
                .orElseThrow()
                .readings()
                .get(0);
        if (reading.overRange()) {
            return new Evidence(ask, new Shown.Over());
        }
        double scale = run.equals("coarse") ? 4 : 1;
        double bias = run.equals("biased") ? 1.02 : 1;
        double error = scale * reading.halfWidth() * (2 * random.nextDouble() - 1);
        return new Evidence(ask, new Shown.Figure(reading.value() * bias + error));
    }

    private static int counted(Observation seen) {
        return seen.sight() == Observation.Sight.STOPS
                ? Integer.parseInt(seen.detail().split(" ", -1)[1])
                : -1;
    }

    private static Optional<Evidence> noticed(Truth truth, Ask.Noticed ask, Supposition now) {
        String key = Dictionary.key(ask.arrangement());
        Foretold known = truth.shown.get(key);
        Optional<Foretold> shown =
                known != null ? Optional.of(known) : truth.machine.under(now, ask.arrangement(), List.of());
        shown.ifPresent(s -> truth.shown.put(key, s));
        return shown.flatMap(s -> s.observations().stream()
                        .filter(o -> o.part().equals(ask.part()) && o.sight().aspect() == ask.aspect())
                        .findFirst())
                .map(seen -> new Evidence(ask, new Shown.Seen(seen.sight(), counted(seen))));
    }

    /** What is seen without a meter, of all truths. */
    private void takeIn(List<Truth> some) throws InterruptedException {
        ExecutorService pool = Executors.newFixedThreadPool(2);
        for (Truth truth : some) {
            pool.execute(() -> Intake.of(circuit)
                    .forEach(a -> noticed(truth, a, truth.after()).ifPresent(truth.intake::add)));
        }
        pool.shutdown();
        pool.awaitTermination(2, TimeUnit.HOURS);
    }

    /** Sums of one run. */
    private static final class Tally {
        final int[] n = new int[MARKS.length];
        final int[] first = new int[MARKS.length];
        final int[] three = new int[MARKS.length];
        final int[] group = new int[MARKS.length];
        final double[] log2 = new double[MARKS.length];
        final double[] brier = new double[MARKS.length];
        final List<List<Calibration.Told>> told = Arrays.stream(MARKS)
                .<List<Calibration.Told>>mapToObj(m -> new ArrayList<>())
                .toList();
        int reached;
        int reachedRight;
        int readings;
        int flagged;
        int slips;
        /** Of them such as the meter leaves open: ten times a hundredth of an ohm. */
        int slight;

        int falseFlags;
        int alarms;
        int twins;
        int twinAlarms;
        double minutes;
        final StringBuilder misses = new StringBuilder();
    }

    private void run(String run, long seed) throws Exception {
        Tally tally = new Tally();
        Random random = new Random(seed + run.hashCode());
        int k = 0;
        for (Truth truth : truths) {
            one(truth, run, random, tally, k++);
            keep();
            System.err.printf(
                    Locale.ROOT,
                    "%s %d: %s, of %d sights %d strange; first %s, among three %s, alike %s of %d; 0.9 in %d, right %d, after %d readings%n",
                    run,
                    k,
                    truth.supposition.faults().stream()
                            .map(f -> f.target() + "=" + f.mode().compact())
                            .toList(),
                    truth.intake.size(),
                    strange(truth),
                    Arrays.toString(tally.first),
                    Arrays.toString(tally.three),
                    Arrays.toString(tally.group),
                    k,
                    tally.reached,
                    tally.reachedRight,
                    tally.readings);
        }
        print(run, tally);
    }

    private void one(Truth truth, String run, Random random, Tally tally, int number) throws Exception {
        Findings findings = Findings.of(truth.intake);
        // the first, second or third figure read
        int slip = run.equals("mistake") ? random.nextInt(3) : -1;
        int figures = 0;
        boolean leftOut = run.equals("left-out");
        List<String> left = leftOut ? truth.hypothesis.repair().parts() : List.of();
        if (leftOut && left.isEmpty()) {
            return;
        }
        Ask slipped = null;
        boolean reached = false;
        List<Ask> refused = new ArrayList<>();
        List<Ask> asked = new ArrayList<>();
        Session session = new Session(left);
        for (int m = 0; m <= most; m++) {
            Workbench.Weighing weighing = session.weigh(Case.of(findings));
            markAfter(weighing, truth, m, tally, number, leftOut);
            Map<Repair, Double> repairs = weighing.posterior().repairs(bench.boards());
            double best = repairs.values().stream().findFirst().orElse(0.0);
            if (!reached && best >= SURE) {
                reached = true;
                tally.reached++;
                tally.readings += m;
                tally.reachedRight += repairs.keySet().iterator().next().equals(truth.hypothesis.repair()) ? 1 : 0;
            }
            tell(weighing, m, findings);
            if (m == most) {
                break;
            }
            Optional<Ask> doubted = session.doubted(weighing, asked);
            if (doubted.isPresent() && !run.equals("random")) {
                tally.flagged += doubted.get().equals(slipped) ? 1 : 0;
                tally.falseFlags += doubted.get().equals(slipped) ? 0 : 1;
                asked.add(doubted.get());
                findings = findings.with(ask(truth, doubted.get(), random, run));
                continue;
            }
            Optional<Advice> next = session.next(weighing, run, random, refused);
            if (next.isEmpty()) {
                // nothing more to learn: the answer stands
                for (int rest = m + 1; rest <= most; rest++) {
                    markAfter(weighing, truth, rest, tally, number, leftOut);
                }
                break;
            }
            tally.minutes += next.get().minutes();
            Evidence e;
            try {
                e = ask(truth, next.get().ask(), random, run);
            } catch (java.util.NoSuchElementException unsolved) {
                refused.add(next.get().ask());
                continue;
            }
            if (e.shown() instanceof Shown.Figure f && figures++ == slip) {
                Shown wrong = new Shown.Figure(f.si() * (random.nextBoolean() ? 10 : 0.1));
                tally.slight += Case.same(e.ask(), f, wrong) ? 1 : 0;
                e = new Evidence(e.ask(), wrong);
                slipped = e.ask();
                tally.slips++;
            }
            findings = findings.with(e);
        }
    }

    private void tell(Workbench.Weighing weighing, int readings, Findings findings) {
        if (!Boolean.getBoolean("fusetale.tell")) {
            return;
        }
        Evidence last = findings.evidence().get(findings.size() - 1);
        System.err.printf(
                Locale.ROOT,
                "  %d: %s, %s: %s;",
                readings,
                last.ask().arrangement().name(),
                last.ask().words(),
                last.shown());
        weighing.posterior().repairs(bench.boards()).entrySet().stream()
                .limit(6)
                .forEach(e ->
                        System.err.printf(Locale.ROOT, " %s %.3f", e.getKey().words(), e.getValue()));
        System.err.printf(Locale.ROOT, "; else %.3f%n", weighing.posterior().somethingElse());
    }

    /** Weighing and planning with every supposition of some parts left out of the dictionary. */
    private final class Session {
        private final List<String> left;

        Session(List<String> left) {
            this.left = left;
        }

        Workbench.Weighing weigh(Case found) throws Exception {
            List<Arrangement> arrangements = bench.prepare(found, () -> false);
            List<Boards.Board> missing = bench.boards().all().stream()
                    .filter(b -> b.middle() && !bench.known(b))
                    .toList();
            bench.work(missing, Workbench.first(arrangements), found, () -> false);
            return bench.likely(
                    found,
                    arrangements,
                    b -> Collections.disjoint(
                            left, bench.boards().of(b).repair().parts()),
                    Workbench.Sharper.NOBODY,
                    () -> false);
        }

        /** A reading that does not fit the rest, to be taken again; each once. */
        Optional<Ask> doubted(Workbench.Weighing weighing, List<Ask> asked) {
            return weighing.posterior().doubted(weighing.findings()).stream()
                    .map(j -> weighing.findings().evidence().get(j).ask())
                    .filter(ask -> asked.stream().noneMatch(a -> Case.sameAsk(a, ask)))
                    .findFirst();
        }

        Optional<Advice> next(Workbench.Weighing weighing, String run, Random random, List<Ask> refused)
                throws Exception {
            boolean powered = new Explanation(bench, weighing).danger().isEmpty();
            Planner planner = new Planner(circuit, bench, weighing, true, Progress.SILENT, () -> false);
            if (run.equals("random")) {
                return planner.any(random, powered);
            }
            if (run.equals("gain")) {
                return planner.most(powered);
            }
            NextReadings next = planner.next(a -> refused.stream().noneMatch(r -> Case.sameAsk(r, a)), powered);
            Optional<Advice> first = next.advice().stream().findFirst();
            if (first.isEmpty() && next.verdict() == NextReadings.Verdict.NO_MORE_TO_LEARN) {
                // look-alikes are told with the step that would part them: a lead to lift, a section to take apart
                first = planner.lookAlikes(powered).stream()
                        .flatMap(l -> l.partedBy().stream())
                        .filter(a -> Stream.concat(
                                        refused.stream(),
                                        weighing.findings().evidence().stream().map(Evidence::ask))
                                .noneMatch(r -> Case.sameAsk(r, a.ask())))
                        .findFirst();
            }
            // where all seems told, what the answer itself says to measure to be sure
            return first.or(() -> Optional.ofNullable(next.confirm()));
        }
    }

    private void markAfter(Workbench.Weighing weighing, Truth truth, int m, Tally tally, int number, boolean leftOut)
            throws Exception {
        for (int at = 0; at < MARKS.length; at++) {
            if (MARKS[at] == m) {
                mark(weighing, truth, at, tally, number, leftOut);
            }
        }
    }

    /** Whether the parts that were left out, were they in the list, could not be told from what leads without them. */
    private boolean twin(Case findings, Repair leader, Repair right) throws Exception {
        return alike(new Session(List.of()).weigh(findings), leader, right);
    }

    private void mark(Workbench.Weighing weighing, Truth truth, int at, Tally tally, int number, boolean leftOut)
            throws Exception {
        Map<Repair, Double> repairs = weighing.posterior().repairs(bench.boards());
        List<Repair> order = List.copyOf(repairs.keySet());
        Repair right = truth.hypothesis.repair();
        double p = repairs.getOrDefault(right, 0.0);
        int place = order.indexOf(right);
        tally.n[at]++;
        tally.first[at] += place == 0 ? 1 : 0;
        tally.three[at] += place >= 0 && place < 3 ? 1 : 0;
        tally.log2[at] -= Math.log(Math.max(p, 1e-4)) / Math.log(2);
        double brier = (1 - p) * (1 - p)
                + weighing.posterior().somethingElse() * weighing.posterior().somethingElse();
        for (Map.Entry<Repair, Double> e : repairs.entrySet()) {
            brier += e.getKey().equals(right) ? 0 : e.getValue() * e.getValue();
        }
        tally.brier[at] += brier / 2;
        boolean group = place == 0 || (place > 0 && alike(weighing, order.get(0), right));
        tally.group[at] += group ? 1 : 0;
        tally.told
                .get(at)
                .add(new Calibration.Told(
                        repairs.values().stream().mapToDouble(d -> d).toArray(), place));
        if (MARKS[at] == 8 || (at == MARKS.length - 1)) {
            // as the product tells it: something else is likely, or the leader stands by a slip
            boolean slip = Arrays.stream(weighing.posterior().suspicion()).anyMatch(x -> x > 0.3);
            boolean raised = weighing.posterior().somethingElse() > 0.2 || slip;
            tally.alarms += raised ? 1 : 0;
            boolean twin = leftOut && !order.isEmpty() && twin(weighing.findings(), order.get(0), right);
            tally.twins += twin ? 1 : 0;
            tally.twinAlarms += twin && raised ? 1 : 0;
            if (place != 0) {
                tally.misses.append(String.format(
                        Locale.ROOT,
                        "    case %d: %s, at place %d with %.3f; leads %s with %.2f, something else %.2f%s%n",
                        number,
                        truth.supposition.faults().stream()
                                .map(f -> f.target() + "=" + f.mode().compact()
                                        + (f.amount() == null
                                                ? ""
                                                : ":" + f.amount().si()))
                                .toList(),
                        place + 1,
                        p,
                        order.isEmpty() ? "" : order.get(0).words(),
                        order.isEmpty() ? 0 : repairs.getOrDefault(order.get(0), 0.0),
                        weighing.posterior().somethingElse(),
                        (raised ? ", raised" : "") + (twin ? ", twin" : "")));
            } else if (raised) {
                tally.misses.append(String.format(
                        Locale.ROOT,
                        "    case %d: %s leads with %.2f, something else %.2f, most suspicious reading %.2f%n",
                        number,
                        right.words(),
                        p,
                        weighing.posterior().somethingElse(),
                        Arrays.stream(weighing.posterior().suspicion()).max().orElse(0)));
            }
        }
    }

    /** Whether no permitted ask tells the leader from the truth: half of what one shows the other shows too, everywhere. */
    private boolean alike(Workbench.Weighing weighing, Repair leader, Repair right) throws Exception {
        boolean powered = new Explanation(bench, weighing).danger().isEmpty();
        return new Planner(circuit, bench, weighing, true, Progress.SILENT, () -> false).alike(leader, right, powered);
    }

    private void print(String run, Tally t) {
        System.out.printf(Locale.ROOT, "%s, %d cases%n", run, truths.size());
        for (int at = 0; at < MARKS.length; at++) {
            if (t.n[at] == 0) {
                continue;
            }
            double n = t.n[at];
            Calibration calibration = Calibration.of(t.told.get(at));
            System.out.printf(
                    Locale.ROOT,
                    "  intake + %d: first %.3f, among three %.3f, alike %.3f, log2 loss %.2f, Brier %.3f, ECE %.3f (were all shares right %.3f);%s%n",
                    MARKS[at],
                    t.first[at] / n,
                    t.three[at] / n,
                    t.group[at] / n,
                    t.log2[at] / n,
                    t.brier[at] / n,
                    calibration.error(),
                    Calibration.ofAPerfectTeller(t.told.get(at)),
                    calibration.words());
        }
        System.out.printf(
                Locale.ROOT,
                "  0.9 reached in %.3f, with %.2f readings, right %.3f; %.1f minutes a case; %d slips, %d of them slight, %d flagged, falsely %d;"
                        + " something else raised %d of %d; twins %d, of them raised %d%n%s",
                (double) t.reached / truths.size(),
                (double) t.readings / Math.max(1, t.reached),
                (double) t.reachedRight / Math.max(1, t.reached),
                t.minutes / truths.size(),
                t.slips,
                t.slight,
                t.flagged,
                t.falseFlags,
                t.alarms,
                t.n[MARKS.length - 1],
                t.twins,
                t.twinAlarms,
                t.misses);
    }
}
