package fusetale.mna;

/** Carries sensitivities through the stage that was solved last, column by column. One thread. */
final class StageSlopes {
    /**
     * A sleeper below this is left out of the sensitivities. Above it, it may move a stage by next to nothing and still,
     * over the thousand stages of a cycle, be all that lets a capacitor's charge in.
     */
    private static final double UNFELT_SLOPE = 1e-6;

    private final StageValues values;
    private final AwakePorts newton;
    /** Sleepers whose slope the sensitivities feel. */
    private final int[] light;

    private int lights;

    StageSlopes(StageValues values, AwakePorts newton) {
        this.values = values;
        this.newton = newton;
        this.light = new int[values.points.length];
    }

    /** Factors anew at the answer of the stage just solved; to be called once before {@link #carry}. */
    void refresh(Reduction reduction) {
        newton.factor();
        lights = 0;
        for (int d = 0; d < values.points.length; d++) {
            if (!newton.holds(d) && values.slopeRatio(reduction, d) > UNFELT_SLOPE) {
                light[lights++] = d;
            }
        }
    }

    /**
     * Carries one column of sensitivities through the stage just solved. {@code column}: the column of the outputs with all
     * port slopes at zero on entry, the true one on exit. Modified.
     *
     * @param ownStartColumn the column of the devices' predicted states
     * @param ownEndColumn gets the column of their states after the stage. Modified.
     */
    void carry(Reduction reduction, double[] column, double[] ownStartColumn, double[] ownEndColumn) {
        for (int d = 0; d < values.points.length; d++) {
            addOwnStart(reduction, d, column, ownStartColumn);
        }
        double[] right = newton.right;
        for (int r = 0; r < newton.ports; r++) {
            right[r] = column[reduction.portRow[newton.port[r]]];
        }
        newton.solve();
        int r = 0;
        for (int a = 0; a < newton.devices; a++) {
            PortPoint at = values.points[newton.device[a]];
            int first = values.firstPort[newton.device[a]];
            int n = at.amps.length;
            for (int k = 0; k < n; k++) {
                double di = 0;
                for (int j = 0; j < n; j++) {
                    di += at.siemens[k * n + j] * right[r + j];
                }
                reduction.addPort(column, first + k, di);
            }
            r += n;
        }
        for (int a = 0; a < lights; a++) {
            addSlopes(reduction, light[a], column);
        }
        for (int d = 0; d < values.points.length; d++) {
            ownEnd(reduction, d, column, ownStartColumn, ownEndColumn);
        }
    }

    private void ownEnd(Reduction reduction, int d, double[] column, double[] ownStartColumn, double[] ownEndColumn) {
        PortPoint at = values.points[d];
        int first = values.firstPort[d];
        int firstState = values.firstState[d];
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

    /** A sleeper's answer to the voltage that the awake ports leave it: what it does to them in turn is of second order. */
    private void addSlopes(Reduction reduction, int d, double[] column) {
        PortPoint at = values.points[d];
        int first = values.firstPort[d];
        int n = at.amps.length;
        for (int k = 0; k < n; k++) {
            double di = 0;
            for (int j = 0; j < n; j++) {
                di += at.siemens[k * n + j] * column[reduction.portRow[first + j]];
            }
            reduction.addPort(column, first + k, di);
        }
    }

    private void addOwnStart(Reduction reduction, int d, double[] column, double[] ownStartColumn) {
        PortPoint at = values.points[d];
        int own = at.end.length;
        for (int k = 0; k < at.amps.length && own > 0; k++) {
            double di = 0;
            for (int s = 0; s < own; s++) {
                di += at.ampsByStart[k * own + s] * ownStartColumn[values.firstState[d] + s];
            }
            reduction.addPort(column, values.firstPort[d] + k, di);
        }
    }
}
