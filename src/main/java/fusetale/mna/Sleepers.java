package fusetale.mna;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * The dormant devices of a stage: junctions that are firmly off, loads of constant current, lamps near the temperature they
 * were linearised at. Their currents are kept as they were and looked at again only where a port's voltage has left the
 * stretch over which its law promises next to no change; a current that did change is corrected in place, and a device
 * whose current answers to its voltage wakes and takes part in Newton's iteration. One thread.
 */
final class Sleepers {
    /** What {@link #settle} found. */
    static final int NOTHING = 0;

    static final int MOVED = 1;
    static final int WOKE = 2;

    /** A device whose slope times its own port resistance stays below this may sleep: its fixed point contracts so fast. */
    private static final double DORMANT_SLOPE = 0.02;
    /** Above this a sleeper is woken at once. */
    private static final double WAKING_SLOPE = 0.1;
    /** A sleeper that does not settle within so many passes of its own is woken. */
    private static final int MOST_CORRECTIONS = 8;
    /**
     * What a sleeper's current may be wrong by at its own port, as a part of what is close enough for Newton: the error has
     * the same sign for a whole cycle, and where a small capacitor has nothing else to live on it adds up.
     */
    private static final double CURRENT_SHARE = 1.0 / 32;
    /** What it may be wrong by [A] where its port sees next to no resistance. */
    private static final double CLOSE_AMPS = 1e-8;
    /** After a correction no larger than this [V] a law is its tangent. */
    private static final double LINEAR_VOLTS = 5e-5;

    /** Own states that differ by this ratio have the same currents, to {@link #CURRENT_SHARE} and more. */
    private static final double STEADY_RATIO = 1e-9;

    private final StageValues values;
    private final boolean[] awake;
    /** Those that change over at a time of their own, whatever their voltage does: they never sleep. */
    private final boolean[] timed;
    /** Those whose currents were corrected in the last stage. */
    private final boolean[] restless;

    private double closeVolts;
    /** Counts changes of who sleeps. */
    private int turns;
    /** Stretch of each sleeping port's voltage [V] over which its current stays as it is; empty where it must be looked at. */
    private final double[] quietFrom;

    private final double[] quietTo;
    /** How far [V] each sleeping port may go from where it was looked at: for its slope to hold, and for its tangents to. */
    private final double[] reach;

    private final double[] straight;
    /** How far the predicted own states may be from those it was looked at with. */
    private final double[] straightStart;
    /** Port resistance [ohm] that the stretch was worked out for. */
    private final double[] quietOhms;
    /** Predicted own states that each sleeper was evaluated for. */
    private final double[] quietStart;

    private @Nullable Reduction quietFor;
    /** Per reduction slot: what all sleeping currents add to the outputs, and the currents it was summed from. */
    private final double[] @Nullable [] sums = new double[Reductions.SLOTS] @Nullable [];

    private final double[] @Nullable [] summed = new double[Reductions.SLOTS] @Nullable [];

    Sleepers(StageValues values, double closeVolts) {
        this.values = values;
        this.closeVolts = closeVolts;
        this.awake = new boolean[values.points.length];
        this.timed = new boolean[values.points.length];
        for (int d = 0; d < timed.length; d++) {
            timed[d] = values.laws[d].corners().length > 0;
        }
        this.restless = new boolean[values.points.length];
        int ports = values.layout.ports;
        this.quietFrom = new double[ports];
        this.quietTo = new double[ports];
        this.reach = new double[ports];
        this.straight = new double[ports];
        this.straightStart = new double[values.layout.deviceStates];
        this.quietOhms = new double[ports];
        this.quietStart = new double[values.layout.deviceStates];
        wakeAll();
    }

    /** Sets the step [V] at which Newton has converged. */
    void close(double volts) {
        closeVolts = volts;
    }

    boolean[] awake() {
        return awake;
    }

    /** Changes with every change of who sleeps. */
    int turns() {
        return turns;
    }

    /** Wakes every device: where nothing else led to a balance. */
    void wakeAll() {
        Arrays.fill(awake, true);
        forget();
    }

    /** Decides anew who sleeps, from the port voltages. */
    void sort(Reduction reduction) {
        for (int d = 0; d < awake.length; d++) {
            values.evaluate(d);
            awake[d] = timed[d] || values.slopeRatio(reduction, d) >= DORMANT_SLOPE;
            if (!awake[d]) {
                PortPoint at = values.points[d];
                System.arraycopy(at.amps, 0, values.amps, values.firstPort[d], at.amps.length);
            }
        }
        forget();
    }

    /** Sums and stretches of another story say nothing: an answer must not depend on what was solved before. */
    private void forget() {
        turns++;
        Arrays.fill(restless, false);
        Arrays.fill(quietFrom, Double.POSITIVE_INFINITY);
        for (double[] s : sums) {
            if (s != null) {
                Arrays.fill(s, 0);
            }
        }
        for (double[] s : summed) {
            if (s != null) {
                Arrays.fill(s, 0);
            }
        }
    }

    /** Puts the currents of those that moved in the last stage where they are to be expected in this one. */
    void foresee(Reduction reduction, Foresight foresight, double seconds) {
        for (int d = 0; d < awake.length; d++) {
            if (!restless[d] || awake[d]) {
                continue;
            }
            PortPoint at = values.points[d];
            int first = values.firstPort[d];
            foresight.expect(values.laws[d], at, first, seconds, values.volts);
            System.arraycopy(at.proposed, 0, values.volts, first, at.proposed.length);
            boolean rests = isStraight(d);
            if (!rests) {
                look(d);
                rests = values.slopeRatio(reduction, d) <= WAKING_SLOPE;
            }
            if (!rests) {
                // evaluated where it is not: its slopes would be taken for those of where it is
                quietFrom[first] = Double.POSITIVE_INFINITY;
                continue;
            }
            for (int k = 0; k < at.amps.length; k++) {
                values.amps[first + k] = tangent(d, k);
                quietFrom[first + k] = values.volts[first + k];
                quietTo[first + k] = values.volts[first + k];
            }
        }
    }

    /** Evaluates a sleeper where it is. */
    private void look(int d) {
        values.evaluate(d);
        PortPoint at = values.points[d];
        int firstPort = values.firstPort[d];
        for (int k = 0; k < at.amps.length; k++) {
            double reachVolts = values.laws[d].reachVolts(at, k);
            reach[firstPort + k] = reachVolts;
            straight[firstPort + k] = values.laws[d].straightVolts(at, k, reachVolts);
        }
        int first = values.firstState[d];
        for (int s = 0; s < at.end.length; s++) {
            double start = values.ownStart[first + s];
            quietStart[first + s] = start;
            straightStart[first + s] = Math.abs(start) * values.laws[d].straightRatio(at, s);
        }
    }

    /** Whether a sleeper's tangents hold where it is. */
    private boolean isStraight(int d) {
        int first = values.firstPort[d];
        if (!(quietFrom[first] < Double.POSITIVE_INFINITY)) {
            return false;
        }
        PortPoint at = values.points[d];
        for (int k = 0; k < at.volts.length; k++) {
            if (!(Math.abs(values.volts[first + k] - at.volts[k]) <= straight[first + k])) {
                return false;
            }
        }
        int firstState = values.firstState[d];
        for (int s = firstState; s < firstState + at.end.length; s++) {
            if (!(Math.abs(values.ownStart[s] - quietStart[s]) <= straightStart[s])) {
                return isSteady(d);
            }
        }
        return true;
    }

    /** A sleeper's current [A] by its tangents. */
    private double tangent(int d, int port) {
        PortPoint at = values.points[d];
        int n = at.amps.length;
        int own = at.end.length;
        double amps = at.amps[port];
        for (int j = 0; j < n; j++) {
            amps += at.siemens[port * n + j] * (values.volts[values.firstPort[d] + j] - at.volts[j]);
        }
        for (int s = 0; s < own; s++) {
            int state = values.firstState[d] + s;
            amps += at.ampsByStart[port * own + s] * (values.ownStart[state] - quietStart[state]);
        }
        return amps;
    }

    /** Sets the outputs to what the sleeping currents do to them. */
    void putCurrents(Reduction reduction) {
        double[] sum = sums[reduction.slot];
        double[] of = summed[reduction.slot];
        if (sum == null || of == null) {
            sum = new double[values.out.length];
            of = new double[values.layout.ports];
            sums[reduction.slot] = sum;
            summed[reduction.slot] = of;
        }
        for (int p = 0; p < of.length; p++) {
            double amps = awake[values.deviceOf[p]] ? 0 : values.amps[p];
            if (amps != of[p]) {
                reduction.addPort(sum, p, amps - of[p]);
                of[p] = amps;
            }
        }
        System.arraycopy(sum, 0, values.out, 0, reduction.outputs);
    }

    /** Stretches worked out for a port that saw less resistance, or for another step size, are too wide now. */
    void narrow(Reduction reduction) {
        if (quietFor == reduction) {
            return;
        }
        for (int p = 0; p < quietFrom.length; p++) {
            if (Math.abs(reduction.ownOhms[p]) > quietOhms[p]) {
                quietFrom[p] = Double.POSITIVE_INFINITY;
            }
        }
        for (int d : values.stateful) {
            // its states follow the step size
            quietFrom[values.firstPort[d]] = Double.POSITIVE_INFINITY;
        }
        quietFor = reduction;
    }

    /**
     * Looks at the sleepers where the awake ports have put them, correcting in the outputs what their currents changed.
     *
     * @param first whether it is the first look in this stage
     * @param impatient whether one that still moves is woken
     * @return {@link #NOTHING}, or {@link #MOVED} and {@link #WOKE} added up
     */
    int settle(Reduction reduction, boolean first, boolean impatient) {
        for (int d : values.stateful) {
            if (!awake[d] && !isSteady(d)) {
                quietTo[values.firstPort[d]] = Double.NEGATIVE_INFINITY;
            }
        }
        for (int d = 0; d < awake.length && first; d++) {
            restless[d] &= awake[d];
        }
        int found = NOTHING;
        int passes = impatient ? 1 : MOST_CORRECTIONS;
        for (int p = nextToLookAt(reduction, 0); p < quietFrom.length; ) {
            int d = values.deviceOf[p];
            int moved = correct(reduction, d, passes);
            restless[d] = moved == MOVED || (restless[d] && !first);
            found |= moved;
            p = nextToLookAt(reduction, values.firstPort[d] + values.points[d].amps.length);
        }
        return found;
    }

    /**
     * Sets the voltages of the sleeping ports from one on, up to the first that has left its stretch.
     *
     * @return that port, or the number of ports
     */
    private int nextToLookAt(Reduction reduction, int from) {
        double[] out = values.out;
        int[] row = reduction.portRow;
        for (int p = from; p < quietFrom.length; p++) {
            if (awake[values.deviceOf[p]]) {
                continue;
            }
            double v = out[row[p]];
            if (!(v >= quietFrom[p] && v <= quietTo[p])) {
                return p;
            }
            values.volts[p] = v;
        }
        return quietFrom.length;
    }

    /** Whether a sleeper's own states start where they started when it was looked at last. */
    private boolean isSteady(int d) {
        int first = values.firstState[d];
        int end = first + values.points[d].end.length;
        boolean steady = true;
        for (int s = first; s < end; s++) {
            double start = values.ownStart[s];
            steady &= Math.abs(start - quietStart[s]) <= STEADY_RATIO * Math.abs(start);
        }
        return steady;
    }

    /**
     * Finds one sleeper's currents with everybody else's held, each port by a Newton iteration of its own (block relaxation
     * of Gauss and Seidel).
     */
    private int correct(Reduction reduction, int d, int mostPasses) {
        int n = values.points[d].amps.length;
        int found = NOTHING;
        for (int pass = 0; pass < mostPasses; pass++) {
            if (!place(reduction, d)) {
                look(d);
                if (values.slopeRatio(reduction, d) > WAKING_SLOPE) {
                    wake(reduction, d);
                    return found | WOKE;
                }
            }
            double most = correctPorts(reduction, d);
            found = most > 0 ? MOVED : found;
            if (most == 0 || (n == 1 && most <= LINEAR_VOLTS && mostPasses > 1)) {
                values.volts[values.firstPort[d]] = values.out[reduction.portRow[values.firstPort[d]]];
                hush(reduction, d);
                return found;
            }
        }
        wake(reduction, d);
        return found | WOKE;
    }

    /** Reads a sleeper's voltages; whether its tangents still hold there. */
    private boolean place(Reduction reduction, int d) {
        int first = values.firstPort[d];
        for (int p = first; p < first + values.points[d].volts.length; p++) {
            values.volts[p] = values.out[reduction.portRow[p]];
        }
        return isStraight(d);
    }

    /** One correction of each port; the largest change of a voltage [V], 0 where all were good enough. */
    private double correctPorts(Reduction reduction, int d) {
        PortPoint at = values.points[d];
        int first = values.firstPort[d];
        int n = at.amps.length;
        double enough = CURRENT_SHARE * closeVolts;
        double most = 0;
        for (int k = 0; k < n; k++) {
            int p = first + k;
            double change = tangent(d, k) - values.amps[p];
            if (change == 0) {
                continue;
            }
            double ohms = reduction.ownOhms[p];
            change /= 1 - ohms * at.siemens[k * n + k];
            double moved = Math.abs(change * ohms);
            if (!(moved > enough || Math.abs(change) > CLOSE_AMPS)) {
                continue;
            }
            most = Math.max(most, Math.max(moved, Double.MIN_NORMAL));
            reduction.addPort(values.out, p, change);
            values.amps[p] += change;
        }
        return most;
    }

    /** Works out over which stretch around its present voltages a sleeper need not be looked at. */
    private void hush(Reduction reduction, int d) {
        PortPoint at = values.points[d];
        int first = values.firstPort[d];
        int n = at.amps.length;
        if (at.end.length > 0 && !isSteady(d)) {
            // looked at in the next stage anyway
            return;
        }
        for (int k = 0; k < n; k++) {
            int p = first + k;
            double answer = 0;
            double siemens = 0;
            for (int j = 0; j < n; j++) {
                double slope = Math.max(PortLaw.NO_SIEMENS, Math.abs(at.siemens[j * n + k]));
                siemens = Math.max(siemens, slope);
                answer = Math.max(answer, slope * Math.abs(reduction.ownOhms[first + j]));
            }
            // over its reach a slope at most doubles, and n ports move at once
            double within = Math.min(CURRENT_SHARE * closeVolts / answer, CLOSE_AMPS / siemens) / (2 * n);
            double half = Math.min(reach[p], within);
            quietOhms[p] = Math.abs(reduction.ownOhms[p]);
            quietFrom[p] = values.volts[p] - half;
            quietTo[p] = values.volts[p] + half;
        }
    }

    private void wake(Reduction reduction, int d) {
        awake[d] = true;
        turns++;
        PortPoint at = values.points[d];
        int first = values.firstPort[d];
        for (int k = 0; k < at.amps.length; k++) {
            int p = first + k;
            reduction.addPort(values.out, p, -values.amps[p]);
            quietFrom[p] = Double.POSITIVE_INFINITY;
            at.present[k] = 0;
            at.proposed[k] = values.volts[p];
        }
        // a junction that was asleep must not start from a wild forward voltage
        values.laws[d].limit(at.present, at.proposed);
        System.arraycopy(at.proposed, 0, values.volts, first, at.proposed.length);
    }

    /** At the end of a stage: takes over the sleepers' own states, and puts to sleep who answers no more. */
    void finish(Reduction reduction) {
        for (int d : values.stateful) {
            if (!awake[d]) {
                carryStates(d);
            }
        }
        for (int d = 0; d < awake.length; d++) {
            if (awake[d] && !timed[d] && values.slopeRatio(reduction, d) < DORMANT_SLOPE) {
                awake[d] = false;
                turns++;
            }
        }
    }

    /** A sleeper's states after the stage, from those it was evaluated for and its slopes. */
    private void carryStates(int d) {
        PortPoint at = values.points[d];
        int first = values.firstState[d];
        int own = at.end.length;
        int n = at.volts.length;
        for (int s = 0; s < own; s++) {
            double end = at.end[s];
            for (int j = 0; j < n; j++) {
                end += at.endByVolts[s * n + j] * (values.volts[values.firstPort[d] + j] - at.volts[j]);
            }
            for (int j = 0; j < own; j++) {
                end += at.endByStart[s * own + j] * (values.ownStart[first + j] - quietStart[first + j]);
            }
            values.ownEnd[first + s] = end;
        }
    }
}
