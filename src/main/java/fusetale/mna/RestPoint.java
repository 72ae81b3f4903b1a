package fusetale.mna;

/** An operating point, its voltages and currents worked out when asked for. */
final class RestPoint implements OperatingPoint {
    /** Less than this [A, or V where a branch sets a voltage] is nothing that any meter shows. */
    private static final double LEAST_MISSED = 1e-13;

    private static final int MOST_REFINED = 3;

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
        this.unknowns = refined(reduction, input);
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
        double[] missed = missed(reduction, input, unknowns);
        return new Work(method, passes, solves, largest(missed, reduction.layout.nodeCount));
    }

    /**
     * Unknowns for the input, refined by what the equations miss zero by (J. H. Wilkinson, Rounding Errors in Algebraic
     * Processes, HMSO 1963, ch. 3, from memory): each port alone lifts a winding that floats by a gigavolt an ampere, and what is
     * left of several such lifts is rounding.
     */
    private static double[] refined(Reduction reduction, double[] input) {
        double[] unknowns = reduction.unknowns(input);
        for (int time = 0; time < MOST_REFINED; time++) {
            double[] missed = missed(reduction, input, unknowns);
            if (largest(missed, missed.length) < LEAST_MISSED) {
                break;
            }
            reduction.solve(missed);
            Reduction.axpy(unknowns, missed, 1, unknowns.length);
        }
        return unknowns;
    }

    /** Right side − A·z, by equation. */
    private static double[] missed(Reduction reduction, double[] input, double[] unknowns) {
        Layout layout = reduction.layout;
        double[] missed = new double[layout.unknowns];
        int first = layout.states;
        for (int s = 0; s < layout.sources.size(); s++) {
            layout.addSource(s, input[first + s], missed);
        }
        first += layout.sources.size();
        for (int p = 0; p < layout.ports; p++) {
            Layout.nodes(missed, layout.portOne[p], layout.portTwo[p], -input[first + p]);
        }
        reduction.subtractProduct(unknowns, missed);
        return missed;
    }

    private static double largest(double[] values, int count) {
        double most = 0;
        for (int k = 0; k < count; k++) {
            most = Math.max(most, Math.abs(values[k]));
        }
        return most;
    }
}
