package fusetale.mna;

import java.util.Arrays;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;

/**
 * The map from the state at the start of a period to that at its end, as those see it who look for the state it maps to
 * itself: takes cycles, measures what they miss by, keeps and restores states. One thread.
 */
final class PeriodMap {
    /** States outside the shooting must repeat to a ratio of full scale, of at least so much. */
    private static final double FAST_FLOOR_VOLTS = 1;
    /** A junction whose voltage repeats no better than this is taken into the shooting when it is widened. */
    private static final double WIDENED_RATIO = 1e-6;

    /**
     * Full scale [V or A] of a linear state is at least this: of a capacitor that a short keeps at microvolts a cycle repeats
     * no better than its stages are solved.
     */
    private static final double LEAST_FULL_SCALE = 0.02;
    /**
     * And at most this, more than any machine has: a current that grows from cycle to cycle without end must not count as one that
     * repeats because it has become large.
     */
    private static final double MOST_FULL_SCALE = 1e6;
    /** What halving the steps takes off the error of a method of the second order. */
    private static final double HALVED = 0.75;
    /** Rough steps may err by so many times as much. */
    private static final double ROUGH = 10;
    /** What a bounded own state may change by in one step, as a part of itself. */
    private static final double MOST_OWN_CHANGE = 0.4;

    final Stepper stepper;
    final Layout layout;
    private final PeriodicSettings settings;
    private final BooleanSupplier stopped;
    /** The state at the start of the cycle taken last, once it was saved there. */
    final Keep start;

    private double accuracy;
    private double[] errors = new double[0];
    /** Devices with states of their own, and the mean square voltage [V²] of each port over the last cycle. */
    private final Layout.Device[] ownDevices;

    private final double[] squareVolts;
    private int cycles;

    PeriodMap(Stepper stepper, PeriodicSettings settings, BooleanSupplier stopped) {
        this.stepper = stepper;
        this.layout = stepper.layout;
        this.settings = settings;
        this.stopped = stopped;
        this.accuracy = settings.accuracy();
        stepper.accuracy(accuracy);
        this.start = new Keep(stepper);
        this.ownDevices =
                layout.devices.stream().filter(d -> d.law().states() > 0).toArray(Layout.Device[]::new);
        this.squareVolts = new double[layout.ports];
    }

    /** Local error allowed a step, as a ratio of each state's full scale. */
    double accuracy() {
        return accuracy;
    }

    /** Allows that from now on; the stages are solved as well as before. */
    void accuracy(double ratio) {
        accuracy = ratio;
    }

    /** Cycles taken so far. */
    int cycles() {
        return cycles;
    }

    int failedStep() {
        return failedStep;
    }

    void save(Keep into) {
        System.arraycopy(stepper.x, 0, into.x, 0, into.x.length);
        System.arraycopy(stepper.own, 0, into.own, 0, into.own.length);
        System.arraycopy(stepper.stage.volts, 0, into.volts, 0, into.volts.length);
        System.arraycopy(stepper.stage.amps, 0, into.amps, 0, into.amps.length);
    }

    void restore(Keep from) {
        System.arraycopy(from.x, 0, stepper.x, 0, from.x.length);
        System.arraycopy(from.own, 0, stepper.own, 0, from.own.length);
        System.arraycopy(from.volts, 0, stepper.stage.volts, 0, from.volts.length);
        System.arraycopy(from.amps, 0, stepper.stage.amps, 0, from.amps.length);
        stepper.stage.sortSleepers();
        stepper.jump();
    }

    /** A state of the stepper to go back to. */
    static final class Keep {
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
    @Nullable
    Mesh adaptiveCycle() {
        return adaptiveCycle(accuracy, settings.coarsest());
    }

    /** The same with rougher steps: for the way to where fine ones are worth it. */
    @Nullable
    Mesh roughCycle() {
        return adaptiveCycle(ROUGH * accuracy, settings.coarsest() + 1);
    }

    private @Nullable Mesh adaptiveCycle(double ratio, int coarsest) {
        cycles++;
        stepper.ageScale();
        Arrays.fill(squareVolts, 0);
        StepControl control = new StepControl(stepper, ratio, coarsest);
        if (!control.run(0, Reductions.GRAINS, false, stopped, this::addSquares)) {
            return null;
        }
        return control.mesh();
    }

    /** Where the last {@link #fixedCycle} failed. */
    private int failedStep;

    boolean fixedCycle(Mesh mesh, boolean carry) {
        cycles++;
        stepper.ageScale();
        stepper.recorder.clear();
        Arrays.fill(squareVolts, 0);
        if (carry) {
            stepper.startSensitivities();
        }
        if (errors.length < mesh.size()) {
            errors = new double[2 * mesh.size()];
        }
        stepper.stage.foresight.begin(mesh);
        long tick = 0;
        for (int k = 0; k < mesh.size(); k++) {
            int level = mesh.level(k);
            if (!stepper.attempt(level, tick, carry, true)) {
                failedStep = k;
                stepper.stage.foresight.forget();
                return false;
            }
            errors[k] = level == 0 ? 0 : stepper.error(level);
            stepper.accept();
            tick += 1L << level;
            addSquares(1L << level);
        }
        stepper.stage.foresight.end(mesh);
        Arrays.fill(errors, mesh.size(), errors.length, 0);
        return true;
    }

    /** The same with sensitivities as exact as the stages: for neighbours, who start from them. */
    boolean exactCycle(Mesh mesh) {
        stepper.stage.slopes.exact(true);
        boolean taken = fixedCycle(mesh, true);
        stepper.stage.slopes.exact(false);
        return taken;
    }

    private void addSquares(long grains) {
        double part = grains / (double) Reductions.GRAINS;
        for (Layout.Device d : ownDevices) {
            for (int p = d.firstPort(); p < d.firstPort() + d.law().ports(); p++) {
                double v = stepper.stage.volts[p];
                squareVolts[p] += part * v * v;
            }
        }
    }

    /**
     * Puts the devices' own states that the last cycle changed by more than {@code ratio} where they should settle under the
     * voltages of that cycle, everything else as it was at its start; false where there is nothing to put.
     */
    boolean settleOwn(double ratio) {
        boolean put = false;
        for (Layout.Device d : ownDevices) {
            double[] rms = new double[d.law().ports()];
            for (int k = 0; k < rms.length; k++) {
                rms[k] = Math.sqrt(squareVolts[d.firstPort() + k]);
            }
            for (int k = 0; k < d.law().states(); k++) {
                int s = d.firstState() + k;
                double settled = d.law().settledState(k, rms);
                boolean far = Math.abs(stepper.own[s] - start.own[s]) > ratio * Math.abs(start.own[s]);
                if (far && !Double.isNaN(settled)) {
                    if (!put) {
                        restore(start);
                    }
                    put = true;
                    stepper.own[s] = settled;
                }
            }
        }
        return put;
    }

    double worst() {
        double most = 0;
        for (double e : errors) {
            most = Math.max(most, e);
        }
        return most;
    }

    double[] residual() {
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

    /** What the cycle from {@link #start} misses by with every step halved, back at that start; null where it fails. */
    double @Nullable [] halvedResidual(Mesh mesh) {
        restore(start);
        double[] missed = fixedCycle(mesh.halved(), false) ? residual() : null;
        restore(start);
        return missed;
    }

    /**
     * How far off the last cycle is at its end, and the state that repeats, to which all cycles before have added theirs; the larger,
     * as a ratio of full scale. What halving the steps changes of a method of the second order is three quarters of its error
     * (L. F. Richardson, The Approximate Arithmetical Solution by Finite Differences of Physical Problems, Phil. Trans. A 210, 1911).
     *
     * @param halved what that cycle misses by with its steps halved
     * @param inverse of that cycle; null where there is none
     */
    double error(double[] halved, @Nullable PeriodInverse inverse) {
        double[] error = residual();
        for (int k = 0; k < error.length; k++) {
            error[k] = (halved[k] - error[k]) / HALVED;
        }
        return Math.max(norm(error), inverse == null ? 0 : norm(inverse.times(error)));
    }

    double norm(double[] residual) {
        double[] full = fullScale();
        double most = 0;
        for (int k = 0; k < residual.length; k++) {
            most = Math.max(most, Math.abs(residual[k]) / full[k]);
        }
        return most;
    }

    /** Whether no linear state of the cycle just taken is beyond {@link #MOST_FULL_SCALE}, where what grows without end may seem to repeat. */
    boolean isBounded() {
        for (double x : stepper.x) {
            if (!(Math.abs(x) <= MOST_FULL_SCALE)) {
                return false;
            }
        }
        return true;
    }

    /** Full scale of each carried state. */
    double[] fullScale() {
        int[] carried = stepper.carriedStates();
        double[] full = new double[stepper.carried()];
        for (int k = 0; k < full.length; k++) {
            full[k] = k < carried.length
                    ? Math.min(MOST_FULL_SCALE, Math.max(LEAST_FULL_SCALE, stepper.scale[carried[k]]))
                    : Math.max(1, Math.abs(start.own[k - carried.length]));
        }
        return full;
    }

    double fastNorm() {
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
    void widen() {
        int[] carried = stepper.carriedStates();
        int[] wider = Arrays.copyOf(carried, layout.states);
        int n = carried.length;
        for (int s = layout.slowStates; s < layout.states; s++) {
            if (fastRatio(s) > WIDENED_RATIO) {
                wider[n++] = s;
            }
        }
        stepper.carryStates(Arrays.copyOf(wider, n));
    }

    /**
     * Goes a part of a step from an origin; devices' own states stay within their bounds, and change by no more than {@link
     * #MOST_OWN_CHANGE} of themselves at once: a lamp's heat goes with the fourth power of its temperature.
     *
     * @param step of the carried states. Not modified.
     * @return the step taken
     */
    double[] move(Keep origin, double[] step, double part) {
        int[] carried = stepper.carriedStates();
        double[] taken = new double[step.length];
        for (int c = 0; c < carried.length; c++) {
            taken[c] = part * step[c];
            stepper.x[carried[c]] = origin.x[carried[c]] + taken[c];
        }
        for (Layout.Device d : layout.devices) {
            for (int s = d.firstState(); s < d.firstState() + d.law().states(); s++) {
                double from = origin.own[s];
                double wanted = part * step[carried.length + s];
                double most = MOST_OWN_CHANGE * Math.abs(from);
                double least = d.law().leastState(s - d.firstState());
                double limited = least > Double.NEGATIVE_INFINITY ? Math.max(-most, Math.min(most, wanted)) : wanted;
                stepper.own[s] = Math.max(least, from + limited);
                taken[carried.length + s] = stepper.own[s] - from;
            }
        }
        stepper.jump();
        return taken;
    }
}
