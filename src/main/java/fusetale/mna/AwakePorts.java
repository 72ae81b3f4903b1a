package fusetale.mna;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * The equations of Newton's iteration over the ports that are awake: (1 − Z·J)·dv = v0 + Z·i − v, with J the slopes of the
 * devices. Buffers are made once for all ports and used again; one thread.
 */
final class AwakePorts {
    /** Up to so many ports a plain elimination is quicker than looking for blocks. */
    private static final int FEW_PORTS = 16;
    /** A resistance between two ports that is less than this part of their own is none. */
    private static final double FELT = 1e-9;

    private final StageValues values;
    private final PortPoint[] points;
    /** The awake ports, device by device: {@link #ports} of them. */
    final int[] port;
    /** The awake devices: {@link #devices} of them. */
    final int[] device;

    int ports;
    int devices;
    /** The right side, and after {@link #solve} the step dv. */
    final double[] right;
    /** A step taken before. */
    private final double[] last;
    /** Whether the factors belong to the ports as gathered, and are still good enough. */
    boolean factored;

    /** The slopes [S] that were factored, device by device, row-major each. */
    final double[] siemens;

    private final double[] matrix;
    private final int[] pivots;
    private final double[] current;
    /** Resistances between the awake ports, column-major, and from which reduction and for whom they were gathered. */
    private final double[] ohms;

    /** The same where ports of different blocks do not see each other. */
    private final double[] felt;
    /** By device: how many awake ports see it. */
    private final int[] neighbours;

    private @Nullable Reduction gatheredFrom;
    private int gatheredTurn = -1;

    AwakePorts(StageValues values) {
        Layout layout = values.layout;
        this.values = values;
        this.points = values.points;
        this.port = new int[layout.ports];
        this.device = new int[points.length];
        this.right = new double[layout.ports];
        this.last = new double[layout.ports];
        this.siemens = new double
                [Arrays.stream(points).mapToInt(at -> at.siemens.length).sum()];
        this.matrix = new double[layout.ports * layout.ports];
        this.pivots = new int[layout.ports];
        this.current = new double[layout.ports];
        this.felt = new double[layout.ports * layout.ports];
        this.neighbours = new int[points.length];
        this.ohms = new double[layout.ports * layout.ports];
    }

    /**
     * Gathers the ports that are awake and the resistances between them, where either has changed.
     *
     * @param awake by device. Not modified.
     * @param turn changes with every change of {@code awake}
     */
    void gather(Reduction reduction, boolean[] awake, int turn) {
        if (gatheredFrom == reduction && gatheredTurn == turn) {
            return;
        }
        devices = 0;
        for (int d = 0; d < points.length; d++) {
            if (awake[d]) {
                device[devices++] = d;
            }
        }
        listPorts();
        if (ports > FEW_PORTS) {
            fewestNeighboursFirst(reduction);
            listPorts();
        }
        for (int c = 0; c < ports; c++) {
            double[] column = reduction.columns[values.firstPortInput + port[c]];
            for (int r = 0; r < ports; r++) {
                double z = column[reduction.portRow[port[r]]];
                ohms[c * ports + r] = z;
                felt[c * ports + r] = ports > FEW_PORTS && !isFelt(reduction, z, port[r], port[c]) ? 0 : z;
            }
        }
        gatheredFrom = reduction;
        gatheredTurn = turn;
        factored = false;
    }

    private void listPorts() {
        ports = 0;
        for (int a = 0; a < devices; a++) {
            int first = values.firstPort[device[a]];
            for (int k = 0; k < points[device[a]].amps.length; k++) {
                port[ports++] = first + k;
            }
        }
    }

    /** Whether two ports are of one block: what is less is left out of the slopes, not of the equations. */
    private static boolean isFelt(Reduction reduction, double ohms, int one, int two) {
        double least = Math.min(Math.abs(reduction.ownOhms[one]), Math.abs(reduction.ownOhms[two]));
        return Math.abs(ohms) > FELT * least;
    }

    /**
     * Puts devices that see few others first: then the blocks of a machine (drivers behind a rail's capacitor) are eliminated
     * each for itself, and zeros between them stay zeros.
     */
    private void fewestNeighboursFirst(Reduction reduction) {
        for (int a = 0; a < devices; a++) {
            int seen = 0;
            int p = values.firstPort[device[a]];
            double[] column = reduction.columns[values.firstPortInput + p];
            for (int r = 0; r < ports; r++) {
                seen += isFelt(reduction, column[reduction.portRow[port[r]]], port[r], p) ? 1 : 0;
            }
            neighbours[device[a]] = seen;
        }
        for (int a = 1; a < devices; a++) {
            int d = device[a];
            int at = a;
            for (; at > 0 && neighbours[device[at - 1]] > neighbours[d]; at--) {
                device[at] = device[at - 1];
            }
            device[at] = d;
        }
    }

    /**
     * Sets the right side v0 + Z·i − v.
     *
     * @param out outputs of the reduction without the awake currents. Not modified.
     * @param volts at all ports. Not modified.
     */
    void residual(Reduction reduction, double[] out, double[] volts) {
        int n = ports;
        int c = 0;
        for (int a = 0; a < devices; a++) {
            PortPoint at = points[device[a]];
            for (int k = 0; k < at.amps.length; k++) {
                current[c++] = at.amps[k];
            }
        }
        mismatch(reduction, out, volts);
        for (int k = 0; k < n; k++) {
            double amps = current[k];
            for (int r = 0; r < n; r++) {
                right[r] += ohms[k * n + r] * amps;
            }
        }
    }

    /**
     * Sets the right side to what the outputs and the ports' voltages differ by, all currents being in the outputs.
     *
     * @param out outputs of the reduction. Not modified.
     * @param volts at all ports. Not modified.
     */
    void mismatch(Reduction reduction, double[] out, double[] volts) {
        for (int r = 0; r < ports; r++) {
            right[r] = out[reduction.portRow[port[r]]] - volts[port[r]];
        }
    }

    /**
     * About how long the step after the one in {@link #right} would be [V]: after a step s of Newton's along an exponential
     * that doubles within r, at most s²·ln 2/(2·r); with old factors, as much shorter as this step was than the one before.
     * A port that goes further than a hundredth of its law's reach counts with all of its step.
     *
     * @param fresh whether the factors are those of the present slopes
     * @param contraction this step over the one before
     */
    double nextStep(boolean fresh, double contraction) {
        double most = 0;
        int r = 0;
        for (int a = 0; a < devices; a++) {
            int d = device[a];
            int n = points[d].volts.length;
            for (int k = 0; k < n; k++, r++) {
                double dv = Math.abs(right[r]);
                double next = fresh ? 0 : dv * Math.min(1, contraction);
                if (dv > next) {
                    double straight = PortLaw.STRAIGHT * values.laws[d].reachVolts(points[d], k);
                    next = !(dv <= straight) ? dv : fresh ? dv * dv * (PortLaw.STRAIGHT / 2) / straight : next;
                }
                most = Math.max(most, next);
            }
        }
        return most;
    }

    /**
     * How much of a step the factored slopes leave undone, about: what each has changed by since against what its port sees.
     */
    double turned() {
        double most = 0;
        int r = 0;
        int g = 0;
        for (int a = 0; a < devices; a++) {
            double[] now = points[device[a]].siemens;
            int n = points[device[a]].amps.length;
            for (int k = 0; k < n; k++, r++) {
                double ownOhms = Math.abs(ohms[r * ports + r]);
                for (int j = 0; j < n; j++, g++) {
                    double change = ownOhms * Math.abs(now[k * n + j] - siemens[g]);
                    if (change > most) {
                        most = Math.max(most, change / (1 + ownOhms * Math.abs(siemens[g - j + k])));
                    }
                }
            }
        }
        return most;
    }

    /** Largest magnitude in {@link #right}. */
    double longest() {
        double most = 0;
        for (int r = 0; r < ports; r++) {
            most = Math.max(most, Math.abs(right[r]));
        }
        return most;
    }

    /** Euclidean length of {@link #right}. */
    double length() {
        double squares = 0;
        for (int r = 0; r < ports; r++) {
            squares += right[r] * right[r];
        }
        return Math.sqrt(squares);
    }

    /** Moves the ports by a part of the step in {@link #right}, which then is that part. {@code volts}: Modified. */
    void move(double[] volts, double part) {
        for (int r = 0; r < ports; r++) {
            right[r] *= part;
            volts[port[r]] += right[r];
        }
    }

    /** Factors 1 − Z·J at the present slopes; false where it is singular. */
    boolean factor() {
        build();
        factored = DensePivoting.factor(matrix, ports, pivots);
        return factored;
    }

    /** Solves for {@link #right}, in place, with the factors as they are. */
    void solve() {
        DensePivoting.solve(matrix, ports, pivots, right);
    }

    /** Solves for several right sides, one to a column of {@code rows}, in place. {@code rows}: Modified. */
    void solve(double[][] rows) {
        DensePivoting.solve(matrix, ports, pivots, rows);
    }

    /** Whether a device was awake in the stage just solved, even if it fell asleep at its end. */
    boolean holds(int d) {
        for (int a = 0; a < devices; a++) {
            if (device[a] == d) {
                return true;
            }
        }
        return false;
    }

    /** Shortens the whole step so that no port moves by more than {@code mostVolts}; whether that was needed. */
    boolean shorten(double mostVolts) {
        double most = longest();
        for (int r = 0; r < ports && most > mostVolts; r++) {
            right[r] *= mostVolts / most;
        }
        return most > mostVolts;
    }

    /** Keeps the step in {@link #right} for {@link #turnsBack}. */
    void taken() {
        System.arraycopy(right, 0, last, 0, ports);
    }

    /** Whether the step in {@link #right} leads back where the one kept last came from. */
    boolean turnsBack() {
        double along = 0;
        for (int r = 0; r < ports; r++) {
            along += right[r] * last[r];
        }
        return along < 0;
    }

    private void build() {
        int n = ports;
        int c = 0;
        int kept = 0;
        for (int a = 0; a < devices; a++) {
            PortPoint at = points[device[a]];
            int size = at.amps.length;
            System.arraycopy(at.siemens, 0, siemens, kept, size * size);
            kept += size * size;
            for (int j = 0; j < size; j++) {
                int to = (c + j) * n;
                Arrays.fill(matrix, to, to + n, 0);
                for (int k = 0; k < size; k++) {
                    subtract(to, (c + k) * n, n, at.siemens[k * size + j]);
                }
            }
            c += size;
        }
        for (int r = 0; r < n; r++) {
            matrix[r * n + r] += 1;
        }
    }

    /** Takes a column of resistances times a slope off a column of the matrix. */
    private void subtract(int to, int from, int n, double slope) {
        if (slope != 0) {
            for (int r = 0; r < n; r++) {
                matrix[to + r] -= felt[from + r] * slope;
            }
        }
    }
}
