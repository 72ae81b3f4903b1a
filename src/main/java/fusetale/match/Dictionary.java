package fusetale.match;

import fusetale.bench.Arrangement;
import fusetale.bench.Bench;
import fusetale.bench.Check;
import fusetale.bench.Meter;
import fusetale.bench.Reading;
import fusetale.bench.UnfitArrangement;
import fusetale.circuit.Circuit;
import fusetale.circuit.Fuse;
import fusetale.explore.Commanded;
import fusetale.explore.Foretelling;
import fusetale.explore.Foretold;
import fusetale.explore.Specimen;
import fusetale.fault.FailureMode;
import fusetale.fault.Supposition;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * What machines show, worked out when first asked for and kept: the healthy one, drawn ones, and every supposition. What
 * comes out depends on neither the number of threads nor the order in which it was asked for.
 */
final class Dictionary {
    private final Circuit circuit;
    private final Meter meter;
    private final Arrangement asFound;
    private final String asFoundKey;
    /** What is wrong with a link alone; its clips stay as they are. */
    private static final Set<FailureMode> LINKS =
            EnumSet.of(FailureMode.BLOWN, FailureMode.MISSING, FailureMode.WRONG_RATING, FailureMode.SHORT);

    private final int threads;
    private final List<Specimen> specimens = new ArrayList<>();
    private final Map<String, Panel> panels = new LinkedHashMap<>();
    private final Map<String, Map<Check, double[]>> drawnBefore = new HashMap<>();
    private volatile boolean grown;
    private final Trial healthy = new Trial(Supposition.NOTHING, false);

    Dictionary(Circuit circuit, Meter meter, int threads, int draws, long seed) {
        this.circuit = circuit;
        this.meter = meter;
        this.threads = threads;
        this.asFound = Arrangement.powered(circuit);
        this.asFoundKey = key(asFound);
        for (int d = 0; d < draws; d++) {
            specimens.add(Specimen.drawn(circuit, seed * 1_000_003 + d));
        }
    }

    /** A way to set the bench, with all that is asked of it. */
    private static final class Panel {
        final List<Foretelling> rounds = new ArrayList<>();
        /** With a driver commanded, beside each round: the way round most of the solving. */
        final List<Optional<Commanded>> commanded = new ArrayList<>();

        /** Trials of which it is known that a command has to be solved. */
        final Set<Trial> notReadily = ConcurrentHashMap.newKeySet();

        final Set<Check> checks = new HashSet<>();
        /** Trials of which all these are known. */
        final Set<Trial> complete = ConcurrentHashMap.newKeySet();
        /** What cannot be measured there. */
        final Set<Check> refused = new HashSet<>();
        /** By check, what each drawn machine shows; the same for sights. */
        final Map<Check, double[]> drawn = new HashMap<>();
    }

    /** Takes what another run worked out. */
    void recall(Map<String, Map<Check, double[]>> drawn) {
        drawnBefore.putAll(drawn);
    }

    /** What drawn machines show, for another run. */
    Map<String, Map<Check, double[]>> drawnSoFar() {
        Map<String, Map<Check, double[]>> all = new LinkedHashMap<>(drawnBefore);
        panels.forEach((key, panel) -> all.put(key, panel.drawn));
        return all;
    }

    /** Whether anything was worked out since this was last asked. */
    boolean grown() {
        boolean was = grown;
        grown = false;
        return was;
    }

    /** What an arrangement does, whatever it is called. */
    static String key(Arrangement arrangement) {
        // with the plug out the mains are none, whatever the file says of them
        Arrangement mains = arrangement.powerOn() ? arrangement : Arrangement.unpowered();
        // maps and lists in one order: the key is kept on the disk
        String all = arrangement.powerOn()
                + " "
                + mains.mainsVolts()
                + " "
                + mains.mainsHertz()
                + " "
                + arrangement.seriesLampWatts()
                + " "
                + sorted(arrangement.pulledFuses())
                + " "
                + sorted(arrangement.unplugged())
                + " "
                + sorted(arrangement.liftedPins())
                + " "
                + arrangement.clips()
                + " "
                + sorted(arrangement.heldOn())
                + " "
                + sorted(arrangement.switches())
                + " "
                + sorted(arrangement.charged())
                + " "
                + sorted(arrangement.pulsedSeconds());
        return all.intern();
    }

    private static List<String> sorted(List<String> names) {
        return names.size() < 2 ? names : names.stream().sorted().toList();
    }

    private static <V> Map<String, V> sorted(Map<String, V> named) {
        return named.size() < 2 ? named : new TreeMap<>(named);
    }

    Arrangement asFound() {
        return asFound;
    }

    Trial healthy() {
        return healthy;
    }

    int draws() {
        return specimens.size();
    }

    /** What is to be asked of an arrangement. */
    record Asked(Arrangement arrangement, List<Check> checks) {}

    /**
     * Makes ready to ask for checks in an arrangement.
     *
     * @throws UnfitArrangement where the arrangement does not fit the circuit
     */
    void prepare(Arrangement arrangement, List<Check> checks, BooleanSupplier stopped) throws UnfitArrangement {
        prepare(List.of(new Asked(arrangement, checks)), stopped);
    }

    /**
     * Makes ready to ask for checks in arrangements, no two of them alike.
     *
     * @throws UnfitArrangement where an arrangement does not fit the circuit
     */
    void prepare(List<Asked> all, BooleanSupplier stopped) throws UnfitArrangement {
        List<Asked> missing = new ArrayList<>();
        for (Asked asked : all) {
            missing(asked).ifPresent(missing::add);
        }
        Panel plain = panels.get(asFoundKey);
        Foretelling beside = plain == null || plain.rounds.isEmpty() ? null : plain.rounds.get(0);
        List<Foretelling> rounds = inParallel(
                missing,
                m -> Foretelling.of(Specimen.nominal(circuit), m.arrangement(), meter, m.checks(), beside, stopped));
        // cut short, it knows nothing of the healthy machine, and would be kept
        for (int k = 0; k < rounds.size() && !stopped.getAsBoolean(); k++) {
            Arrangement arrangement = missing.get(k).arrangement();
            Foretelling round = rounds.get(k);
            Panel panel = panel(arrangement);
            panel.rounds.add(round);
            panel.commanded.add(commanded(arrangement, round));
            panel.checks.addAll(missing.get(k).checks());
            panel.complete.clear();
            healthy.add(
                    key(arrangement),
                    round.under(Supposition.NOTHING, stopped)
                            .map(Trial.Shows::of)
                            .orElse(Trial.Shows.UNSOLVED));
        }
    }

    private Panel panel(Arrangement arrangement) {
        return panels.computeIfAbsent(key(arrangement), k -> {
            Panel fresh = new Panel();
            fresh.drawn.putAll(drawnBefore.getOrDefault(k, Map.of()));
            return fresh;
        });
    }

    private Optional<Asked> missing(Asked asked) throws UnfitArrangement {
        Panel panel = panel(asked.arrangement());
        List<Check> missing = asked.checks().stream()
                .distinct()
                .filter(c -> !panel.checks.contains(c) && !panel.refused.contains(c))
                .toList();
        if (missing.isEmpty() && !panel.rounds.isEmpty()) {
            return Optional.empty();
        }
        Bench bench = Bench.of(circuit, asked.arrangement(), meter);
        missing.stream().filter(c -> bench.refusal(c).isPresent()).forEach(panel.refused::add);
        missing = missing.stream().filter(c -> !panel.refused.contains(c)).toList();
        return missing.isEmpty() && !panel.rounds.isEmpty()
                ? Optional.empty()
                : Optional.of(new Asked(asked.arrangement(), missing));
    }

    /** As found, and beyond that nothing but drivers commanded. */
    private Optional<Commanded> commanded(Arrangement arrangement, Foretelling round) {
        Panel plain = panels.get(asFoundKey);
        Trial.Shows shows = healthy.in(asFoundKey).orElse(Trial.Shows.UNSOLVED);
        Arrangement same = asFound;
        for (String driven : arrangement.heldOn()) {
            same = same.withHeldOn(driven);
        }
        boolean fits = !arrangement.heldOn().isEmpty() && key(same).equals(key(arrangement));
        return fits && plain != null && !plain.rounds.isEmpty() && shows.solvable()
                ? Commanded.of(plain.rounds.get(0), shows.foretold(), round)
                : Optional.empty();
    }

    /** Whether all that is asked of an arrangement is known of a trial. */
    boolean knows(Trial trial, Arrangement arrangement) {
        Trial.Shows shows = trial.in(key(arrangement)).orElse(null);
        Panel panel = panels.get(key(arrangement));
        if (shows == null || panel == null || !shows.solvable()) {
            return shows != null;
        }
        // what an earlier run worked out may hold other checks
        return shows.readings().size() >= panel.checks.size()
                && (panel.complete.contains(trial) || complete(panel, trial, shows));
    }

    /**
     * Where an amount lies between two that look and read alike all over, it shows what they show: what a part does to a
     * circuit grows or falls with its amount.
     */
    void borrow(Trial between, Trial below, Trial above, Arrangement arrangement) {
        String key = key(arrangement);
        Trial.Shows one = below.in(key).orElse(null);
        Trial.Shows other = above.in(key).orElse(null);
        if (one == null || other == null || !knows(below, arrangement) || !knows(above, arrangement)) {
            return;
        }
        boolean open = between.in(key)
                .map(s -> s.readings().entrySet().stream()
                        .allMatch(r -> r.getValue().equals(one.readings().get(r.getKey()))))
                .orElse(true);
        if (open && one.alike(other)) {
            between.add(key, one);
            grown = true;
        }
    }

    private static boolean complete(Panel panel, Trial trial, Trial.Shows shows) {
        boolean complete = shows.readings().keySet().containsAll(panel.checks);
        if (complete) {
            panel.complete.add(trial);
        }
        return complete;
    }

    /**
     * Works out trials in arrangements, as far as they are not known; as found comes first, since it tells which fuses are
     * gone.
     */
    void work(List<Trial> trials, List<Arrangement> arrangements, BooleanSupplier stopped) {
        List<Trial> missing = trials.stream()
                .filter(t -> arrangements.stream().anyMatch(a -> !knows(t, a)) || !knows(t, asFound))
                .toList();
        if (missing.isEmpty()) {
            return;
        }
        grown = true;
        each(missing, trial -> one(trial, arrangements, stopped), stopped);
    }

    /** What drivers commanded show of trials, where that takes no solving: where what is wrong lies elsewhere. */
    void readily(List<Trial> trials, List<Arrangement> arrangements, BooleanSupplier stopped) {
        Map<String, Panel> commands = new LinkedHashMap<>();
        for (Arrangement arrangement : arrangements) {
            String key = key(arrangement);
            Panel panel = panels.get(key);
            if (panel != null
                    && panel.commanded.size() == 1
                    && panel.commanded.get(0).isPresent()) {
                commands.put(key, panel);
            }
        }
        List<Trial> missing = trials.stream()
                .filter(t -> commands.entrySet().stream()
                        .anyMatch(c -> t.in(c.getKey()).isEmpty()
                                && !c.getValue().notReadily.contains(t)))
                .filter(t -> t.in(asFoundKey).filter(Trial.Shows::solvable).isPresent())
                .toList();
        if (!missing.isEmpty()) {
            each(missing, trial -> readily(trial, commands), stopped);
        }
    }

    private void readily(Trial trial, Map<String, Panel> commands) {
        Trial.Shows found = trial.in(asFoundKey).orElseThrow();
        Supposition now = trial.after(trial.blown(asFoundKey));
        commands.forEach((key, panel) -> {
            if (trial.in(key).isPresent() || panel.notReadily.contains(trial)) {
                return;
            }
            Optional<Foretold> told = panel.commanded.get(0).flatMap(c -> c.under(now, found.foretold()));
            if (told.isPresent()) {
                trial.add(key, Trial.Shows.of(told.get()));
                grown = true;
            } else {
                panel.notReadily.add(trial);
            }
        });
    }

    private void each(List<Trial> trials, Consumer<Trial> work, BooleanSupplier stopped) {
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        try {
            List<Future<?>> futures = new ArrayList<>();
            for (Trial trial : trials) {
                futures.add(pool.submit(() -> {
                    if (!stopped.getAsBoolean()) {
                        work.accept(trial);
                    }
                }));
            }
            for (Future<?> future : futures) {
                future.get();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (ExecutionException e) {
            throw new IllegalStateException(e.getCause());
        } finally {
            pool.shutdownNow();
            settle(pool);
        }
    }

    private static void settle(ExecutorService pool) {
        try {
            pool.awaitTermination(1, TimeUnit.MINUTES);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void one(Trial trial, List<Arrangement> arrangements, BooleanSupplier stopped) {
        in(trial, asFound, trial.supposition(), stopped);
        for (Arrangement arrangement : arrangements) {
            boolean fresh = arrangement.seriesLampWatts() != null;
            Supposition now = fresh ? freshFuses(circuit, trial.supposition()) : trial.after(trial.blown(asFoundKey));
            in(trial, arrangement, now, stopped);
        }
    }

    /** With a lamp in series good fuses go in, {@code deed.series-lamp}: what blew is not what is looked for any more. */
    static Supposition freshFuses(Circuit circuit, Supposition supposition) {
        return new Supposition(supposition.faults().stream()
                .filter(f -> !LINKS.contains(f.mode())
                        || circuit.part(f.part()).filter(Fuse.class::isInstance).isEmpty())
                .toList());
    }

    private void in(Trial trial, Arrangement arrangement, Supposition now, BooleanSupplier stopped) {
        String key = key(arrangement);
        Panel panel = panels.get(key);
        if (panel == null) {
            return;
        }
        int rounds = panel.rounds.size();
        for (int r = 0; r < rounds; r++) {
            Foretelling round = panel.rounds.get(r);
            boolean known = trial.in(key)
                    .filter(s -> !s.solvable() || s.readings().keySet().containsAll(round.checks()))
                    .isPresent();
            if (known || stopped.getAsBoolean()) {
                continue;
            }
            Trial.Shows found = trial.in(asFoundKey).orElse(Trial.Shows.UNSOLVED);
            Optional<Foretold> foretold = panel.commanded
                    .get(r)
                    .filter(c -> found.solvable())
                    .flatMap(c -> c.under(now, found.foretold()).or(() -> likeTwin(trial, c, now, found)))
                    .or(() -> round.under(now, stopped));
            if (!stopped.getAsBoolean()) {
                trial.add(key, foretold.map(Trial.Shows::of).orElse(Trial.Shows.UNSOLVED));
            }
        }
    }

    /** What a twin driver's command has shown of a trial already. */
    private Optional<Foretold> likeTwin(Trial trial, Commanded command, Supposition now, Trial.Shows found) {
        for (Map.Entry<String, Panel> other : panels.entrySet()) {
            Trial.Shows shown = trial.in(other.getKey()).orElse(Trial.Shows.UNSOLVED);
            List<Optional<Commanded>> twins = other.getValue().commanded;
            if (!shown.solvable() || twins.isEmpty() || twins.get(0).isEmpty()) {
                continue;
            }
            Optional<Foretold> like =
                    command.like(now, found.foretold(), twins.get(0).get(), shown.foretold());
            if (like.isPresent()) {
                return like;
            }
        }
        return Optional.empty();
    }

    /**
     * How far drawn healthy machines stand from the nominal one on the axis of a check, one figure a machine; null where
     * that is not known, or the healthy machine shows no figure there.
     */
    double @Nullable [] drawn(Ask.Metered ask) {
        String key = key(ask.arrangement());
        Panel panel = panels.get(key);
        // what an earlier run kept is known before the arrangement is made ready
        Map<Check, double[]> drawn = panel == null ? drawnBefore.getOrDefault(key, Map.of()) : panel.drawn;
        return drawn.get(ask.check());
    }

    /** Works out {@link #drawn} for checks; with the power on for all that are asked there, since one state tells them all. */
    void draw(Arrangement arrangement, List<Check> checks, BooleanSupplier stopped) throws UnfitArrangement {
        Panel panel = panels.get(key(arrangement));
        Trial.Shows nominal = healthy.in(key(arrangement)).orElse(Trial.Shows.UNSOLVED);
        if (panel == null
                || panel.rounds.isEmpty()
                || missing(panel, checks, nominal).isEmpty()) {
            return;
        }
        List<Check> missing = missing(panel, arrangement.powerOn() ? panel.checks : checks, nominal);
        List<Specimen> machines = new ArrayList<>();
        machines.add(Specimen.nominal(circuit));
        machines.addAll(specimens);
        List<Optional<List<Reading>>> all =
                inParallel(machines, m -> shown(panel.rounds.get(0), m, arrangement, missing, stopped));
        if (stopped.getAsBoolean() || all.isEmpty()) {
            return;
        }
        for (int k = 0; k < missing.size(); k++) {
            Check check = missing.get(k);
            Optional<Double> middle = onAxis(all.get(0), k, check);
            double[] away = new double[specimens.size()];
            for (int d = 0; d < away.length; d++) {
                Optional<Double> here = onAxis(all.get(d + 1), k, check);
                away[d] = middle.isPresent() && here.isPresent() ? here.get() - middle.get() : 0;
            }
            panel.drawn.put(check, away);
        }
        grown = true;
    }

    /** Those that show a figure where nothing is wrong, and of which it is not known how far machines lie apart. */
    private static List<Check> missing(Panel panel, Collection<Check> checks, Trial.Shows nominal) {
        return checks.stream()
                .distinct()
                .filter(c -> !panel.drawn.containsKey(c) && figure(nominal, c) != null)
                .toList();
    }

    private static Optional<Double> onAxis(Optional<List<Reading>> readings, int at, Check check) {
        return readings.map(r -> r.get(at)).filter(r -> !r.overRange()).map(r -> Axis.at(check.function(), r.value()));
    }

    private Optional<List<Reading>> shown(
            Foretelling nominal, Specimen machine, Arrangement arrangement, List<Check> checks, BooleanSupplier stopped)
            throws UnfitArrangement {
        if (stopped.getAsBoolean()) {
            return Optional.empty();
        }
        return arrangement.powerOn()
                ? nominal.ofAnother(machine, arrangement, checks, stopped)
                : Foretelling.of(machine, arrangement, meter, checks, stopped)
                        .under(Supposition.NOTHING, stopped)
                        .map(Foretold::readings);
    }

    /** What the nominal machine shows, SI; null where it is no figure. */
    private static @Nullable Double figure(Trial.Shows nominal, Check check) {
        Reading reading = nominal.readings().get(check);
        return reading == null || reading.overRange() ? null : reading.value();
    }

    /** What works out one of several. */
    private interface Work<T, R> {
        R of(T one) throws UnfitArrangement;
    }

    /** In the order of what is given; empty where the thread was interrupted. */
    private <T, R> List<R> inParallel(List<T> some, Work<T, R> work) throws UnfitArrangement {
        if (some.isEmpty()) {
            return List.of();
        }
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        try {
            List<Future<R>> futures = new ArrayList<>();
            for (T one : some) {
                futures.add(pool.submit(() -> work.of(one)));
            }
            List<R> all = new ArrayList<>();
            for (Future<R> future : futures) {
                all.add(future.get());
            }
            return all;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return List.of();
        } catch (ExecutionException e) {
            if (e.getCause() instanceof UnfitArrangement unfit) {
                throw unfit;
            }
            throw new IllegalStateException(e.getCause());
        } finally {
            pool.shutdownNow();
        }
    }
}
