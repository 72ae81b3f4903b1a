package fusetale.mna;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;

/**
 * Solves one network, keeping what can be kept between questions: the structure check, the reduction to ports and states
 * for each step size, workspaces. Belongs to one thread.
 */
public final class Solver {
    /** Longest step of a run, as a level: with a period of 1/60 s, 4 s. */
    private static final int COARSEST_RUN = 22;

    private final Network network;
    private final Layout layout;
    private Reductions reductions;
    private @Nullable List<NotSolved> flaws;
    private @Nullable List<NotSolved> flawsAtRest;
    private @Nullable Stepper stepper;
    private @Nullable PortStage restStage;

    /** A solver for {@code network}; nothing is computed yet. */
    public Solver(Network network) {
        this.network = network;
        this.layout = new Layout(network);
        this.reductions = new Reductions(layout);
    }

    /**
     * A solver for {@code network} that will be asked about states near one already known: laws are linearised there, and
     * where only a few conductances differ the reductions follow from those of the known state. That makes it faster, not
     * different. Several threads may use the same known state.
     */
    public static Solver near(Network network, PeriodicState known) {
        if (!(known instanceof SampledRun run) || run.restart == null) {
            return new Solver(network);
        }
        SampledRun.Restart there = run.restart;
        List<Element> elements = new ArrayList<>();
        for (Element e : network.elements()) {
            elements.add(e instanceof Element.Ported p && p.law().states() > 0 ? there.near(p) : e);
        }
        Network linearised = new Network(network.nodes(), elements);
        Layout layout = new Layout(linearised);
        List<Norton> changes = LinearChange.between(run.reductions().layout, layout);
        return changes == null
                ? new Solver(linearised)
                : new Solver(linearised, layout, run.reductions().changed(layout, changes));
    }

    private Solver(Network network, Layout layout, Reductions reductions) {
        this.network = network;
        this.layout = layout;
        this.reductions = reductions;
    }

    /** The network. */
    public Network network() {
        return network;
    }

    /**
     * What is wrong with the structure or the values of the network, before any number is computed; all at once, empty
     * where nothing is.
     */
    public List<NotSolved> flaws() {
        List<NotSolved> known = flaws;
        if (known == null) {
            known = new Structure(network).flaws();
            flaws = known;
        }
        return known;
    }

    private List<NotSolved> flawsAtRest() {
        List<NotSolved> known = flawsAtRest;
        if (known == null) {
            known = new Structure(network).flawsAtRest();
            flawsAtRest = known;
        }
        return known;
    }

    /** The same network with a meter or load laid across two nodes; shares this solver's reductions. */
    public Solver with(Norton norton) {
        List<Element> elements = new ArrayList<>(network.elements());
        if (norton.siemens() > 0) {
            elements.add(new Element.Resistor("~load", norton.one(), norton.two(), 1 / norton.siemens()));
        }
        elements.add(new Element.CurrentSource(
                "~current", /* one= */ norton.two(), /* two= */ norton.one(), new SourceShape.Constant(norton.amps())));
        Network widened = new Network(network.nodes(), elements);
        Layout widenedLayout = new Layout(widened);
        Solver loaded = new Solver(widened, widenedLayout, reductions.with(widenedLayout, norton));
        if (norton.siemens() > 0 && norton.one() != norton.two()) {
            // a resistance beside a current source closes no loop of sources and leaves no node on current sources
            // alone
            loaded.flaws = flaws().isEmpty() ? List.of() : null;
            loaded.flawsAtRest = flaws().isEmpty() && flawsAtRest().isEmpty() ? List.of() : null;
        }
        return loaded;
    }

    /**
     * The state at rest: sources at their mean, capacitors open, inductors short.
     *
     * @param near where to start from, an operating point of the same or a neighbouring network
     */
    public Solved<OperatingPoint> operatingPoint(@Nullable OperatingPoint near) {
        List<NotSolved> wrong = flaws();
        if (wrong.isEmpty()) {
            wrong = flawsAtRest();
        }
        if (!wrong.isEmpty()) {
            return new Solved.Failed<>(wrong.get(0));
        }
        Solved<Reduction> reduced = reductions.atRest();
        if (!(reduced instanceof Solved.Found<Reduction> found)) {
            return new Solved.Failed<>(((Solved.Failed<Reduction>) reduced).reason());
        }
        PortStage stage = restStage == null ? new PortStage(layout, PortStage.REST_VOLTS) : restStage;
        restStage = stage;
        java.util.Arrays.fill(stage.volts, 0);
        if (near instanceof RestPoint point && point.portVolts().length == stage.volts.length) {
            System.arraycopy(point.portVolts(), 0, stage.volts, 0, stage.volts.length);
        }
        long before = stage.solves;
        Solved<RestSearch.Success> search = new RestSearch(stage, found.value()).search();
        if (!(search instanceof Solved.Found<RestSearch.Success> success)) {
            return new Solved.Failed<>(((Solved.Failed<RestSearch.Success>) search).reason());
        }
        double[] input = stage.input.clone();
        return new Solved.Found<>(new RestPoint(
                found.value(),
                input,
                stage.volts.clone(),
                success.value().method(),
                success.value().passes(),
                stage.solves - before));
    }

    /**
     * The state that repeats after one period.
     *
     * @param near where to start from, a periodic state of the same or a neighbouring network
     * @param stopped asked now and then; true ends the work with {@link NotSolved.Kind#STOPPED}
     */
    public Solved<PeriodicState> periodicState(
            PeriodicSettings settings, @Nullable PeriodicState near, BooleanSupplier stopped) {
        if (!flaws().isEmpty()) {
            return new Solved.Failed<>(flaws().get(0));
        }
        SampledRun.Restart restart = near instanceof SampledRun run ? run.restart : null;
        return new Shooting(stepper(settings.period()), settings, stopped).solve(restart);
    }

    /**
     * A run from rest (all capacitors empty, all inductors without current) to {@code seconds}.
     *
     * @param settings accuracy, and the period that the grid of steps is made of
     * @param seconds how long [s]
     */
    public Solved<Run> run(PeriodicSettings settings, double seconds) {
        return run(settings, seconds, null, Map.of());
    }

    /**
     * A run from a state at rest, with some capacitors charged otherwise.
     *
     * @param settings accuracy, and the period that the grid of steps is made of
     * @param seconds how long [s]
     * @param from where it starts, a state at rest of the same network, or of the one that a meter was laid on; null for all
     *     capacitors empty and all inductors without current
     * @param capacitorVolts voltage [V] of capacitors at the start, first node against second, by element
     * @throws IllegalArgumentException where there is no such capacitor
     */
    public Solved<Run> run(
            PeriodicSettings settings,
            double seconds,
            @Nullable OperatingPoint from,
            Map<String, Double> capacitorVolts) {
        if (!flaws().isEmpty()) {
            return new Solved.Failed<>(flaws().get(0));
        }
        Stepper s = stepper(settings.period());
        s.accuracy(settings.accuracy());
        s.rest();
        if (from != null) {
            s.start(from);
        }
        capacitorVolts.forEach(s::charge);
        s.recorder.clear();
        long before = s.stage.solves;
        // where nothing slow follows it, no error says that a step passes over a sine
        boolean alternates = layout.sources.stream().anyMatch(source -> source.shape() instanceof SourceShape.Sine);
        int coarsest = alternates ? settings.coarsest() : COARSEST_RUN;
        StepControl control = new StepControl(s, settings.accuracy(), coarsest);
        long ticks = Math.max(1, Math.round(seconds / reductions.grainSeconds()));
        if (!control.run(0, ticks, true, () -> false, grains -> {})) {
            return new Solved.Failed<>(s.failure());
        }
        Work work = new Work("stepping", 1, s.stage.solves - before, 0);
        return new Solved.Found<>(new SampledRun(reductions, s.recorder.tape(), work, null));
    }

    /**
     * A run from the start of a periodic state to {@code seconds}: what follows when laws or sources of this network change
     * over at times of their own.
     *
     * @param settings accuracy and period, those of {@code from}
     * @param from a periodic state of a network with the same states in the same order, as this one has before anything changes
     * @param seconds how long [s], above 0
     * @param stopped asked now and then; true ends the work with {@link NotSolved.Kind#STOPPED}
     * @throws IllegalArgumentException where {@code from} is the state of a network with other states
     */
    public Solved<Run> runFrom(PeriodicSettings settings, PeriodicState from, double seconds, BooleanSupplier stopped) {
        if (!flaws().isEmpty()) {
            return new Solved.Failed<>(flaws().get(0));
        }
        SampledRun.Restart start = from instanceof SampledRun run ? run.restart : null;
        if (start == null || !start.layout.sameStates(layout)) {
            throw new IllegalArgumentException("a run from the state of another network");
        }
        Stepper s = stepper(settings.period());
        s.accuracy(settings.accuracy());
        s.begin(start);
        s.recorder.clear();
        long before = s.stage.solves;
        StepControl control = new StepControl(s, settings.accuracy(), settings.coarsest());
        long ticks = Math.max(1, Math.round(seconds / reductions.grainSeconds()));
        if (!control.run(0, ticks, true, stopped, grains -> {})) {
            return new Solved.Failed<>(
                    stopped.getAsBoolean()
                            ? new NotSolved(NotSolved.Kind.STOPPED, List.of(), "stopped before the run ended")
                            : s.failure());
        }
        Work work = new Work("stepping", 1, s.stage.solves - before, 0);
        return new Solved.Found<>(new SampledRun(reductions, s.recorder.tape(), work, null));
    }

    private Stepper stepper(double period) {
        Reductions of = reductions.of(period);
        Stepper s = stepper;
        if (s == null || of != reductions) {
            reductions = of;
            s = new Stepper(of);
            stepper = s;
        }
        return s;
    }
}
