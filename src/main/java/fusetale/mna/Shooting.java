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
    private final double[] x0;
    private final double[] own0;
    private final double[] volts0;
    private final double[] amps0;
    private double[] errors = new double[0];
    private double @Nullable [][] inverse;
    private int cycles;

    Shooting(Stepper stepper, PeriodicSettings settings, BooleanSupplier stopped) {
        this.stepper = stepper;
        this.layout = stepper.layout;
        this.settings = settings;
        this.stopped = stopped;
        this.x0 = new double[stepper.x.length];
        this.own0 = new double[stepper.own.length];
        this.volts0 = new double[layout.ports];
        this.amps0 = new double[layout.ports];
    }

    /** Looks for the periodic state, from {@code near} where that is given. */
    Solved<PeriodicState> solve(SampledRun.@Nullable Restart near) {
        long solvesBefore = stepper.stage.solves;
        Mesh mesh = null;
        if (near != null && load(near)) {
            mesh = near.mesh;
        } else {
            stepper.rest();
            for (int k = 0; k < 2; k++) {
                mesh = adaptiveCycle();
                if (mesh == null) {
                    return failed();
                }
            }
        }
        return passes(mesh, solvesBefore);
    }

    private Solved<PeriodicState> passes(@Nullable Mesh first, long solvesBefore) {
        Mesh mesh = first;
        double before = Double.POSITIVE_INFINITY;
        double best = Double.POSITIVE_INFINITY;
        double[] step = new double[0];
        double[] residualBefore = new double[0];
        int refinements = 0;
        int fastPasses = 0;
        int slowPasses = 0;
        boolean fresh = true;
        for (int pass = 1; pass <= settings.mostPasses(); pass++) {
            if (stopped.getAsBoolean()) {
                return new Solved.Failed<>(new NotSolved(NotSolved.Kind.STOPPED, List.of(), "stopped on request"));
            }
            save();
            if (before > FAR && !fresh) {
                mesh = adaptiveCycle();
                restore();
            }
            boolean carry = inverse == null;
            if (mesh == null || !fixedCycle(mesh, carry)) {
                int bad = failedStep;
                if (mesh != null && mesh.level(bad) > 0) {
                    mesh = mesh.halved(bad);
                    restore();
                    continue;
                }
                return failed();
            }
            fresh = false;
            double[] residual = residual();
            double norm = norm(residual);
            double fast = fastNorm();
            if (norm <= settings.periodicity() && fast <= FAST_RATIO) {
                if (refinements < MOST_REFINEMENTS && worst() > TOLERATED * settings.accuracy()) {
                    refinements++;
                    save();
                    mesh = adaptiveCycle();
                    restore();
                    before = norm;
                    step = new double[0];
                    continue;
                }
                return found(mesh, pass, norm, solvesBefore);
            }
            if (norm <= settings.periodicity() && ++fastPasses >= 3) {
                widen();
                fastPasses = 0;
                continue;
            }
            if (carry) {
                inverse = invert();
                if (inverse == null) {
                    continue; // the plain cycle just taken is the step
                }
            } else if (step.length == residual.length && residualBefore.length == residual.length) {
                broyden(step, residualBefore, residual);
                slowPasses = norm > GOOD_CONTRACTION * before ? slowPasses + 1 : 0;
                if (slowPasses >= MOST_SLOW_PASSES || norm > BAD_CONTRACTION * before) {
                    slowPasses = 0;
                    inverse = null; // stale: work it out anew from here
                    before = norm;
                    step = new double[0];
                    continue;
                }
            }
            if (norm > 4 * best) {
                // Newton went astray: let the machine run on by itself
                best = norm;
                before = norm;
                inverse = null;
                step = new double[0];
                continue;
            }
            best = Math.min(best, norm);
            step = newtonStep(residual);
            residualBefore = residual;
            before = norm;
        }
        return plainStepping(mesh, solvesBefore);
    }

    /** Runs on, cycle by cycle, until the state repeats by itself. */
    private Solved<PeriodicState> plainStepping(@Nullable Mesh last, long solvesBefore) {
        Mesh mesh = last;
        for (int k = 0; k < settings.mostCycles(); k++) {
            if (stopped.getAsBoolean()) {
                return new Solved.Failed<>(new NotSolved(NotSolved.Kind.STOPPED, List.of(), "stopped on request"));
            }
            save();
            if (k % 8 == 0) {
                mesh = adaptiveCycle();
                restore();
            }
            if (mesh == null || !fixedCycle(mesh, false)) {
                return failed();
            }
            double norm = norm(residual());
            if (norm <= settings.periodicity()) {
                return found(mesh, settings.mostPasses() + k, norm, solvesBefore);
            }
        }
        return new Solved.Failed<>(new NotSolved(
                NotSolved.Kind.NO_PERIODIC_STATE,
                List.of(),
                "no state that repeats was found within " + cycles + " cycles"));
    }

    private Solved<PeriodicState> found(Mesh mesh, int pass, double norm, long solvesBefore) {
        String method = pass > settings.mostPasses() ? "stepping" : "shooting";
        Work work = new Work(method, cycles, stepper.stage.solves - solvesBefore, norm);
        double[][] vectors = {x0.clone(), own0.clone(), volts0.clone(), amps0.clone(), stepper.scale.clone()};
        double[][] kept = inverse == null ? new double[0][] : inverse;
        SampledRun.Restart restart =
                new SampledRun.Restart(layout, mesh, stepper.carriedStates().clone(), vectors, kept);
        return new Solved.Found<>(new SampledRun(stepper.reductions, stepper.recorder.tape(), work, restart));
    }

    private Solved<PeriodicState> failed() {
        return new Solved.Failed<>(stepper.failure());
    }

    private boolean load(SampledRun.Restart near) {
        if (!near.layout.sameStates(layout)) {
            loadByName(near);
            return true;
        }
        System.arraycopy(near.x, 0, stepper.x, 0, stepper.x.length);
        System.arraycopy(near.own, 0, stepper.own, 0, stepper.own.length);
        System.arraycopy(near.volts, 0, stepper.stage.volts, 0, layout.ports);
        System.arraycopy(near.amps, 0, stepper.stage.amps, 0, layout.ports);
        System.arraycopy(near.scale, 0, stepper.scale, 0, stepper.scale.length);
        stepper.carryStates(near.carriedStates);
        stepper.stage.sortSleepers();
        stepper.jump();
        if (near.inverse.length == stepper.carried()) {
            double[][] copy = new double[near.inverse.length][];
            for (int k = 0; k < copy.length; k++) {
                copy[k] = near.inverse[k].clone();
            }
            inverse = copy;
        }
        return true;
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

    private void save() {
        System.arraycopy(stepper.x, 0, x0, 0, x0.length);
        System.arraycopy(stepper.own, 0, own0, 0, own0.length);
        System.arraycopy(stepper.stage.volts, 0, volts0, 0, volts0.length);
        System.arraycopy(stepper.stage.amps, 0, amps0, 0, amps0.length);
    }

    private void restore() {
        System.arraycopy(x0, 0, stepper.x, 0, x0.length);
        System.arraycopy(own0, 0, stepper.own, 0, own0.length);
        System.arraycopy(volts0, 0, stepper.stage.volts, 0, volts0.length);
        System.arraycopy(amps0, 0, stepper.stage.amps, 0, amps0.length);
        stepper.stage.sortSleepers();
        stepper.jump();
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
            r[c] = stepper.x[carried[c]] - x0[carried[c]];
        }
        for (int s = 0; s < own0.length; s++) {
            r[carried.length + s] = stepper.own[s] - own0[s];
        }
        return r;
    }

    private double norm(double[] residual) {
        int[] carried = stepper.carriedStates();
        double most = 0;
        for (int k = 0; k < residual.length; k++) {
            double full = k < carried.length
                    ? Math.max(1e-3, stepper.scale[carried[k]])
                    : Math.max(1, Math.abs(own0[k - carried.length]));
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
        return Math.abs(stepper.x[s] - x0[s]) / Math.max(FAST_FLOOR_VOLTS, stepper.scale[s]);
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

    /** (1 − M)⁻¹ from the sensitivities of the pass just done; null where it is singular. */
    private double @Nullable [][] invert() {
        double[][] m = stepper.sensitivities();
        int n = m.length;
        double[] a = new double[n * n];
        for (int j = 0; j < n; j++) {
            for (int k = 0; k < n; k++) {
                a[j * n + k] = (j == k ? 1 : 0) - m[k][j];
            }
        }
        LinearSystem.Factored f = LinearSystem.factor(a, n);
        if (!f.ok()) {
            return null;
        }
        double[][] rows = new double[n][n];
        double[] column = new double[n];
        for (int k = 0; k < n; k++) {
            Arrays.fill(column, 0);
            column[k] = 1;
            f.system().solve(column);
            for (int j = 0; j < n; j++) {
                rows[j][k] = column[j];
            }
        }
        return rows;
    }

    private double[] newtonStep(double[] residual) {
        double[][] h = inverse;
        if (h == null) {
            throw new IllegalStateException("no inverse");
        }
        int n = residual.length;
        double[] step = new double[n];
        for (int j = 0; j < n; j++) {
            double sum = 0;
            for (int k = 0; k < n; k++) {
                sum += h[j][k] * residual[k];
            }
            step[j] = sum;
        }
        int[] carried = stepper.carriedStates();
        for (int c = 0; c < carried.length; c++) {
            stepper.x[carried[c]] = x0[carried[c]] + step[c];
        }
        for (int s = 0; s < own0.length; s++) {
            stepper.own[s] = own0[s] + step[carried.length + s];
        }
        stepper.jump();
        return step;
    }

    /** H += (s − H·y)(sᵀ·H)/(sᵀ·H·y) with y = r before − r after. */
    private void broyden(double[] s, double[] before, double[] after) {
        double[][] h = inverse;
        if (h == null) {
            return;
        }
        int n = s.length;
        double[] hy = new double[n];
        double[] sh = new double[n];
        double shy = 0;
        for (int j = 0; j < n; j++) {
            for (int k = 0; k < n; k++) {
                hy[j] += h[j][k] * (before[k] - after[k]);
                sh[k] += s[j] * h[j][k];
            }
        }
        for (int j = 0; j < n; j++) {
            shy += s[j] * hy[j];
        }
        if (shy == 0 || !Double.isFinite(shy)) {
            return;
        }
        for (int j = 0; j < n; j++) {
            double factor = (s[j] - hy[j]) / shy;
            for (int k = 0; k < n; k++) {
                h[j][k] += factor * sh[k];
            }
        }
    }
}
