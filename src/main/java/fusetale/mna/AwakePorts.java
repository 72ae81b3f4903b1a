package fusetale.mna;

import org.jspecify.annotations.Nullable;

/**
 * The equations of Newton's iteration over the ports that are awake: (1 − Z·J)·dv = v0 + Z·i − v, with J the slopes of the
 * devices. Buffers are made once for all ports and used again; one thread.
 */
final class AwakePorts {
    private final Layout layout;
    private final PortPoint[] points;
    /** The awake ports, device by device: {@link #ports} of them. */
    final int[] port;
    /** The awake devices: {@link #devices} of them. */
    final int[] device;

    int ports;
    int devices;
    /** The right side, and after {@link #solve} the step dv. */
    final double[] right;
    /** Whether the factors belong to the ports as gathered, and are still good enough. */
    boolean factored;

    private final double[] matrix;
    private final int[] pivots;
    private final double[] current;
    /** Resistances between the awake ports, row-major, and from which reduction and for whom they were gathered. */
    private final double[] ohms;

    private @Nullable Reduction gatheredFrom;
    private int gatheredTurn = -1;

    AwakePorts(Layout layout, PortPoint[] points) {
        this.layout = layout;
        this.points = points;
        this.port = new int[layout.ports];
        this.device = new int[points.length];
        this.right = new double[layout.ports];
        this.matrix = new double[layout.ports * layout.ports];
        this.pivots = new int[layout.ports];
        this.current = new double[layout.ports];
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
        ports = 0;
        devices = 0;
        for (int d = 0; d < points.length; d++) {
            if (awake[d]) {
                device[devices++] = d;
                int first = layout.devices.get(d).firstPort();
                for (int k = 0; k < points[d].amps.length; k++) {
                    port[ports++] = first + k;
                }
            }
        }
        int portInput = layout.states + layout.sources.size();
        for (int c = 0; c < ports; c++) {
            double[] column = reduction.columns[portInput + port[c]];
            for (int r = 0; r < ports; r++) {
                ohms[r * ports + c] = column[reduction.portRow[port[r]]];
            }
        }
        gatheredFrom = reduction;
        gatheredTurn = turn;
        factored = false;
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
        for (int r = 0; r < n; r++) {
            double sum = out[reduction.portRow[port[r]]] - volts[port[r]];
            for (int k = 0; k < n; k++) {
                sum += ohms[r * n + k] * current[k];
            }
            right[r] = sum;
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

    /** Whether a device was awake in the stage just solved, even if it fell asleep at its end. */
    boolean holds(int d) {
        for (int a = 0; a < devices; a++) {
            if (device[a] == d) {
                return true;
            }
        }
        return false;
    }

    /** Shortens the whole step so that no port moves by more than {@code mostVolts}. */
    void shorten(double mostVolts) {
        double most = 0;
        for (int r = 0; r < ports; r++) {
            most = Math.max(most, Math.abs(right[r]));
        }
        for (int r = 0; r < ports && most > mostVolts; r++) {
            right[r] *= mostVolts / most;
        }
    }

    private void build() {
        int n = ports;
        int c = 0;
        for (int a = 0; a < devices; a++) {
            PortPoint at = points[device[a]];
            int size = at.amps.length;
            if (size == 1) {
                double g = at.siemens[0];
                for (int r = 0; r < n; r++) {
                    matrix[r * n + c] = -ohms[r * n + c] * g;
                }
            } else {
                for (int j = 0; j < size; j++) {
                    for (int r = 0; r < n; r++) {
                        double sum = 0;
                        for (int k = 0; k < size; k++) {
                            sum += ohms[r * n + c + k] * at.siemens[k * size + j];
                        }
                        matrix[r * n + c + j] = -sum;
                    }
                }
            }
            c += size;
        }
        for (int r = 0; r < n; r++) {
            matrix[r * n + r] += 1;
        }
    }
}
