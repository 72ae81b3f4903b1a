package fusetale.mna;

/** What unknowns miss of the equations of one stage, or of a state at rest, and unknowns that miss less. */
final class Missed {
    private static final int MOST_REFINED = 3;
    /** What a net's currents may miss zero by [A] wherever it is. */
    private static final double LEAST_AMPS = 1e-9;
    /** Besides, of the largest current through a port: what double precision leaves of a stage. */
    private static final double OF_ALL = 3e-9;
    /** Besides, of the largest current through an element at that net. No meter tells a millionth. */
    private static final double OF_NET = 1e-6;

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

    /**
     * Whether the currents of some net miss zero by what they would be told by.
     *
     * @param most largest current through a port [A]
     */
    static boolean matters(Reduction reduction, double[] input, double most) {
        double[] unknowns = reduction.unknowns(input);
        double[] missed = by(reduction, input, unknowns);
        double least = LEAST_AMPS + OF_ALL * most;
        for (int node = 1; node <= reduction.layout.nodeCount; node++) {
            double amps = Math.abs(missed[node - 1]);
            if (amps > least && amps > least + OF_NET * largestAt(node, reduction, unknowns, input)) {
                return true;
            }
        }
        return false;
    }

    /** Largest current [A] into a node through one of its elements. */
    private static double largestAt(int node, Reduction reduction, double[] unknowns, double[] input) {
        Layout layout = reduction.layout;
        double most = 0;
        for (Element e : layout.elements.values()) {
            for (int k = 0; k < e.ends().size(); k++) {
                Element.Ends ends = e.ends().get(k);
                if (ends.one() == node || ends.two() == node) {
                    CurrentForm form = CurrentForm.of(layout, e.currentName(k), 1 / reduction.stageSeconds);
                    most = Math.max(most, Math.abs(form.amps(unknowns, input)));
                }
            }
        }
        return most;
    }

    static double largest(double[] values, int count) {
        double most = 0;
        for (int k = 0; k < count; k++) {
            most = Math.max(most, Math.abs(values[k]));
        }
        return most;
    }
}
