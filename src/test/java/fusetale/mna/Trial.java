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

/**
 * One network put to everything the solver can be asked, each answer held against what needs no knowledge of the solver:
 * Kirchhoff's laws, Tellegen's theorem (B. D. H. Tellegen, Philips Research Reports 7, 259-269, 1952), the elements' own
 * laws, and that a state called periodic repeats. Either there is a solution that passes, or an honest word why there is
 * none.
 */
public final class Trial {
    /** Part of a current that rounding leaves where resistances and conductances cancel, per ohm and siemens: 2⁻⁵². */
    private static final double CANCELLING_RATIO = 0x1p-52;
    /** But never more of the largest current anywhere than this. */
    private static final double MOST_ROUNDING_RATIO = 1e-4;
    /** A voltage is told to so much of the largest one: eight roundings. */
    private static final double VOLTS_ROUNDING_RATIO = 0x1p-50;
    /** A state may come back this far from where it was [ratio of full scale], for a cycle taken with other steps. */
    private static final double REPEATS_RATIO = 2e-3;

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
        double peakVolts = 0;
        for (int n = 1; n < network.nodes().size(); n++) {
            peakVolts = Math.max(peakVolts, Math.abs(rest.volts(n, 0)));
        }
        balanced("rest", Balance.of(network, rest), rounding(peakVolts, 0));
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
        double rounding = rounding(peakVolts(state), 1 / shortestStageSeconds());
        balanced("periodic", balance, rounding);
        power("periodic", balance, rounding * peakVolts(state) * SETTINGS.period());
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
        balanced("run", Balance.of(network, run), rounding(peakVolts(run), 1 / shortestStageSeconds()));
    }

    private static double shortestStageSeconds() {
        return Sdirk.GAMMA * SETTINGS.period() / Reductions.GRAINS;
    }

    private double peakVolts(Run run) {
        double peak = 0;
        for (int n = 1; n < network.nodes().size(); n++) {
            Waveform volts = run.volts(n, 0);
            peak = Math.max(peak, Math.max(volts.highest(), -volts.lowest()));
        }
        return peak;
    }

    /** What the rounding of node voltages makes of the current through the largest conductance there is [A]. */
    private double rounding(double peakVolts, double perSecond) {
        double siemens = 0;
        for (Element e : network.elements()) {
            if (e instanceof Element.Resistor r) {
                siemens = Math.max(siemens, 1 / r.ohms());
            } else if (e instanceof Element.Capacitor c) {
                siemens = Math.max(siemens, c.farads() * perSecond);
            }
        }
        return VOLTS_ROUNDING_RATIO * peakVolts * siemens;
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

    /**
     * Largest resistance [ohm] a stage may see: of resistors, and behind a winding that hangs on capacitance alone γh/C. A
     * current through it is told to 2⁻⁵² of itself times its ratio to the smallest resistance.
     */
    private double largestOhms() {
        double ohms = 1e6;
        double longest = Sdirk.GAMMA * SETTINGS.period() / SETTINGS.fewestSteps();
        for (Element e : network.elements()) {
            if (e instanceof Element.Resistor r) {
                ohms = Math.max(ohms, r.ohms());
            } else if (e instanceof Element.Capacitor c) {
                ohms = Math.max(ohms, longest / c.farads());
            } else if (e instanceof Element.Ported p) {
                for (int k = 0; k < p.ports().size(); k++) {
                    double farads = p.law().farads(k);
                    ohms = Math.max(ohms, farads > 0 ? longest / farads : 0);
                }
            }
        }
        return ohms;
    }

    private double largestSiemens() {
        double siemens = 1;
        for (Element e : network.elements()) {
            if (e instanceof Element.Resistor r) {
                siemens = Math.max(siemens, 1 / r.ohms());
            }
        }
        return siemens;
    }

    private void balanced(String question, Balance balance, double roundingAmps) {
        List<String> unbalanced = balance.unbalanced(
                1e-6,
                1e-9 + roundingAmps,
                Math.min(MOST_ROUNDING_RATIO, CANCELLING_RATIO * largestOhms() * largestSiemens()));
        if (!unbalanced.isEmpty()) {
            found(question + ": currents do not add up", "%s", unbalanced);
        }
        // what charges a junction's capacitance comes back within a cycle, not in a run from empty: 1 nF, 100 V, 33 ms
        double charging = question.equals("run") ? 3e-6 : 0;
        List<String> disobedient = balance.disobedient(
                1e-3 + CANCELLING_RATIO * largestOhms() * balance.largestAmps(),
                LAW_RATIO,
                2e-8 + roundingAmps + charging);
        if (!disobedient.isEmpty()) {
            found(question + ": a part does not obey its law", "%s", disobedient);
        }
    }

    /**
     * A thousandth of what is delivered, and as much of what is moved to and fro: reactive power at 128 steps a cycle is
     * told by a second-order method with an error of (2π/128)³.
     */
    private void power(String question, Balance balance, double roundingJoules) {
        double leftJoules = balance.deliveredJoules() - balance.takenJoules() - balance.idealJoules();
        double allowed = 1e-3 * Math.abs(balance.deliveredJoules()) + 1e-3 * balance.movedJoules();
        if (!(Math.abs(leftJoules) <= allowed + roundingJoules + 1e-12)) {
            found(
                    question + ": power does not add up",
                    "%s J given, %s J taken, %s J moved, %s J left",
                    balance.deliveredJoules(),
                    balance.takenJoules(),
                    balance.movedJoules(),
                    leftJoules);
        }
    }

    /** From the state found, with steps chosen anew, the machine comes back to it. */
    private void oneMoreCycle(PeriodicState state) {
        SampledRun.Restart there = state instanceof SampledRun run ? run.restart : null;
        if (there == null) {
            found("periodic: no place to start from", "%s", state.work());
            return;
        }
        Layout layout = new Layout(network);
        Reductions reductions = new Reductions(layout).of(SETTINGS.period());
        Stepper stepper = new Stepper(reductions);
        stepper.rest();
        stepper.accuracy(SETTINGS.accuracy());
        System.arraycopy(there.x, 0, stepper.x, 0, there.x.length);
        System.arraycopy(there.own, 0, stepper.own, 0, there.own.length);
        System.arraycopy(there.volts, 0, stepper.stage.volts, 0, there.volts.length);
        System.arraycopy(there.amps, 0, stepper.stage.amps, 0, there.amps.length);
        System.arraycopy(there.scale, 0, stepper.scale, 0, there.scale.length);
        stepper.stage.sortSleepers();
        StepControl control = new StepControl(stepper, SETTINGS.accuracy() / 10, SETTINGS.coarsest());
        if (!control.run(0, Reductions.GRAINS, false, () -> false, grains -> {})) {
            found("periodic: cannot go on", "%s", stepper.failure());
            return;
        }
        for (int s = 0; s < layout.slowStates; s++) {
            double scale = Math.max(FULL_SCALE_FLOOR, Math.max(stepper.scale[s], Math.abs(there.x[s])));
            double off = Math.abs(stepper.x[s] - there.x[s]) / scale;
            if (!(off <= REPEATS_RATIO)) {
                found(
                        "periodic: one more cycle ends elsewhere",
                        "%s: %s, then %s; full scale %s",
                        layout.cells.get(s).name(),
                        there.x[s],
                        stepper.x[s],
                        scale);
                return;
            }
        }
    }
}
