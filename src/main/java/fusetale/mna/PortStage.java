package fusetale.mna;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Solves the ports of one implicit stage, or of the state at rest: finds port voltages v with v = v0 + Z·i(v), where v0 and
 * Z come from a {@link Reduction}. Holds all that one stage needs and reuses it; one thread.
 *
 * <p>Only the ports whose current answers to their voltage take part in Newton's iteration; the others (junctions that are
 * firmly off, loads of constant current) are dormant: their current is taken as it was, checked afterwards, and the stage
 * repeated with them awake where it was wrong.
 */
final class PortStage {
    /** At rest, where one solution is the whole answer, Newton has converged when the last step was below this [V]. */
    static final double REST_VOLTS = 1e-10;
    /** What a large voltage adds to that, as a ratio of it. */
    private static final double STEP_RATIO = 1e-9;
    /** A device whose slope times its own port resistance stays below this may sleep: its fixed point contracts so fast. */
    private static final double DORMANT_SLOPE = 0.02;
    /** Above this a sleeper is woken at once. */
    private static final double WAKING_SLOPE = 0.1;

    /**
     * A sleeper below this is left out of the sensitivities. Above it, it may move a stage by next to nothing and still,
     * over the thousand stages of a cycle, be all that lets a capacitor's charge in.
     */
    private static final double UNFELT_SLOPE = 1e-6;

    private static final int MOST_ITERATIONS = 60;
    /** The whole of a careful step is shortened to this [V]: a stage that saturates else throws its neighbours far off. */
    private static final double CAREFUL_VOLTS = 2;

    private static final int MOST_CAREFUL_ITERATIONS = 400;
    /** A sleeper that does not settle within so many passes of its own is woken. */
    private static final int MOST_CORRECTIONS = 8;
    /** Factors are kept while each iteration's step is at most this part of the one before. */
    private static final double CHORD_CONTRACTION = 0.2;
    /** After the first iteration there is no step before: kept where the step was below so many times close enough. */
    private static final double CHORD_START = 1e5;
    /** A step that a law cut short counts as at least so many times too long. */
    private static final double HELD_BACK = 1e6;

    final Layout layout;
    final PortPoint[] points;
    final double[] volts;
    final double[] amps;
    final double[] out;
    /** x*, u, i: what the reduction is multiplied with. */
    final double[] input;
    /** Predicted own states of the devices before the stage. */
    final double[] ownStart;
    /** Their own states after it. */
    final double[] ownEnd;

    private double closeVolts;
    private boolean careful;
    private final boolean[] awake;
    private final AwakePorts newton;
    /** Counts changes of who sleeps and of what sleepers carry: what is summed up for one count holds while it stays. */
    private int sleepers;
    /** Counts changes of who sleeps only. */
    private int turns;
    /** Per reduction slot: what all sleeping currents add to the outputs, and the count it was summed for. */
    private final double[] @Nullable [] sleeping = new double[Reductions.SLOTS] @Nullable [];

    private final int[] sleepingSince = new int[Reductions.SLOTS];
    private boolean sortFirst;
    /** The last two stages solved, to foresee the next. */
    private final double[] lastVolts;

    private final double[] earlierVolts;
    private double lastSeconds;
    private double earlierSeconds;
    private int stagesKnown;
    /** Sleepers whose slope the sensitivities feel. */
    private final int[] lightSleeper;

    private int lightSleepers;
    /** Newton iterations since the workspace was made. */
    long solves;

    /** What to solve besides the plain stage: for continuation of the operating point. */
    record Relaxation(double shuntSiemens, double sourceRatio) {
        static final Relaxation NONE = new Relaxation(0, 1);
    }

    /**
     * A workspace.
     *
     * @param closeVolts step [V] at which Newton has converged
     */
    PortStage(Layout layout, double closeVolts) {
        this.closeVolts = closeVolts;
        this.layout = layout;
        this.points = new PortPoint[layout.devices.size()];
        for (int d = 0; d < points.length; d++) {
            PortLaw law = layout.devices.get(d).law();
            points[d] = new PortPoint(law.ports(), law.states());
        }
        this.volts = new double[layout.ports];
        this.amps = new double[layout.ports];
        this.out = new double[layout.states + layout.ports];
        this.input = new double[layout.states + layout.sources.size() + layout.ports];
        this.ownStart = new double[layout.deviceStates];
        this.ownEnd = new double[layout.deviceStates];
        this.awake = new boolean[points.length];
        this.lightSleeper = new int[points.length];
        this.newton = new AwakePorts(layout, points);
        this.lastVolts = new double[layout.ports];
        this.earlierVolts = new double[layout.ports];
        wakeAll();
    }

    /** Sets the step [V] at which Newton has converged from now on. */
    void close(double volts) {
        closeVolts = volts;
    }

    /** Solves like {@link #solve}, but with everybody awake, from where the ports are, and with fresh slopes throughout. */
    boolean solveCarefully(Reduction reduction, double seconds) {
        wakeAll();
        stagesKnown = 0;
        careful = true;
        boolean solved = solve(reduction, seconds, Relaxation.NONE);
        careful = false;
        return solved;
    }

    /**
     * Solves one stage. On entry {@link #input} holds x* and u, {@link #ownStart} the devices' predicted states, {@link
     * #volts} a guess. On success {@link #out}, {@link #volts}, {@link #amps}, {@link #ownEnd} and the current part of
     * {@link #input} hold the answer.
     *
     * @return whether Newton converged
     */
    boolean solve(Reduction reduction, double seconds, Relaxation relaxation) {
        int portInput = layout.states + layout.sources.size();
        prepare(reduction, seconds, portInput, relaxation);
        for (int attempt = 0; attempt < MOST_ITERATIONS; attempt++) {
            newton.gather(reduction, awake, turns);
            if (attempt == 0) {
                foresee(seconds);
            }
            if (!iterate(reduction, relaxation)) {
                stagesKnown = 0;
                return false;
            }
            if (settleDormant(reduction, portInput)) {
                finish(reduction, portInput);
                remember(seconds);
                return true;
            }
        }
        stagesKnown = 0;
        return false;
    }

    /** Starts the awake ports where the last two stages lead, as far as their laws let a step go. */
    private void foresee(double seconds) {
        if (stagesKnown < 2 || !(seconds > lastSeconds)) {
            return;
        }
        double part = (seconds - lastSeconds) / (lastSeconds - earlierSeconds);
        for (int a = 0; a < newton.devices; a++) {
            Layout.Device device = layout.devices.get(newton.device[a]);
            for (int k = 0; k < points[newton.device[a]].volts.length; k++) {
                int p = device.firstPort() + k;
                double led = volts[p] + part * (volts[p] - earlierVolts[p]);
                volts[p] = device.law().limited(k, led, volts[p]);
            }
        }
    }

    private void remember(double seconds) {
        if (stagesKnown > 0 && !(seconds > lastSeconds)) {
            stagesKnown = 0;
        }
        System.arraycopy(lastVolts, 0, earlierVolts, 0, earlierVolts.length);
        System.arraycopy(volts, 0, lastVolts, 0, lastVolts.length);
        earlierSeconds = lastSeconds;
        lastSeconds = seconds;
        stagesKnown = Math.min(2, stagesKnown + 1);
    }

    private void prepare(Reduction reduction, double seconds, int portInput, Relaxation relaxation) {
        int rows = reduction.outputs;
        Arrays.fill(out, 0, rows, 0.0);
        for (int j = 0; j < portInput; j++) {
            double y = j < layout.states ? input[j] : input[j] * relaxation.sourceRatio();
            if (y != 0) {
                axpy(out, reduction.columns[j], y, rows);
            }
        }
        for (int d = 0; d < points.length; d++) {
            Layout.Device device = layout.devices.get(d);
            PortPoint at = points[d];
            at.seconds = seconds;
            at.stepSeconds = reduction.stageSeconds;
            for (int s = 0; s < at.start.length; s++) {
                at.start[s] = ownStart[device.firstState() + s];
            }
        }
        if (relaxation.shuntSiemens() > 0) {
            wakeAll();
        } else if (sortFirst) {
            sort(reduction, portInput);
        }
        addSleepers(reduction, portInput, rows);
    }

    private void addSleepers(Reduction reduction, int portInput, int rows) {
        double[] sum = sleeping[reduction.slot];
        if (sum == null) {
            sum = new double[out.length];
            sleeping[reduction.slot] = sum;
            sleepingSince[reduction.slot] = sleepers - 1;
        }
        if (sleepingSince[reduction.slot] != sleepers) {
            Arrays.fill(sum, 0, rows, 0.0);
            for (int d = 0; d < points.length; d++) {
                int first = layout.devices.get(d).firstPort();
                for (int k = 0; k < points[d].amps.length && !awake[d]; k++) {
                    if (amps[first + k] != 0) {
                        axpy(sum, reduction.columns[portInput + first + k], amps[first + k], rows);
                    }
                }
            }
            sleepingSince[reduction.slot] = sleepers;
        }
        axpy(out, sum, 1, rows);
    }

    /**
     * Newton's iteration, with the factors of an earlier iteration or stage as long as they still contract (the chord
     * method: Ortega and Rheinboldt, Iterative Solution of Nonlinear Equations, 1970, ch. 7).
     */
    private boolean iterate(Reduction reduction, Relaxation relaxation) {
        double before = Double.POSITIVE_INFINITY;
        int most = careful ? MOST_CAREFUL_ITERATIONS : MOST_ITERATIONS;
        for (int iteration = 0; iteration < most; iteration++) {
            solves++;
            evaluateActive(relaxation.shuntSiemens());
            newton.residual(reduction, out, volts);
            if ((!newton.factored || careful) && !newton.factor()) {
                return false;
            }
            newton.solve();
            if (careful) {
                newton.shorten(CAREFUL_VOLTS);
            }
            double moved = step();
            if (!(moved < Double.POSITIVE_INFINITY)) {
                newton.factored = false;
                return false;
            }
            if (moved <= 1) {
                carryCurrents();
                return true;
            }
            newton.factored = iteration > 0 ? moved < CHORD_CONTRACTION * before : moved < CHORD_START;
            before = moved;
        }
        return false;
    }

    private void evaluateActive(double shuntSiemens) {
        for (int a = 0; a < newton.devices; a++) {
            int d = newton.device[a];
            evaluate(d);
            if (shuntSiemens > 0) {
                PortPoint at = points[d];
                int n = at.amps.length;
                for (int k = 0; k < n; k++) {
                    at.amps[k] += shuntSiemens * at.volts[k];
                    at.siemens[k * n + k] += shuntSiemens;
                }
            }
        }
    }

    private void evaluate(int d) {
        Layout.Device device = layout.devices.get(d);
        PortPoint at = points[d];
        for (int k = 0; k < at.volts.length; k++) {
            at.volts[k] = volts[device.firstPort() + k];
        }
        device.law().evaluate(at);
    }

    /** Moves the awake voltages; the largest step in units of what is close enough, more than 1 where a law held back. */
    private double step() {
        double[] right = newton.right;
        double most = 0;
        int r = 0;
        for (int a = 0; a < newton.devices; a++) {
            int d = newton.device[a];
            Layout.Device device = layout.devices.get(d);
            for (int k = 0; k < points[d].volts.length; k++) {
                double dv = right[r];
                int p = device.firstPort() + k;
                double proposed = volts[p] + dv;
                double taken = device.law().limited(k, proposed, volts[p]);
                double size = Math.abs(dv) / (closeVolts + STEP_RATIO * Math.abs(proposed));
                if (!(size < Double.POSITIVE_INFINITY)) {
                    return Double.POSITIVE_INFINITY;
                }
                most = Math.max(most, taken == proposed ? size : Math.max(size, HELD_BACK));
                right[r] = taken - volts[p];
                volts[p] = taken;
                r++;
            }
        }
        return most;
    }

    /** Currents and own states at the final voltages by their slopes: the linear equations then hold exactly. */
    private void carryCurrents() {
        double[] right = newton.right;
        int r = 0;
        for (int a = 0; a < newton.devices; a++) {
            int d = newton.device[a];
            Layout.Device device = layout.devices.get(d);
            PortPoint at = points[d];
            int n = at.amps.length;
            for (int k = 0; k < n; k++) {
                double i = at.amps[k];
                for (int j = 0; j < n; j++) {
                    i += at.siemens[k * n + j] * right[r + j];
                }
                amps[device.firstPort() + k] = i;
            }
            for (int s = 0; s < at.end.length; s++) {
                double w = at.end[s];
                for (int j = 0; j < n; j++) {
                    w += at.endByVolts[s * n + j] * right[r + j];
                }
                ownEnd[device.firstState() + s] = w;
            }
            r += n;
        }
    }

    /**
     * Evaluates the sleepers where the awake ports have put them. A current that changed little is corrected in place, one
     * that answers to its voltage wakes its device; false where either happened and the awake ports must be solved again.
     */
    private boolean settleDormant(Reduction reduction, int portInput) {
        int rows = reduction.outputs;
        for (int r = 0; r < newton.ports; r++) {
            int p = newton.port[r];
            axpy(out, reduction.columns[portInput + p], amps[p], rows);
        }
        if (newton.devices == points.length) {
            return true;
        }
        boolean settled = true;
        for (int d = 0; d < points.length; d++) {
            if (awake[d]) {
                continue;
            }
            settled &= settle(reduction, portInput, d, rows);
        }
        if (!settled) {
            for (int r = 0; r < newton.ports; r++) {
                int p = newton.port[r];
                axpy(out, reduction.columns[portInput + p], -amps[p], rows);
            }
        }
        return settled;
    }

    /**
     * Finds one sleeper's currents with everybody else's held, each port by a Newton iteration of its own (block relaxation
     * of Gauss and Seidel); true where that moved the awake ports by next to nothing.
     */
    private boolean settle(Reduction reduction, int portInput, int d, int rows) {
        PortPoint at = points[d];
        int first = layout.devices.get(d).firstPort();
        int n = at.amps.length;
        boolean same = true;
        for (int pass = 0; pass < MOST_CORRECTIONS; pass++) {
            for (int k = 0; k < n; k++) {
                volts[first + k] = out[reduction.portRow[first + k]];
            }
            evaluate(d);
            if (slopeRatio(reduction, portInput, d) > WAKING_SLOPE) {
                wake(reduction, portInput, d, rows);
                return false;
            }
            boolean moved = false;
            for (int k = 0; k < n; k++) {
                double change = at.amps[k] - amps[first + k];
                if (change == 0) {
                    continue;
                }
                double[] column = reduction.columns[portInput + first + k];
                double ohms = column[reduction.portRow[first + k]];
                change /= 1 - ohms * at.siemens[k * n + k];
                if (Math.abs(change * ohms) <= closeVolts) {
                    continue;
                }
                moved = true;
                axpy(out, column, change, rows);
                amps[first + k] += change;
                sleepers++;
                for (int r = 0; r < newton.ports && same; r++) {
                    same = Math.abs(change * column[reduction.portRow[newton.port[r]]]) <= closeVolts;
                }
            }
            if (!moved) {
                return same;
            }
        }
        wake(reduction, portInput, d, rows);
        return false;
    }

    /** Largest slope of a device times the resistance its own port sees. */
    private double slopeRatio(Reduction reduction, int portInput, int d) {
        PortPoint at = points[d];
        int first = layout.devices.get(d).firstPort();
        int n = at.amps.length;
        double most = 0;
        for (int k = 0; k < n; k++) {
            double own = Math.abs(reduction.columns[portInput + first + k][reduction.portRow[first + k]]);
            for (int j = 0; j < n; j++) {
                most = Math.max(most, Math.abs(at.siemens[k * n + j]) * own);
            }
        }
        return most;
    }

    private void wake(Reduction reduction, int portInput, int d, int rows) {
        awake[d] = true;
        turns++;
        sleepers++;
        PortPoint at = points[d];
        int first = layout.devices.get(d).firstPort();
        for (int k = 0; k < at.amps.length; k++) {
            axpy(out, reduction.columns[portInput + first + k], -amps[first + k], rows);
        }
        // a junction that was asleep must not start from a wild forward voltage
        for (int k = 0; k < at.volts.length; k++) {
            volts[first + k] = layout.devices.get(d).law().limited(k, volts[first + k], 0);
        }
    }

    private void finish(Reduction reduction, int portInput) {
        System.arraycopy(amps, 0, input, portInput, layout.ports);
        for (int d = 0; d < points.length; d++) {
            Layout.Device device = layout.devices.get(d);
            PortPoint at = points[d];
            if (!awake[d]) {
                for (int s = 0; s < at.end.length; s++) {
                    ownEnd[device.firstState() + s] = at.end[s];
                }
                continue;
            }
            if (slopeRatio(reduction, portInput, d) < DORMANT_SLOPE) {
                awake[d] = false;
                turns++;
                sleepers++;
            }
        }
    }

    /** Has the next stage decide anew who sleeps, from the port voltages: after these were set from outside. */
    void sortSleepers() {
        sortFirst = true;
        stagesKnown = 0;
    }

    private void sort(Reduction reduction, int portInput) {
        for (int d = 0; d < points.length; d++) {
            evaluate(d);
            awake[d] = slopeRatio(reduction, portInput, d) >= DORMANT_SLOPE;
            if (!awake[d]) {
                System.arraycopy(points[d].amps, 0, amps, layout.devices.get(d).firstPort(), points[d].amps.length);
            }
        }
        turns++;
        sleepers++;
        sortFirst = false;
    }

    /** Wakes every device: where nothing else led to a balance. */
    void wakeAll() {
        Arrays.fill(awake, true);
        turns++;
        sleepers++;
        sortFirst = false;
    }

    /** Factors anew at the answer of the stage just solved; to be called once before {@link #sensitivities}. */
    void refreshSlopes(Reduction reduction, int portInput) {
        newton.factor();
        lightSleepers = 0;
        for (int d = 0; d < points.length; d++) {
            if (!newton.holds(d) && slopeRatio(reduction, portInput, d) > UNFELT_SLOPE) {
                lightSleeper[lightSleepers++] = d;
            }
        }
    }

    /**
     * Carries sensitivities through the stage just solved, for one column of them. {@code out}: the column of the outputs
     * with all port slopes at zero on entry, the true one on exit. Modified.
     *
     * @param portInput index of the first port among the inputs
     * @param ownStartColumn the column of the devices' predicted states
     * @param ownEndColumn gets the column of their states after the stage. Modified.
     */
    void sensitivities(
            Reduction reduction, int portInput, double[] column, double[] ownStartColumn, double[] ownEndColumn) {
        int rows = reduction.outputs;
        for (int d = 0; d < points.length; d++) {
            addOwnStart(reduction, portInput, d, column, ownStartColumn, rows);
        }
        double[] right = newton.right;
        for (int r = 0; r < newton.ports; r++) {
            right[r] = column[reduction.portRow[newton.port[r]]];
        }
        newton.solve();
        int r = 0;
        for (int a = 0; a < newton.devices; a++) {
            PortPoint at = points[newton.device[a]];
            int first = layout.devices.get(newton.device[a]).firstPort();
            int n = at.amps.length;
            for (int k = 0; k < n; k++) {
                double di = 0;
                for (int j = 0; j < n; j++) {
                    di += at.siemens[k * n + j] * right[r + j];
                }
                if (di != 0) {
                    axpy(column, reduction.columns[portInput + first + k], di, rows);
                }
            }
            r += n;
        }
        for (int a = 0; a < lightSleepers; a++) {
            addSlopes(reduction, portInput, lightSleeper[a], column, rows);
        }
        for (int d = 0; d < points.length; d++) {
            PortPoint at = points[d];
            int first = layout.devices.get(d).firstPort();
            int firstState = layout.devices.get(d).firstState();
            int own = at.end.length;
            int n = at.amps.length;
            for (int s = 0; s < own; s++) {
                double dw = 0;
                for (int j = 0; j < own; j++) {
                    dw += at.endByStart[s * own + j] * ownStartColumn[firstState + j];
                }
                for (int j = 0; j < n; j++) {
                    dw += at.endByVolts[s * n + j] * column[reduction.portRow[first + j]];
                }
                ownEndColumn[firstState + s] = dw;
            }
        }
    }

    /** A sleeper's answer to the voltage that the awake ports leave it: what it does to them in turn is of second order. */
    private void addSlopes(Reduction reduction, int portInput, int d, double[] column, int rows) {
        PortPoint at = points[d];
        int first = layout.devices.get(d).firstPort();
        int n = at.amps.length;
        for (int k = 0; k < n; k++) {
            double di = 0;
            for (int j = 0; j < n; j++) {
                di += at.siemens[k * n + j] * column[reduction.portRow[first + j]];
            }
            if (di != 0) {
                axpy(column, reduction.columns[portInput + first + k], di, rows);
            }
        }
    }

    private void addOwnStart(
            Reduction reduction, int portInput, int d, double[] column, double[] ownStartColumn, int rows) {
        PortPoint at = points[d];
        int own = at.end.length;
        Layout.Device device = layout.devices.get(d);
        for (int k = 0; k < at.amps.length && own > 0; k++) {
            double di = 0;
            for (int s = 0; s < own; s++) {
                di += at.ampsByStart[k * own + s] * ownStartColumn[device.firstState() + s];
            }
            if (di != 0) {
                axpy(column, reduction.columns[portInput + device.firstPort() + k], di, rows);
            }
        }
    }

    static void axpy(double[] y, double[] x, double a, int n) {
        for (int k = 0; k < n; k++) {
            y[k] += a * x[k];
        }
    }
}
