package fusetale.mna;

import fusetale.journeys.Balance;
import fusetale.signal.Waveform;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * One network put to everything the solver can be asked, each answer held against what needs no knowledge of the solver:
 * Kirchhoff's laws, Tellegen's theorem (B. D. H. Tellegen, Philips Research Reports 7, 259-269, 1952), the elements' own
 * laws, and that a state called periodic repeats. Either there is a solution that passes, or an honest word why there is
 * none.
 */
public final class Trial {
    /** A state may come back this far from where it was [ratio of full scale], for a cycle taken with other steps. */
    private static final double REPEATS_RATIO = 2e-3;

    /** Linear equations are solved to this ratio of the largest term: of some dozens, rounding left 1.4e-12 at worst. */
    private static final double SOLVED_RATIO = 1e-10;

    /** Below this, a current is not followed: neither in a sum, nor in what it does to picofarads within a cycle. */
    private static final double UNFOLLOWED_AMPS = 1e-9;

    /** How much less a step of the cycle that judges may err by; the others where a stage of the first is not solved. */
    private static final List<Double> FINER = List.of(300.0, 100.0, 30.0);

    /** So much less that they are as short as steps can be: where those of the answer are shorter than those of the judge. */
    private static final double FINEST = 1e5;

    /** A part that sleeps is followed to 0.3 μV across the resistance it sees: 3 mohm and an ampere. */
    private static final double LAW_RATIO = 1e-4;

    private static final double FULL_SCALE_FLOOR = 0.05;
    /** Beyond the time asked for, the solver may go on for so long [s]: one cycle at the shortest step. */
    private static final double GRACE_SECONDS = 5;

    private static final PeriodicSettings SETTINGS = PeriodicSettings.mains(RandomNetworks.HERTZ);

    private final Network network;
    private final double patienceSeconds;
    private final Map<String, String> outcomes = new LinkedHashMap<>();
    private final Map<String, NotSolved> refusals = new LinkedHashMap<>();
    private final List<Finding> findings = new ArrayList<>();

    private Trial(Network network, double patienceSeconds) {
        this.network = network;
        this.patienceSeconds = patienceSeconds;
    }

    /**
     * Something that must not be.
     *
     * @param what in few words, the same for findings of one sort
     * @param detail figures
     */
    public record Finding(String what, String detail) {}

    /**
     * What came of a trial.
     *
     * @param outcomes how each question ended: {@code rest}, {@code periodic}, {@code run}, or {@code structure} alone
     * @param refusals the reason for each question that has no answer
     * @param findings what must not be
     */
    public record Verdict(Map<String, String> outcomes, Map<String, NotSolved> refusals, List<Finding> findings) {
        /** Copies. */
        public Verdict {
            outcomes = Map.copyOf(outcomes);
            refusals = Map.copyOf(refusals);
            findings = List.copyOf(findings);
        }
    }

    /**
     * Asks a solver everything about a network.
     *
     * @param patienceSeconds after which the search for the periodic state is asked to stop
     */
    public static Verdict of(Network network, double patienceSeconds) {
        Trial trial = new Trial(network, patienceSeconds);
        List<NotSolved> flaws = new Solver(network).flaws();
        if (flaws.isEmpty()) {
            trial.rest();
            trial.periodic();
            trial.switchedOn();
        } else {
            flaws.forEach(trial::honest);
            trial.outcomes.put("structure", flaws.get(0).kind().toString());
            trial.refusals.put("structure", flaws.get(0));
        }
        return new Verdict(trial.outcomes, trial.refusals, trial.findings);
    }

    private void found(String what, String format, Object... values) {
        findings.add(new Finding(what, String.format(Locale.ROOT, format, values)));
    }

    /** A refusal says what it is about, and nothing that is not there. */
    private void honest(NotSolved reason) {
        Set<String> known = new HashSet<>(network.nodes());
        network.elements().forEach(e -> {
            known.add(e.name());
            for (int k = 0; k < e.ends().size(); k++) {
                known.add(e.name() + "." + k);
            }
        });
        boolean structural = reason.kind().compareTo(NotSolved.Kind.NO_OPERATING_POINT) < 0;
        if (reason.detail().isBlank() || (structural && reason.names().isEmpty())) {
            found("refusal without a reason", "%s", reason);
        }
        if (!known.containsAll(reason.names())) {
            found("refusal names what is not there", "%s", reason);
        }
    }

    private <T> boolean failed(String question, Solved<T> solved) {
        if (solved instanceof Solved.Failed<T> f) {
            outcomes.put(question, f.reason().kind().toString());
            refusals.put(question, f.reason());
            honest(f.reason());
            return true;
        }
        return false;
    }

    private void rest() {
        Solved<OperatingPoint> solved = new Solver(network).operatingPoint(null);
        if (failed("rest", solved)) {
            return;
        }
        OperatingPoint rest = Solve.found(solved);
        outcomes.put("rest", rest.work().method());
        for (int n = 1; n < network.nodes().size(); n++) {
            if (!Double.isFinite(rest.volts(n, 0))) {
                found("rest: no number", "%s: %s V", network.nodes().get(n), rest.volts(n, 0));
                return;
            }
        }
        balanced("rest", Balance.of(network, rest), Rounding.of(network, (RestPoint) rest), 0);
    }

    private void periodic() {
        long start = System.nanoTime();
        Solved<PeriodicState> solved = new Solver(network)
                .periodicState(SETTINGS, null, () -> System.nanoTime() - start > patienceSeconds * 1e9);
        double seconds = (System.nanoTime() - start) * 1e-9;
        if (seconds > patienceSeconds + GRACE_SECONDS) {
            found("periodic: does not stop when asked", "%.1f s", seconds);
        }
        if (failed("periodic", solved)) {
            return;
        }
        PeriodicState state = Solve.found(solved);
        outcomes.put("periodic", state.work().method());
        if (!finite("periodic", state)) {
            return;
        }
        Balance balance = Balance.of(network, state);
        Rounding rounding = Rounding.of(network, (SampledRun) state);
        balanced("periodic", balance, rounding, 0);
        power("periodic", balance, rounding.watts(peakVolts(state)) * SETTINGS.period() + notFollowedJoules(state));
        if (!(state.work().residual() < 1e-6)) {
            found(
                    "periodic: does not repeat",
                    "end less start %s of full scale",
                    state.work().residual());
        }
        oneMoreCycle(state);
    }

    private void switchedOn() {
        Solved<Run> solved = new Solver(network).run(SETTINGS, 2 * SETTINGS.period());
        if (failed("run", solved)) {
            return;
        }
        Run run = Solve.found(solved);
        outcomes.put("run", run.work().method());
        if (!finite("run", run)) {
            return;
        }
        balanced("run", Balance.of(network, run), Rounding.of(network, (SampledRun) run), chargingAmps(run));
    }

    /** Mean current [A] that may have charged a junction's capacitance, which comes back within a cycle but not in a run from empty. */
    private double chargingAmps(Run run) {
        double farads = 0;
        for (Element e : network.elements()) {
            if (e instanceof Element.Ported p) {
                for (int k = 0; k < p.ports().size(); k++) {
                    farads = Math.max(farads, p.law().farads(k));
                }
            }
        }
        return 2 * peakVolts(run) * farads / (2 * SETTINGS.period());
    }

    private double peakVolts(Run run) {
        double peak = 0;
        for (int n = 1; n < network.nodes().size(); n++) {
            Waveform volts = run.volts(n, 0);
            peak = Math.max(peak, Math.max(volts.highest(), -volts.lowest()));
        }
        return peak;
    }

    private boolean finite(String question, Run run) {
        for (int n = 1; n < network.nodes().size(); n++) {
            Waveform volts = run.volts(n, 0);
            for (int k = 0; k < volts.size(); k++) {
                if (!Double.isFinite(volts.value(k))) {
                    found(question + ": no number", "%s: %s V", network.nodes().get(n), volts.value(k));
                    return false;
                }
            }
        }
        return true;
    }

    private void balanced(String question, Balance balance, Rounding rounding, double charging) {
        if (!(rounding.residual() <= SOLVED_RATIO)) {
            found(question + ": equations badly solved", "to %s", rounding.residual());
        }
        List<String> unbalanced =
                balance.unbalanced(1e-6, (node, sample) -> UNFOLLOWED_AMPS + rounding.amps(node, sample));
        if (!unbalanced.isEmpty()) {
            found(question + ": currents do not add up", "%s", unbalanced);
        }
        List<String> disobedient = balance.disobedient(
                ends -> 1e-3 + rounding.volts(ends), LAW_RATIO, ends -> 2e-8 + rounding.amps(ends) + charging);
        if (!disobedient.isEmpty()) {
            found(question + ": a part does not obey its law", "%s", disobedient);
        }
    }

    /**
     * A thousandth of what is delivered, and as much of what is moved to and fro: reactive power at 128 steps a cycle is
     * told by a second-order method with an error of (2π/128)³. Besides, a source's corner lies up to half a grain from the
     * end of the step it belongs to: of an edge, the square of that part of it.
     */
    private void power(String question, Balance balance, double besidesJoules) {
        double leftJoules = balance.deliveredJoules() - balance.takenJoules() - balance.idealJoules();
        double allowed = 1e-3 * Math.abs(balance.deliveredJoules()) + (1e-3 + bentRatio()) * balance.movedJoules();
        if (!(Math.abs(leftJoules) <= allowed + besidesJoules + 1e-12)) {
            found(
                    question + ": power does not add up",
                    "%s J given, %s J taken, %s J moved, %s J left",
                    balance.deliveredJoules(),
                    balance.takenJoules(),
                    balance.movedJoules(),
                    leftJoules);
        }
    }

    private double bentRatio() {
        double most = 0;
        for (Element e : network.elements()) {
            if (e instanceof Element.VoltageSource v && v.shape() instanceof SourceShape.Corners c) {
                for (int k = 1; k < c.seconds().size(); k++) {
                    double edge = c.seconds().get(k) - c.seconds().get(k - 1);
                    most = Math.max(most, SETTINGS.period() / Reductions.GRAINS / 2 / edge);
                }
            }
        }
        return most * most;
    }

    /**
     * Energy [J] that inductors hold at currents of up to the least full scale of a winding: a coil that rings there with a
     * capacitor and no resistance has it damped away by steps that do not follow it.
     */
    private double notFollowedJoules(Run run) {
        double joules = 0;
        for (Element e : network.elements()) {
            if (e instanceof Element.Inductor l) {
                Waveform amps = run.amps(l.name());
                double peak = Math.min(Stepper.SCALE_FLOOR_AMPS, Math.max(amps.highest(), -amps.lowest()));
                joules += l.henries() * peak * peak;
            }
        }
        return joules;
    }

    /** From the state found, with steps chosen anew, the machine comes back to it. */
    private void oneMoreCycle(PeriodicState state) {
        SampledRun.Restart there = state instanceof SampledRun run ? run.restart : null;
        if (there == null) {
            found("periodic: no place to start from", "%s", state.work());
            return;
        }
        Stepper stepper = gone(there, FINER.get(0), 1);
        for (int k = 1; k < FINER.size() && stepper == null; k++) {
            stepper = gone(there, FINER.get(k), 1);
        }
        if (stepper == null) {
            notJudged("no balance on any steps");
            return;
        }
        int other = elsewhere(stepper, there.x);
        Stepper onGrains = other < 0 ? stepper : gone(there, FINEST, 1);
        if (onGrains != null && elsewhere(onGrains, there.x) < 0) {
            return;
        }
        Stepper onHalfGrains = gone(there, FINER.get(0), 2);
        if (onHalfGrains == null || elsewhere(onHalfGrains, stepper.x) >= 0) {
            notJudged("it ends elsewhere on grains half as long: what is here is quicker than a grain");
            return;
        }
        found(
                "periodic: one more cycle ends elsewhere",
                "%s: %s, then %s; full scale %s",
                stepper.layout.cells.get(other).name(),
                there.x[other],
                stepper.x[other],
                fullScale(stepper, other, there.x));
    }

    /** Told with its reason, like a refusal of the solver's own: the judge is the solver on finer steps. */
    private void notJudged(String reason) {
        outcomes.put("one more cycle", NotSolved.Kind.STEP_TOO_SMALL.toString());
        refusals.put("one more cycle", new NotSolved(NotSolved.Kind.STEP_TOO_SMALL, List.of(), reason));
    }

    /** The first slow state that has not come back to where it was; −1 where all have. */
    private static int elsewhere(Stepper stepper, double[] there) {
        Layout layout = stepper.layout;
        for (int s = 0; s < layout.slowStates; s++) {
            Layout.StateCell cell = layout.cells.get(s);
            double unfollowed = cell.branch() < 0 ? UNFOLLOWED_AMPS * SETTINGS.period() / cell.farads() : 0;
            double off = Math.max(0, Math.abs(stepper.x[s] - there[s]) - unfollowed);
            if (!(off <= REPEATS_RATIO * fullScale(stepper, s, there))) {
                return s;
            }
        }
        return -1;
    }

    private static double fullScale(Stepper stepper, int state, double[] there) {
        return Math.max(FULL_SCALE_FLOOR, Math.max(stepper.scale[state], Math.abs(there[state])));
    }

    /**
     * A cycle further from there, on steps that err less by a ratio and may be as short as a part of a grain; null where a stage is
     * not solved.
     */
    private @Nullable Stepper gone(SampledRun.Restart there, double finer, int grainParts) {
        Stepper stepper = new Stepper(new Reductions(new Layout(network)).of(SETTINGS.period() / grainParts));
        stepper.rest();
        stepper.accuracy(SETTINGS.accuracy());
        stepper.begin(there);
        StepControl control = new StepControl(stepper, SETTINGS.accuracy() / finer, SETTINGS.coarsest());
        return control.run(0, (long) grainParts * Reductions.GRAINS, false, () -> false, grains -> {}) ? stepper : null;
    }
}
