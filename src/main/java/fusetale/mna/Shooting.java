package fusetale.mna;

import java.util.Arrays;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;

/**
 * Finds the state that one period maps to itself: Newton's method on the period map with the sensitivity of the end to the
 * start carried along (Aprille and Trick, "Steady-state analysis of nonlinear circuits with periodic inputs", Proc. IEEE
 * 60(1), 108-114, 1972), the inverse kept up between passes by Broyden's rank-one formula (Math. Comp. 19, 1965) so that a
 * neighbour's answer costs a few plain passes. The steps of a pass are fixed while Newton works; they are refined
 * where the local error asks for it, and the answer looked for again.
 */
final class Shooting {
    /** Above this ratio of full scale the steps are laid anew before every pass. */
    private static final double FAR = 1e-2;
    /** Contraction that Broyden's inverse shows once it has learnt; worse for several passes, it is worked out anew. */
    private static final double GOOD_CONTRACTION = 0.35;

    private static final double BAD_CONTRACTION = 0.9;
    private static final int MOST_SLOW_PASSES = 3;
    /** A step of Newton's that did not lead nearer is halved until this part of it is left. */
    private static final double SMALLEST_PART = 1.0 / 32;
    /** After so many passes in which all but the junctions repeat, the junctions are taken into the shooting. */
    private static final int MOST_FAST_PASSES = 3;
    /** A residual so many times the best one shows that Newton has lost its way. */
    private static final double ASTRAY = 4;
    /** A neighbour that has not led to the answer after so many passes was none. */
    private static final int MOST_PASSES_NEAR = 10;
    /** Nor one from which three passes have led no nearer than this. */
    private static final double STILL_FAR = 0.05;
    /** Newton must not want to go further than this ratio of full scale. */
    private static final double STEP_RATIO = 1e-5;
    /** Cycles the machine runs from rest before Newton takes over: the second try starts from a calmer state. */
    private static final int[] SETTLING_CYCLES = {2, 24};

    private static final int MOST_STRAYS = 3;
    /** States outside the shooting must repeat to this ratio of full scale, at least a volt. */
    private static final double FAST_RATIO = 1e-5;

    private static final double FAST_FLOOR_VOLTS = 1;

    private static final int MOST_REFINEMENTS = 3;
    /** A corner that moved inside its step since the steps were laid may err by this many times the accuracy, once. */
    private static final double TOLERATED = 5;

    private final Stepper stepper;
    private final Layout layout;
    private final PeriodicSettings settings;
    private final BooleanSupplier stopped;
    private final Keep start;
    private final Keep end;
    private double[] errors = new double[0];
    private @Nullable PeriodInverse inverse;
    private int cycles;

    Shooting(Stepper stepper, PeriodicSettings settings, BooleanSupplier stopped) {
        this.stepper = stepper;
        this.layout = stepper.layout;
        this.settings = settings;
        this.stopped = stopped;
        stepper.accuracy(settings.accuracy());
        this.start = new Keep(stepper);
        this.end = new Keep(stepper);
    }

    /**
     * Looks for the periodic state: from {@code near} where that is given, else or when that leads nowhere from rest, and
     * at last by letting the machine run on.
     */
    Solved<PeriodicState> solve(SampledRun.@Nullable Restart near) {
        long solvesBefore = stepper.stage.solves;
        Solved<PeriodicState> last = null;
        if (near != null) {
            load(near);
            last = passes(near.mesh.atMost(settings.coarsest()), MOST_PASSES_NEAR, solvesBefore);
        }
        for (int settling : SETTLING_CYCLES) {
            if (last != null && settled(last)) {
                return last;
            }
            inverse = null;
            stepper.rest();
            Mesh mesh = null;
            for (int k = 0; k < settling; k++) {
                mesh = adaptiveCycle();
                if (mesh == null) {
                    return failed();
                }
            }
            last = passes(mesh, settings.mostPasses(), solvesBefore);
        }
        return last != null && settled(last) ? last : plainStepping(solvesBefore);
    }

    /** Found, or stopped on request: nothing more to try. */
    private static boolean settled(Solved<PeriodicState> answer) {
        return !(answer instanceof Solved.Failed<PeriodicState> f) || f.reason().kind() == NotSolved.Kind.STOPPED;
    }

    private Solved<PeriodicState> passes(@Nullable Mesh first, int most, long solvesBefore) {
        Search search = new Search(first, new Keep(stepper));
        for (int pass = 1; pass <= most; pass++) {
            if (stopped.getAsBoolean()) {
                return stoppedOnRequest();
            }
            save(start);
            if (search.before > FAR && !search.fresh) {
                search.mesh = adaptiveCycle();
                restore(start);
            }
            Mesh mesh = search.mesh;
            boolean carry = inverse == null;
            if (mesh == null || !fixedCycle(mesh, carry)) {
                if (!recovered(search)) {
                    return failed();
                }
                continue;
            }
            save(end);
            search.fresh = false;
            double[] residual = residual();
            double norm = norm(residual);
            boolean repeats = norm <= settings.periodicity() && stepLeft(residual) <= STEP_RATIO;
            if (repeats && fastNorm() <= FAST_RATIO) {
                if (!refined(search, norm)) {
                    if (most != MOST_PASSES_NEAR && !carry) {
                        sharpen(mesh);
                    }
                    return found("shooting", mesh, norm, solvesBefore);
                }
            } else if (most == MOST_PASSES_NEAR && pass >= 3 && norm > STILL_FAR) {
                return noPeriodicState();
            } else if (repeats && ++search.fastPasses >= MOST_FAST_PASSES) {
                widen();
                search.fastPasses = 0;
            } else if (learnt(search, carry, residual, norm)) {
                search.best = Math.min(search.best, norm);
                search.origin.copy(start);
                search.step = newtonStep(residual);
                search.part = 1;
                search.residualBefore = residual;
                search.before = norm;
            }
        }
        return noPeriodicState();
    }

    /**
     * Takes the last cycle once more with its sensitivities, so that neighbours start from the inverse as it is here rather
     * than as Broyden guessed it on the way: it costs one pass and spares each of them two.
     */
    private void sharpen(Mesh mesh) {
        restore(start);
        if (fixedCycle(mesh, true)) {
            inverse = PeriodInverse.of(stepper);
        }
    }

    /** How far the search has come, pass by pass. */
    private static final class Search {
        @Nullable
        Mesh mesh;

        double before = Double.POSITIVE_INFINITY;
        double best = Double.POSITIVE_INFINITY;
        /** Newton's last step, and the residual it started from; empty where the state came otherwise. */
        double[] step = new double[0];

        double[] residualBefore = new double[0];
        /** Where that step started, and how much of it was taken. */
        final Keep origin;

        double part = 1;
        int refinements;
        int fastPasses;
        int slowPasses;
        int strays;
        /** No cycle has been completed yet. */
        boolean fresh = true;

        Search(@Nullable Mesh mesh, Keep origin) {
            this.mesh = mesh;
            this.origin = origin;
        }

        /** The next state does not come from Newton's step. */
        void goOn(double norm) {
            before = norm;
            step = new double[0];
        }
    }

    /** After a cycle that failed: a shorter step there, or another start; false where neither is left. */
    private boolean recovered(Search search) {
        Mesh mesh = search.mesh;
        if (mesh != null && mesh.level(failedStep) > 0) {
            search.mesh = mesh.halved(failedStep);
            restore(start);
            return true;
        }
        if (search.fresh || search.strays++ >= MOST_STRAYS) {
            return false;
        }
        // Newton's step led where nothing balances: go on from where the machine itself had come
        restore(end);
        inverse = null;
        search.goOn(Double.POSITIVE_INFINITY);
        return true;
    }

    /** Lays the steps anew where corners have moved inside them; false where the steps are fine, or enough was tried. */
    private boolean refined(Search search, double norm) {
        if (search.refinements >= MOST_REFINEMENTS || worst() <= TOLERATED * settings.accuracy()) {
            return false;
        }
        search.refinements++;
        search.mesh = adaptiveCycle();
        restore(end);
        search.goOn(norm);
        return true;
    }

    /** Brings the inverse up to date with the cycle just taken; false where that plain cycle has to be the step. */
    private boolean learnt(Search search, boolean carried, double[] residual, double norm) {
        if (carried) {
            inverse = inverse == null ? PeriodInverse.of(stepper) : inverse;
            if (inverse == null) {
                return false;
            }
        } else if (search.step.length == residual.length && search.residualBefore.length == residual.length) {
            if (norm > search.before && search.part > SMALLEST_PART) {
                search.part /= 2;
                retreat(search);
                return false;
            }
            if (inverse != null) {
                inverse.learn(search.step, search.part, search.residualBefore, residual);
            }
            search.slowPasses = norm > GOOD_CONTRACTION * search.before ? search.slowPasses + 1 : 0;
            if (search.slowPasses >= MOST_SLOW_PASSES || norm > BAD_CONTRACTION * search.before) {
                search.slowPasses = 0;
                inverse = null; // stale: work it out anew from here
                search.goOn(norm);
                return false;
            }
        }
        if (norm > ASTRAY * search.best) {
            // Newton went astray: let the machine run on by itself
            search.best = norm;
            inverse = null;
            search.goOn(norm);
            return false;
        }
        return true;
    }

    /** Runs on, cycle by cycle, until the state repeats by itself. */
    private Solved<PeriodicState> plainStepping(long solvesBefore) {
        stepper.rest();
        Mesh mesh = null;
        for (int k = 0; k < settings.mostCycles(); k++) {
            if (stopped.getAsBoolean()) {
                return stoppedOnRequest();
            }
            save(start);
            if (k % 8 == 0) {
                mesh = adaptiveCycle();
                restore(start);
            }
            if (mesh == null || !fixedCycle(mesh, false)) {
                return failed();
            }
            double norm = norm(residual());
            if (norm <= settings.periodicity()) {
                return found("stepping", mesh, norm, solvesBefore);
            }
        }
        return noPeriodicState();
    }

    private Solved<PeriodicState> noPeriodicState() {
        return new Solved.Failed<>(new NotSolved(
                NotSolved.Kind.NO_PERIODIC_STATE,
                List.of(),
                "no state that repeats was found within " + cycles + " cycles"));
    }

    private static Solved<PeriodicState> stoppedOnRequest() {
        return new Solved.Failed<>(new NotSolved(NotSolved.Kind.STOPPED, List.of(), "stopped on request"));
    }

    private Solved<PeriodicState> found(String method, Mesh mesh, double norm, long solvesBefore) {
        Work work = new Work(method, cycles, stepper.stage.solves - solvesBefore, norm);
        double[][] vectors = {
            start.x.clone(), start.own.clone(), start.volts.clone(), start.amps.clone(), stepper.scale.clone()
        };
        PeriodInverse kept = inverse == null ? null : inverse.copy();
        SampledRun.Restart restart =
                new SampledRun.Restart(layout, mesh, stepper.carriedStates().clone(), vectors, kept);
        return new Solved.Found<>(new SampledRun(stepper.reductions, stepper.recorder.tape(), work, restart));
    }

    private Solved<PeriodicState> failed() {
        return stopped.getAsBoolean() ? stoppedOnRequest() : new Solved.Failed<>(stepper.failure());
    }

    private void load(SampledRun.Restart near) {
        if (!near.layout.sameStates(layout)) {
            loadByName(near);
            return;
        }
        System.arraycopy(near.x, 0, stepper.x, 0, stepper.x.length);
        System.arraycopy(near.own, 0, stepper.own, 0, stepper.own.length);
        System.arraycopy(near.volts, 0, stepper.stage.volts, 0, layout.ports);
        System.arraycopy(near.amps, 0, stepper.stage.amps, 0, layout.ports);
        System.arraycopy(near.scale, 0, stepper.scale, 0, stepper.scale.length);
        stepper.carryStates(near.carriedStates);
        stepper.stage.sortSleepers();
        stepper.jump();
        inverse = null;
        PeriodInverse theirs = near.inverse;
        if (theirs != null && theirs.size() == stepper.carried()) {
            inverse = theirs.copy();
        }
    }

    /** Takes over what a neighbour of another shape has under the same names. */
    private void loadByName(SampledRun.Restart near) {
        stepper.rest();
        Layout theirs = near.layout;
        for (int s = 0; s < layout.states; s++) {
            int t = theirs.stateNamed(layout.cells.get(s).name());
            if (t >= 0) {
                stepper.x[s] = near.x[t];
                stepper.scale[s] = near.scale[t];
            }
        }
        for (Layout.Device d : layout.devices) {
            for (Layout.Device t : theirs.devices) {
                if (t.name().equals(d.name()) && t.law().ports() == d.law().ports()) {
                    System.arraycopy(
                            near.volts,
                            t.firstPort(),
                            stepper.stage.volts,
                            d.firstPort(),
                            d.law().ports());
                    System.arraycopy(
                            near.own,
                            t.firstState(),
                            stepper.own,
                            d.firstState(),
                            d.law().states());
                }
            }
        }
    }

    private void save(Keep into) {
        System.arraycopy(stepper.x, 0, into.x, 0, into.x.length);
        System.arraycopy(stepper.own, 0, into.own, 0, into.own.length);
        System.arraycopy(stepper.stage.volts, 0, into.volts, 0, into.volts.length);
        System.arraycopy(stepper.stage.amps, 0, into.amps, 0, into.amps.length);
    }

    private void restore(Keep from) {
        System.arraycopy(from.x, 0, stepper.x, 0, from.x.length);
        System.arraycopy(from.own, 0, stepper.own, 0, from.own.length);
        System.arraycopy(from.volts, 0, stepper.stage.volts, 0, from.volts.length);
        System.arraycopy(from.amps, 0, stepper.stage.amps, 0, from.amps.length);
        stepper.stage.sortSleepers();
        stepper.jump();
    }

    /** A state of the stepper to go back to. */
    private static final class Keep {
        void copy(Keep other) {
            System.arraycopy(other.x, 0, x, 0, x.length);
            System.arraycopy(other.own, 0, own, 0, own.length);
            System.arraycopy(other.volts, 0, volts, 0, volts.length);
            System.arraycopy(other.amps, 0, amps, 0, amps.length);
        }

        final double[] x;
        final double[] own;
        final double[] volts;
        final double[] amps;

        Keep(Stepper of) {
            x = new double[of.x.length];
            own = new double[of.own.length];
            volts = new double[of.layout.ports];
            amps = new double[of.layout.ports];
        }
    }

    /** One period with error control; the steps it took, or null where it failed. */
    private @Nullable Mesh adaptiveCycle() {
        cycles++;
        stepper.ageScale();
        StepControl control = new StepControl(stepper, settings.accuracy(), settings.coarsest());
        if (!control.run(0, Reductions.GRAINS, false, stopped)) {
            return null;
        }
        return control.mesh();
    }

    private int failedStep;

    private boolean fixedCycle(Mesh mesh, boolean carry) {
        cycles++;
        stepper.ageScale();
        stepper.recorder.clear();
        if (carry) {
            stepper.startSensitivities();
        }
        if (errors.length < mesh.size()) {
            errors = new double[2 * mesh.size()];
        }
        long tick = 0;
        for (int k = 0; k < mesh.size(); k++) {
            int level = mesh.level(k);
            if (!stepper.attempt(level, tick, carry, true)) {
                failedStep = k;
                return false;
            }
            errors[k] = level == 0 ? 0 : stepper.error(level);
            stepper.accept();
            tick += 1L << level;
        }
        Arrays.fill(errors, mesh.size(), errors.length, 0);
        return true;
    }

    private double worst() {
        double most = 0;
        for (double e : errors) {
            most = Math.max(most, e);
        }
        return most;
    }

    private double[] residual() {
        int[] carried = stepper.carriedStates();
        double[] r = new double[stepper.carried()];
        for (int c = 0; c < carried.length; c++) {
            r[c] = stepper.x[carried[c]] - start.x[carried[c]];
        }
        for (int s = 0; s < start.own.length; s++) {
            r[carried.length + s] = stepper.own[s] - start.own[s];
        }
        return r;
    }

    private double norm(double[] residual) {
        int[] carried = stepper.carriedStates();
        double most = 0;
        for (int k = 0; k < residual.length; k++) {
            double full = k < carried.length
                    ? Math.max(1e-3, stepper.scale[carried[k]])
                    : Math.max(1, Math.abs(start.own[k - carried.length]));
            most = Math.max(most, Math.abs(residual[k]) / full);
        }
        return most;
    }

    private double fastNorm() {
        double most = 0;
        for (int s = layout.slowStates; s < layout.states; s++) {
            most = Math.max(most, fastRatio(s));
        }
        return most;
    }

    private double fastRatio(int s) {
        for (int c : stepper.carriedStates()) {
            if (c == s) {
                return 0;
            }
        }
        return Math.abs(stepper.x[s] - start.x[s]) / Math.max(FAST_FLOOR_VOLTS, stepper.scale[s]);
    }

    /** Takes the junction voltages that do not settle by themselves into the shooting. */
    private void widen() {
        int[] carried = stepper.carriedStates();
        int[] wider = Arrays.copyOf(carried, layout.states);
        int n = carried.length;
        for (int s = layout.slowStates; s < layout.states; s++) {
            if (fastRatio(s) > FAST_RATIO / 10) {
                wider[n++] = s;
            }
        }
        stepper.carryStates(Arrays.copyOf(wider, n));
        inverse = null;
    }

    /**
     * How far Newton would still go, as a ratio of full scale: of a core whose offset takes a hundred cycles to die out the
     * mismatch of one cycle shows a hundredth.
     */
    private double stepLeft(double[] residual) {
        if (inverse == null) {
            inverse = PeriodInverse.of(stepper);
        }
        return inverse == null ? 0 : norm(inverse.times(residual));
    }

    /** Takes less of Newton's last step: where charge flows in fast and leaks out slowly, it goes too far. */
    private void retreat(Search search) {
        restore(search.origin);
        int[] carried = stepper.carriedStates();
        for (int c = 0; c < carried.length; c++) {
            stepper.x[carried[c]] += search.part * search.step[c];
        }
        for (int s = 0; s < stepper.own.length; s++) {
            stepper.own[s] += search.part * search.step[carried.length + s];
        }
    }

    private double[] newtonStep(double[] residual) {
        PeriodInverse h = inverse;
        if (h == null) {
            throw new IllegalStateException("no inverse");
        }
        double[] step = h.times(residual);
        int[] carried = stepper.carriedStates();
        for (int c = 0; c < carried.length; c++) {
            stepper.x[carried[c]] = start.x[carried[c]] + step[c];
        }
        for (int s = 0; s < start.own.length; s++) {
            stepper.own[s] = start.own[s] + step[carried.length + s];
        }
        stepper.jump();
        return step;
    }
}
