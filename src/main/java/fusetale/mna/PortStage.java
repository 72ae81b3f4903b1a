package fusetale.mna;

/**
 * Solves the ports of one implicit stage, or of the state at rest: finds port voltages v with v = v0 + Z·i(v), where v0 and
 * Z come from a {@link Reduction}. Holds all that one stage needs and reuses it; one thread.
 *
 * <p>Only the ports whose current answers to their voltage take part in Newton's iteration; the others (junctions that are
 * firmly off, loads of constant current) are dormant: their current is taken as it was, checked afterwards, and the stage
 * repeated with them awake where it was wrong.
 */
final class PortStage {
    /** Newton has converged when the last step was below this, absolute [V] and as a ratio of the voltage. */
    private static final double STEP_VOLTS = 1e-6;

    private static final double STEP_RATIO = 1e-6;
    /** A dormant port may be wrong by so much [V] at its own terminals. */
    private static final double DORMANT_VOLTS = 1e-8;
    /** A device whose slope times its own port resistance stays below this may sleep. */
    private static final double DORMANT_SLOPE = 1e-9;

    private static final int MOST_ITERATIONS = 60;

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

    private final boolean[] awake;
    private final int[] activePort;
    private final int[] activeDevice;
    private final double[] matrix;
    private final int[] pivots;
    private final double[] right;
    private int active;
    private int activeDevices;
    /** Newton iterations since the workspace was made. */
    long solves;

    /** What to solve besides the plain stage: for continuation of the operating point. */
    record Relaxation(double shuntSiemens, double sourceRatio) {
        static final Relaxation NONE = new Relaxation(0, 1);
    }

    PortStage(Layout layout) {
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
        this.activePort = new int[layout.ports];
        this.activeDevice = new int[points.length];
        this.matrix = new double[layout.ports * layout.ports];
        this.pivots = new int[layout.ports];
        this.right = new double[layout.ports];
        java.util.Arrays.fill(awake, true);
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
        for (int attempt = 0; attempt <= points.length; attempt++) {
            gatherActive();
            if (!newton(reduction, portInput, relaxation)) {
                return false;
            }
            if (settleDormant(reduction, portInput)) {
                finish(reduction, portInput);
                return true;
            }
        }
        return false;
    }

    private void prepare(Reduction reduction, double seconds, int portInput, Relaxation relaxation) {
        int rows = reduction.outputs;
        java.util.Arrays.fill(out, 0, rows, 0.0);
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
            if (relaxation.shuntSiemens() > 0) {
                awake[d] = true;
            }
            if (!awake[d]) {
                for (int k = 0; k < at.amps.length; k++) {
                    int p = device.firstPort() + k;
                    if (amps[p] != 0) {
                        axpy(out, reduction.columns[portInput + p], amps[p], rows);
                    }
                }
            }
        }
    }

    private void gatherActive() {
        active = 0;
        activeDevices = 0;
        for (int d = 0; d < points.length; d++) {
            if (awake[d]) {
                activeDevice[activeDevices++] = d;
                int first = layout.devices.get(d).firstPort();
                for (int k = 0; k < points[d].amps.length; k++) {
                    activePort[active++] = first + k;
                }
            }
        }
    }

    private boolean newton(Reduction reduction, int portInput, Relaxation relaxation) {
        for (int iteration = 0; iteration < MOST_ITERATIONS; iteration++) {
            solves++;
            evaluateActive(relaxation.shuntSiemens());
            buildSystem(reduction, portInput);
            if (!DensePivoting.factor(matrix, active, pivots)) {
                return false;
            }
            DensePivoting.solve(matrix, active, pivots, right);
            int verdict = step();
            if (verdict < 0) {
                return false;
            }
            if (verdict > 0) {
                return true;
            }
        }
        return false;
    }

    private void evaluateActive(double shuntSiemens) {
        for (int a = 0; a < activeDevices; a++) {
            int d = activeDevice[a];
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

    /** Right side v0 + Z·i − v and matrix 1 − Z·J over the active ports. */
    private void buildSystem(Reduction reduction, int portInput) {
        int n = active;
        for (int r = 0; r < n; r++) {
            int p = activePort[r];
            right[r] = out[reduction.portRow[p]] - volts[p];
        }
        int c = 0;
        for (int a = 0; a < activeDevices; a++) {
            int d = activeDevice[a];
            PortPoint at = points[d];
            int first = layout.devices.get(d).firstPort();
            int size = at.amps.length;
            for (int k = 0; k < size; k++) {
                double[] column = reduction.columns[portInput + first + k];
                for (int r = 0; r < n; r++) {
                    right[r] += column[reduction.portRow[activePort[r]]] * at.amps[k];
                }
            }
            for (int j = 0; j < size; j++) {
                for (int r = 0; r < n; r++) {
                    int row = reduction.portRow[activePort[r]];
                    double sum = 0;
                    for (int k = 0; k < size; k++) {
                        sum += reduction.columns[portInput + first + k][row] * at.siemens[k * size + j];
                    }
                    matrix[r * n + c] = (r == c ? 1 : 0) - sum;
                }
                c++;
            }
        }
    }

    /** Moves the active voltages. 1 converged, 0 go on, −1 not finite. */
    private int step() {
        boolean small = true;
        int r = 0;
        for (int a = 0; a < activeDevices; a++) {
            int d = activeDevice[a];
            Layout.Device device = layout.devices.get(d);
            PortPoint at = points[d];
            for (int k = 0; k < at.volts.length; k++) {
                double dv = right[r];
                if (!Double.isFinite(dv)) {
                    return -1;
                }
                int p = device.firstPort() + k;
                double proposed = volts[p] + dv;
                double taken = device.law().limited(k, proposed, volts[p]);
                if (Math.abs(dv) > STEP_VOLTS + STEP_RATIO * Math.abs(proposed) || taken != proposed) {
                    small = false;
                }
                right[r] = taken - volts[p];
                volts[p] = taken;
                r++;
            }
        }
        if (small) {
            carryCurrents();
        }
        return small ? 1 : 0;
    }

    /** Currents and own states at the final voltages by their slopes: the linear equations then hold exactly. */
    private void carryCurrents() {
        int r = 0;
        for (int a = 0; a < activeDevices; a++) {
            int d = activeDevice[a];
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

    /** Adds the active currents, checks the sleepers; false where one had to be woken. */
    private boolean settleDormant(Reduction reduction, int portInput) {
        if (activeDevices == points.length) {
            return true;
        }
        int rows = reduction.outputs;
        boolean settled = true;
        for (int d = 0; d < points.length; d++) {
            if (awake[d]) {
                continue;
            }
            Layout.Device device = layout.devices.get(d);
            int n = points[d].amps.length;
            for (int k = 0; k < n; k++) {
                int p = device.firstPort() + k;
                int row = reduction.portRow[p];
                double v = out[row];
                for (int r = 0; r < active; r++) {
                    int q = activePort[r];
                    v += reduction.columns[portInput + q][row] * amps[q];
                }
                volts[p] = v;
            }
            evaluate(d);
            if (!stillDormant(reduction, portInput, d)) {
                wake(reduction, portInput, d, rows);
                settled = false;
            }
        }
        return settled;
    }

    private boolean stillDormant(Reduction reduction, int portInput, int d) {
        PortPoint at = points[d];
        int first = layout.devices.get(d).firstPort();
        for (int k = 0; k < at.amps.length; k++) {
            double own = Math.abs(reduction.columns[portInput + first + k][reduction.portRow[first + k]]);
            if (!(Math.abs(at.amps[k] - amps[first + k]) * own <= DORMANT_VOLTS)) {
                return false;
            }
        }
        return true;
    }

    private void wake(Reduction reduction, int portInput, int d, int rows) {
        awake[d] = true;
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
        int rows = reduction.outputs;
        for (int r = 0; r < active; r++) {
            int p = activePort[r];
            axpy(out, reduction.columns[portInput + p], amps[p], rows);
        }
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
            boolean sleepy = true;
            int n = at.amps.length;
            for (int k = 0; k < n && sleepy; k++) {
                double own = Math.abs(reduction
                        .columns[portInput + device.firstPort() + k][reduction.portRow[device.firstPort() + k]]);
                for (int j = 0; j < n; j++) {
                    sleepy &= Math.abs(at.siemens[k * n + j]) * own < DORMANT_SLOPE;
                }
            }
            awake[d] = !sleepy;
        }
    }

    /** Wakes every device: for a fresh start. */
    void wakeAll() {
        java.util.Arrays.fill(awake, true);
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
        for (int r = 0; r < active; r++) {
            right[r] = column[reduction.portRow[activePort[r]]];
        }
        DensePivoting.solve(matrix, active, pivots, right);
        int r = 0;
        for (int a = 0; a < activeDevices; a++) {
            PortPoint at = points[activeDevice[a]];
            int first = layout.devices.get(activeDevice[a]).firstPort();
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
