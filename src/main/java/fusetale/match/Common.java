package fusetale.match;

import fusetale.bench.Check;
import fusetale.circuit.MeterFunction;
import java.util.List;

/**
 * What all boards share of the evidence: the readings on their axis, how they vary together over good machines, and how
 * likely each is where nothing is known.
 */
final class Common {
    private final List<Evidence> evidence;
    private final double[] axis;
    private final double[][] shared;
    private final double[] logBroad;

    /**
     * Of evidence.
     *
     * @param drawn how far drawn machines stand from the nominal one, by evidence and machine [axis]; an empty row where
     *     that is not known
     * @param logBroad natural logarithm of how likely each is where nothing is known
     */
    Common(List<Evidence> evidence, double[][] drawn, double[] logBroad) {
        this.evidence = List.copyOf(evidence);
        this.logBroad = logBroad.clone();
        int n = evidence.size();
        this.axis = new double[n];
        this.shared = new double[n][n];
        for (int j = 0; j < n; j++) {
            if (evidence.get(j).ask() instanceof Ask.Metered m
                    && evidence.get(j).shown() instanceof Shown.Figure figure) {
                axis[j] = Axis.at(m.check().function(), figure.si());
            }
            for (int i = 0; i <= j; i++) {
                shared[i][j] = covariance(drawn[i], drawn[j]);
                shared[j][i] = shared[i][j];
            }
        }
        shrink(drawn, n);
    }

    /** Fewer machines than readings leave the covariance uncertain: off its diagonal it is taken down in proportion. */
    private void shrink(double[][] drawn, int n) {
        int machines = 0;
        int figures = 0;
        for (double[] row : drawn) {
            machines = Math.max(machines, row.length);
            // what is only looked at does not vary with them
            figures += row.length > 0 ? 1 : 0;
        }
        double kept = 1 - (figures + 1.0) / (machines + figures + 1.0);
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                if (i != j) {
                    shared[i][j] *= kept;
                }
            }
        }
    }

    /** Sample covariance of two rows; 0 where one is not known. */
    static double covariance(double[] one, double[] two) {
        int n = Math.min(one.length, two.length);
        if (n < 2) {
            return 0;
        }
        double a = 0;
        double b = 0;
        for (int d = 0; d < n; d++) {
            a += one[d] / n;
            b += two[d] / n;
        }
        double sum = 0;
        for (int d = 0; d < n; d++) {
            sum += (one[d] - a) * (two[d] - b);
        }
        return sum / (n - 1);
    }

    int size() {
        return evidence.size();
    }

    Shown shown(int j) {
        return evidence.get(j).shown();
    }

    /** The check of a reading with a meter. */
    Check check(int j) {
        return ((Ask.Metered) evidence.get(j).ask()).check();
    }

    /** Whether a reading and what is expected are figures that can be further from each other or nearer. A buzzer tells none. */
    boolean isFigure(int j, Expectation expected) {
        return expected.kind() == Expectation.Kind.FIGURE
                && shown(j) instanceof Shown.Figure
                && check(j).function() != MeterFunction.CONTINUITY;
    }

    double axis(int j) {
        return axis[j];
    }

    double shared(int i, int j) {
        return shared[i][j];
    }

    double logBroad(int j) {
        return logBroad[j];
    }
}
