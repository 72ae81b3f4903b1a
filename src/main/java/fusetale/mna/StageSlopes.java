package fusetale.mna;

import java.util.Arrays;

/**
 * Carries sensitivities through the stage that was solved last. They are kept by rows, one for each linear state and then for
 * each own state of a device, with a column for each state perturbed at the start and one for the alternating sources: a stage's linear part has few entries
 * that matter ({@link Felt}), and each moves a whole row. One thread.
 */
final class StageSlopes {
    /**
     * A sleeper below this is left out of the sensitivities. Above it, it may move a stage by next to nothing and still,
     * over the thousand stages of a cycle, be all that lets a capacitor's charge in.
     */
    private static final double UNFELT_SLOPE = 1e-6;

    /**
     * Where a sleeper's slope times its resistance is more than this, the awake ports follow what it answers. Left out, a regulator
     * at 0.005 put the derivative of a machine by its mains off by 0.15 %, and the neighbour a volt away off by 1e-5.
     */
    private static final double FELT_BY_AWAKE = 1e-3;

    /** A current's sensitivity [A per unit of a state] below this moves nothing, over a thousand stages and a megohm. */
    private static final double LEAST_AMPS = 1e-13;

    private final StageValues values;
    private final AwakePorts newton;
    private final Layout layout;
    /** Sleepers whose slope the sensitivities feel. */
    private final int[] light;

    private int lights;
    /** Whether one of them moves the awake ports in turn. */
    private boolean heavy;

    private boolean exact;
    /** Sources of alternating voltage or current. */
    private final int[] alternating;
    /** Outputs whose rows are worked out. */
    private final boolean[] needed;
    /** Rows of the predicted states, of the outputs, of the awake ports, and of one current. */
    private double[][] start = new double[0][];

    private double[][] out = new double[0][];
    private double[][] awake = new double[0][];
    /** Of the awake ports before the sleepers answered. */
    private double[][] awakeBefore = new double[0][];

    private double[] current = new double[0];

    StageSlopes(StageValues values, AwakePorts newton) {
        this.values = values;
        this.newton = newton;
        this.layout = values.layout;
        this.light = new int[values.points.length];
        this.alternating = java.util.stream.IntStream.range(0, layout.sources.size())
                .filter(s -> layout.sources.get(s).shape() instanceof SourceShape.Sine)
                .toArray();
        this.needed = new boolean[values.out.length];
    }

    /** Whether awake ports follow what sleepers answer from now on: for what only steers, that costs more than it gives. */
    void exact(boolean yes) {
        exact = yes;
    }

    /**
     * Carries all sensitivities through the stage just solved; factors the awake ports anew at its answer.
     *
     * @param from rows at the start of the step. Not modified unless it is {@code into}.
     * @param towards rows of the stage that the predictor extrapolates to. Not modified unless it is {@code into}.
     * @param into gets the rows after the stage. Modified.
     * @param extrapolation predicted = from + extrapolation·(towards − from)
     */
    void carry(Reduction reduction, double[][] from, double[][] towards, double[][] into, double extrapolation) {
        int columns = from.length == 0 ? 0 : from[0].length;
        if (columns == 0) {
            return;
        }
        room(from.length, columns);
        refresh(reduction);
        for (int s = 0; s < from.length; s++) {
            for (int k = 0; k < columns; k++) {
                start[s][k] = from[s][k] + extrapolation * (towards[s][k] - from[s][k]);
            }
        }
        Felt felt = reduction.felt();
        for (int r = 0; r < reduction.outputs; r++) {
            if (needed[r]) {
                Arrays.fill(out[r], 0);
                gather(felt.states[r], felt.entries[r], out[r]);
            }
        }
        addSources(reduction);
        for (int d = 0; d < values.points.length; d++) {
            addOwnStart(reduction, d);
        }
        addAwake(reduction);
        if (heavy) {
            keepAwake(reduction);
        }
        for (int a = 0; a < lights; a++) {
            addSlopes(reduction, light[a]);
        }
        if (heavy) {
            follow(reduction);
        }
        for (int s = 0; s < layout.states; s++) {
            System.arraycopy(out[s], 0, into[s], 0, columns);
        }
        for (int d = 0; d < values.points.length; d++) {
            ownEnd(reduction, d, into);
        }
    }

    private void room(int rows, int columns) {
        if (start.length != rows || current.length != columns) {
            start = new double[rows][columns];
            out = new double[values.out.length][columns];
            awake = new double[layout.ports][columns];
            awakeBefore = new double[layout.ports][columns];
            current = new double[columns];
        }
    }

    private void refresh(Reduction reduction) {
        newton.factor();
        lights = 0;
        heavy = false;
        Arrays.fill(needed, false);
        Arrays.fill(needed, 0, layout.states, true);
        for (int d = 0; d < values.points.length; d++) {
            boolean felt = newton.holds(d);
            double ratio = felt ? 0 : values.slopeRatio(reduction, d);
            if (ratio > UNFELT_SLOPE) {
                light[lights++] = d;
                felt = true;
                heavy |= exact && ratio > FELT_BY_AWAKE;
            }
            if (felt || values.points[d].end.length > 0) {
                for (int k = 0; k < values.points[d].amps.length; k++) {
                    needed[reduction.portRow[values.firstPort[d] + k]] = true;
                }
            }
        }
    }

    /** Adds up rows of the predicted states, four at a time for the traffic. */
    private void gather(int[] from, double[] by, double[] sum) {
        int j = 0;
        for (; j + 3 < from.length; j += 4) {
            double a = by[j];
            double b = by[j + 1];
            double c = by[j + 2];
            double d = by[j + 3];
            double[] ra = start[from[j]];
            double[] rb = start[from[j + 1]];
            double[] rc = start[from[j + 2]];
            double[] rd = start[from[j + 3]];
            for (int k = 0; k < sum.length; k++) {
                sum[k] += a * ra[k] + b * rb[k] + c * rc[k] + d * rd[k];
            }
        }
        for (; j < from.length; j++) {
            Reduction.axpy(sum, start[from[j]], by[j], sum.length);
        }
    }

    /** Adds what a row of a port's current does to the rows of the outputs. */
    private void spread(Reduction reduction, int port, double[] row) {
        double most = 0;
        for (double amps : row) {
            most = Math.max(most, Math.abs(amps));
        }
        if (most < LEAST_AMPS) {
            return;
        }
        Felt felt = reduction.felt();
        int[] to = felt.outputs[port];
        double[] by = felt.ohms[port];
        for (int k = 0; k < to.length; k++) {
            if (needed[to[k]]) {
                Reduction.axpy(out[to[k]], row, by[k], row.length);
            }
        }
    }

    /** The last column is for all alternating sources, raised together: what they do now, per unit of a ratio. */
    private void addSources(Reduction reduction) {
        int last = current.length - 1;
        for (int s : alternating) {
            double[] column = reduction.columns[layout.states + s];
            double value = values.input[layout.states + s];
            for (int r = 0; r < reduction.outputs; r++) {
                if (needed[r]) {
                    out[r][last] += column[r] * value;
                }
            }
        }
    }

    private void addOwnStart(Reduction reduction, int d) {
        PortPoint at = values.points[d];
        int own = at.end.length;
        for (int k = 0; k < at.amps.length && own > 0; k++) {
            Arrays.fill(current, 0);
            for (int s = 0; s < own; s++) {
                double by = at.ampsByStart[k * own + s];
                Reduction.axpy(current, start[layout.states + values.firstState[d] + s], by, current.length);
            }
            spread(reduction, values.firstPort[d] + k, current);
        }
    }

    private void addAwake(Reduction reduction) {
        for (int r = 0; r < newton.ports; r++) {
            System.arraycopy(out[reduction.portRow[newton.port[r]]], 0, awake[r], 0, current.length);
        }
        answer(reduction);
    }

    private void keepAwake(Reduction reduction) {
        for (int r = 0; r < newton.ports; r++) {
            System.arraycopy(out[reduction.portRow[newton.port[r]]], 0, awakeBefore[r], 0, current.length);
        }
    }

    /** The awake ports follow what the sleepers' answers have done to them. */
    private void follow(Reduction reduction) {
        for (int r = 0; r < newton.ports; r++) {
            double[] now = out[reduction.portRow[newton.port[r]]];
            for (int k = 0; k < current.length; k++) {
                awake[r][k] = now[k] - awakeBefore[r][k];
            }
        }
        answer(reduction);
    }

    /** Has the awake devices answer what happens at their ports, see {@link #awake}, as if they did not. */
    private void answer(Reduction reduction) {
        newton.solve(awake);
        int r = 0;
        for (int a = 0; a < newton.devices; a++) {
            int d = newton.device[a];
            PortPoint at = values.points[d];
            int n = at.amps.length;
            for (int k = 0; k < n; k++) {
                Arrays.fill(current, 0);
                for (int j = 0; j < n; j++) {
                    Reduction.axpy(current, awake[r + j], at.siemens[k * n + j], current.length);
                }
                spread(reduction, values.firstPort[d] + k, current);
            }
            r += n;
        }
    }

    /** A sleeper's answer to the voltage that the awake ports leave it. */
    private void addSlopes(Reduction reduction, int d) {
        PortPoint at = values.points[d];
        int first = values.firstPort[d];
        int n = at.amps.length;
        for (int k = 0; k < n; k++) {
            Arrays.fill(current, 0);
            for (int j = 0; j < n; j++) {
                Reduction.axpy(current, out[reduction.portRow[first + j]], at.siemens[k * n + j], current.length);
            }
            spread(reduction, first + k, current);
        }
    }

    private void ownEnd(Reduction reduction, int d, double[][] into) {
        PortPoint at = values.points[d];
        int firstRow = layout.states + values.firstState[d];
        int own = at.end.length;
        int n = at.amps.length;
        for (int s = 0; s < own; s++) {
            double[] end = into[firstRow + s];
            Arrays.fill(end, 0);
            for (int j = 0; j < own; j++) {
                Reduction.axpy(end, start[firstRow + j], at.endByStart[s * own + j], end.length);
            }
            for (int j = 0; j < n; j++) {
                double[] volts = out[reduction.portRow[values.firstPort[d] + j]];
                Reduction.axpy(end, volts, at.endByVolts[s * n + j], end.length);
            }
        }
    }
}
