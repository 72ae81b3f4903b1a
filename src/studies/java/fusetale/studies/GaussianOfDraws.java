package fusetale.studies;

import java.util.ArrayList;
import java.util.List;

/**
 * The class under which readings are likeliest, each class one Gaussian of drawn circuits: their mean, and their covariance
 * drawn towards its diagonal by (q + 1)/(n + q), of n circuits and q readings, and widened by the meter. Textbook
 * (quadratic discriminant analysis); the shrinkage is ours.
 */
final class GaussianOfDraws implements FilterBenchmark.Guess {
    /** Rounding of the solver, as a share of a reading: keeps exact readings from being weighed beyond it. */
    private static final double SOLVER_RATIO = 5e-4;

    private final List<double[]> means;
    private final List<double[][]> covariances;

    private GaussianOfDraws(List<double[]> means, List<double[][]> covariances) {
        this.means = means;
        this.covariances = covariances;
    }

    static GaussianOfDraws of(List<FilterBenchmark.Truth> known, int classes) {
        List<double[]> means = new ArrayList<>();
        List<double[][]> covariances = new ArrayList<>();
        for (int k = 0; k < classes; k++) {
            int of = k;
            List<double[]> rows = known.stream()
                    .filter(t -> t.of() == of)
                    .map(t -> java.util.Arrays.stream(t.volts())
                            .map(FilterBenchmark::axis)
                            .toArray())
                    .toList();
            double[] mean = mean(rows);
            means.add(mean);
            covariances.add(covariance(rows, mean));
        }
        return new GaussianOfDraws(means, covariances);
    }

    private static double[] mean(List<double[]> rows) {
        double[] mean = new double[rows.get(0).length];
        for (double[] row : rows) {
            for (int j = 0; j < mean.length; j++) {
                mean[j] += row[j] / rows.size();
            }
        }
        return mean;
    }

    private static double[][] covariance(List<double[]> rows, double[] mean) {
        int q = mean.length;
        int n = rows.size();
        double shrunk = (q + 1.0) / (n + q);
        double[][] c = new double[q][q];
        for (double[] row : rows) {
            for (int i = 0; i < q; i++) {
                for (int j = 0; j < q; j++) {
                    double share = i == j ? 1 : 1 - shrunk;
                    c[i][j] += share * (row[i] - mean[i]) * (row[j] - mean[j]) / (n - 1);
                }
            }
        }
        return c;
    }

    @Override
    public String name() {
        return "Gaussian of drawn circuits";
    }

    @Override
    public int of(double[] volts, double[] sigmas) {
        int best = 0;
        double most = Double.NEGATIVE_INFINITY;
        for (int k = 0; k < means.size(); k++) {
            double log = logDensity(volts, sigmas, means.get(k), covariances.get(k));
            if (log > most) {
                most = log;
                best = k;
            }
        }
        return best;
    }

    private static double logDensity(double[] volts, double[] sigmas, double[] mean, double[][] covariance) {
        int q = mean.length;
        double[][] lower = new double[q][q];
        double[] solved = new double[q];
        double sum = 0;
        for (int i = 0; i < q; i++) {
            for (int j = 0; j <= i; j++) {
                double value = covariance[i][j];
                if (i == j) {
                    double meter = FilterBenchmark.axisSigma(volts[i], sigmas[i]);
                    value += meter * meter + SOLVER_RATIO * SOLVER_RATIO;
                }
                for (int m = 0; m < j; m++) {
                    value -= lower[i][m] * lower[j][m];
                }
                lower[i][j] = i == j ? Math.sqrt(value) : value / lower[j][j];
            }
            double left = FilterBenchmark.axis(volts[i]) - mean[i];
            for (int m = 0; m < i; m++) {
                left -= lower[i][m] * solved[m];
            }
            solved[i] = left / lower[i][i];
            sum -= solved[i] * solved[i] / 2 + Math.log(lower[i][i]);
        }
        return sum;
    }
}
