package fusetale.mna;

/** An operating point, its voltages and currents worked out when asked for. */
final class RestPoint implements OperatingPoint {
    /** Less than this [A, or V where a branch sets a voltage] is nothing that any meter shows. */
    private static final double LEAST_MISSED = 1e-13;

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
        this.unknowns = Missed.refined(reduction, input, LEAST_MISSED);
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
        return CurrentForm.of(reduction.layout, element, 0).amps(unknowns, input);
    }

    @Override
    public Work work() {
        double[] missed = Missed.by(reduction, input, unknowns);
        return new Work(method, passes, solves, Missed.largest(missed, reduction.layout.nodeCount));
    }
}
