package fusetale.mna;

/** An operating point, its voltages and currents worked out when asked for. */
final class RestPoint implements OperatingPoint {
    private final Reduction reduction;
    private final double[] input;
    private final double[] unknowns;
    private final double[] portVolts;
    private final String method;
    private final int passes;
    private final long solves;

    RestPoint(Reduction reduction, double[] input, double[] portVolts, String method, int passes, long solves) {
        this.reduction = reduction;
        this.input = input;
        this.unknowns = reduction.unknowns(input);
        this.portVolts = portVolts;
        this.method = method;
        this.passes = passes;
        this.solves = solves;
    }

    double[] portVolts() {
        return portVolts;
    }

    Reduction reduction() {
        return reduction;
    }

    double[] input() {
        return input;
    }

    @Override
    public double volts(int one, int two) {
        return (one > 0 ? unknowns[one - 1] : 0) - (two > 0 ? unknowns[two - 1] : 0);
    }

    @Override
    public double amps(String element) {
        double[] row = CurrentRow.of(reduction, element);
        double sum = 0;
        for (int j = 0; j < row.length; j++) {
            sum += row[j] * input[j];
        }
        return sum;
    }

    @Override
    public Work work() {
        // the balance costs as much as the solution: only for whoever asks
        return new Work(method, passes, solves, imbalance());
    }

    /** Largest current [A] by which the sum at a node misses zero: A·z − right side, over the rows of nodes. */
    private double imbalance() {
        Layout layout = reduction.layout;
        double[] right = new double[layout.unknowns];
        double[] unit = new double[layout.unknowns];
        int nx = layout.states;
        for (int s = 0; s < layout.sources.size(); s++) {
            java.util.Arrays.fill(unit, 0);
            layout.sourceColumn(s, unit);
            Reduction.axpy(right, unit, input[nx + s], right.length);
        }
        for (int p = 0; p < layout.ports; p++) {
            Layout.nodes(right, layout.portOne[p], layout.portTwo[p], -input[nx + layout.sources.size() + p]);
        }
        double[] a = layout.conductances();
        double most = 0;
        for (int r = 0; r < layout.nodeCount; r++) {
            double sum = -right[r];
            for (int c = 0; c < layout.unknowns; c++) {
                sum += a[r * layout.unknowns + c] * unknowns[c];
            }
            most = Math.max(most, Math.abs(sum));
        }
        return most;
    }
}
