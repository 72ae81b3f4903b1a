package fusetale.mna;

/** What unknowns miss of the equations of one stage, or of a state at rest, and unknowns that miss less. */
final class Missed {
    private static final int MOST_REFINED = 3;

    private Missed() {}

    /**
     * Unknowns for the input, refined by what the equations miss zero by (J. H. Wilkinson, Rounding Errors in Algebraic
     * Processes, HMSO 1963, ch. 3, from memory): each port alone lifts a winding that floats by a gigavolt an ampere, and what is
     * left of several such lifts is rounding.
     *
     * @param least what may be missed [A, or V where a branch sets a voltage]
     */
    static double[] refined(Reduction reduction, double[] input, double least) {
        double[] unknowns = reduction.unknowns(input);
        for (int time = 0; time < MOST_REFINED; time++) {
            double[] missed = by(reduction, input, unknowns);
            if (largest(missed, missed.length) < least) {
                break;
            }
            reduction.solve(missed);
            Reduction.axpy(unknowns, missed, 1, unknowns.length);
        }
        return unknowns;
    }

    /** Right side − A·z, by equation. */
    static double[] by(Reduction reduction, double[] input, double[] unknowns) {
        Layout layout = reduction.layout;
        double perSecond = 1 / reduction.stageSeconds;
        double[] missed = new double[layout.unknowns];
        for (int s = 0; s < layout.states; s++) {
            layout.addState(s, perSecond * input[s], missed);
        }
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

    static double largest(double[] values, int count) {
        double most = 0;
        for (int k = 0; k < count; k++) {
            most = Math.max(most, Math.abs(values[k]));
        }
        return most;
    }
}
