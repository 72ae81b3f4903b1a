package fusetale.match;

import fusetale.bench.Observation;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * How well one board explains all the evidence together: one joint normal law for its figures, a probability for each OL and
 * each thing seen, and at most one slip. With y the readings, K their covariance, z = K⁻¹(y − μ):
 *
 * <pre>ln p(y_j | all others) = −z_j²/(2 k_jj) + ln(k_jj)/2 − ln(2π)/2,  k = K⁻¹;  away_j = z_j/√k_jj</pre>
 *
 * (leave-one-out form of the normal law, from the block inverse.)
 */
final class Fit {
    private final double logLikelihood;
    private final double[] logEach;
    private final double[] away;
    private final double[] mistake;
    private final Expectation[] expectations;
    private final double[] spread;
    private final boolean complete;
    private final List<Turned> ways;

    Fit(
            double logLikelihood,
            double[] logEach,
            double[] away,
            double[] mistake,
            Expectation[] expectations,
            double[] spread) {
        this(logLikelihood, logEach, away, mistake, expectations, spread, List.of());
    }

    private Fit(
            double logLikelihood,
            double[] logEach,
            double[] away,
            double[] mistake,
            Expectation[] expectations,
            double[] spread,
            List<Turned> ways) {
        this.ways = List.copyOf(ways);
        this.logLikelihood = logLikelihood;
        this.logEach = logEach;
        this.away = away;
        this.mistake = mistake;
        this.expectations = expectations;
        this.spread = spread;
        this.complete = Arrays.stream(expectations).noneMatch(e -> e.kind() == Expectation.Kind.UNKNOWN);
    }

    /** How the board explains the evidence with its fuses come out each way; empty where that is certain. */
    List<Turned> ways() {
        return ways;
    }

    /** Whether the board lets expect something of all that was found. */
    boolean isComplete() {
        return complete;
    }

    /** Natural logarithm of p(evidence | board), slips included. */
    double logLikelihood() {
        return logLikelihood;
    }

    /** Ln p(evidence j | all others, board), one an evidence. Not to be modified. */
    double[] logEach() {
        return logEach;
    }

    /** How far off each is in standard deviations; infinite for what cannot be. Not to be modified. */
    double[] away() {
        return away;
    }

    /** Probability that each is a slip, were the board true. Not to be modified. */
    double[] mistake() {
        return mistake;
    }

    /** What the board lets expect, one an evidence. Not to be modified. */
    Expectation[] expectations() {
        return expectations;
    }

    /** Standard deviation of each before anything was read [axis]. Not to be modified. */
    double[] spread() {
        return spread;
    }

    /** One reading in fifty is a slip (judgement). */
    static final double SLIP = 0.02;

    /** An OL where a figure is expected, or the other way round. */
    private static final double WRONG_CATEGORY = 0.003;

    /** Ln of the density of a reading that is just as expected: 3 %, what models may be off. */
    private static final double SHARPEST = -Math.log(0.03 * Math.sqrt(2 * Math.PI));

    private static final double HALF_LN_TAU = Math.log(2 * Math.PI) / 2;

    /**
     * Weighs.
     *
     * @param common the evidence, with what all boards share
     */
    static Fit of(Expectation[] expected, Common common) {
        int n = expected.length;
        double[] logEach = new double[n];
        double[] away = new double[n];
        double[] spread = new double[n];
        int[] figures = new int[n];
        int q = 0;
        double log = 0;
        for (int j = 0; j < n; j++) {
            Expectation e = expected[j];
            if (common.isFigure(j, e)) {
                figures[q++] = j;
            } else {
                logEach[j] = category(e, common, j);
                away[j] = wrong(e, common.shown(j)) ? Double.POSITIVE_INFINITY : 0;
                log += logEach[j];
            }
        }
        if (q > 0) {
            log += figures(expected, common, Arrays.copyOf(figures, q), logEach, away);
        }
        for (int j = 0; j < n; j++) {
            spread[j] = Math.sqrt(
                    common.shared(j, j) + expected[j].slope() * expected[j].slope() / 12 + expected[j].ownVariance());
        }
        return slips(log, logEach, away, expected, spread, common);
    }

    /** Ln of how much likelier the board could become, if all that is not known of it were just what was found. */
    double open(Common common) {
        double log = 0;
        for (int j = 0; j < expectations.length && !complete; j++) {
            if (expectations[j].kind() == Expectation.Kind.UNKNOWN) {
                log += (common.shown(j) instanceof Shown.Figure ? SHARPEST : 0) - common.logBroad(j);
            }
        }
        return log;
    }

    /** How a board explains the evidence with its fuses come out one way. */
    record Turned(Way way, Fit fit) {
        /** Ln p(evidence and this way | board), {@code of} ways in doubt: as taken one in two, else the rest (judgement). */
        private double logTogether(int of) {
            return fit.logLikelihood - Math.log(way == Way.AS_TAKEN ? 2 : 2 * (of - 1));
        }
    }

    /** Of a board whose fuses have come out one way or another: what is told is told of the likeliest. */
    static Fit either(List<Turned> ways) {
        double[] logs =
                ways.stream().mapToDouble(w -> w.logTogether(ways.size())).toArray();
        Fit told = Collections.max(ways, Comparator.comparingDouble(w -> w.logTogether(ways.size()))).fit;
        return new Fit(logSum(logs), told.logEach, told.away, told.mistake, told.expectations, told.spread, ways);
    }

    /** The way in which its fuses have likeliest come out. */
    Way likeliestWay() {
        return ways.stream()
                .max(Comparator.comparingDouble(w -> w.logTogether(ways.size())))
                .map(Turned::way)
                .orElse(Way.AS_TAKEN);
    }

    /** Shares of its ways, of 1, by how well each stands. */
    double[] waysShares(ToDoubleFunction<Fit> stands) {
        double[] logs = ways.stream()
                .mapToDouble(w -> w.logTogether(ways.size()) + Math.log(stands.applyAsDouble(w.fit)))
                .toArray();
        double all = logSum(logs);
        double[] shares = new double[logs.length];
        for (int k = 0; k < logs.length; k++) {
            shares[k] = all == Double.NEGATIVE_INFINITY ? (k == 0 ? 1 : 0) : Math.exp(logs[k] - all);
        }
        return shares;
    }

    private static boolean wrong(Expectation e, Shown shown) {
        return switch (e.kind()) {
            case UNKNOWN -> false;
            case SIGHT ->
                !(shown instanceof Shown.Seen s
                        && e.sight() != null
                        && s.sight() == e.sight().sight());
            case OVER -> !(shown instanceof Shown.Over);
            case FIGURE -> shown instanceof Shown.Over;
        };
    }

    private static double category(Expectation e, Common common, int j) {
        Shown shown = common.shown(j);
        if (e.kind() == Expectation.Kind.UNKNOWN) {
            return common.logBroad(j);
        }
        if (e.sight() != null) {
            return shown instanceof Shown.Seen seen
                    ? Math.log(Seeing.probability(seen, e.sight()))
                    : common.logBroad(j);
        }
        boolean same = (e.kind() == Expectation.Kind.OVER) == (shown instanceof Shown.Over);
        return same
                ? Math.log(1 - WRONG_CATEGORY)
                : Math.log(WRONG_CATEGORY) + (shown instanceof Shown.Figure ? common.logBroad(j) : 0);
    }

    private static double figures(Expectation[] expected, Common common, int[] at, double[] logEach, double[] away) {
        int q = at.length;
        CholeskyDecomposition cholesky = new CholeskyDecomposition(covariance(expected, common, at), 1e-9, 1e-14);
        double[] off = new double[q];
        for (int k = 0; k < q; k++) {
            off[k] = common.axis(at[k]) - expected[at[k]].middle();
        }
        RealVector y = new ArrayRealVector(off, false);
        RealVector z = cholesky.getSolver().solve(y);
        RealMatrix inverse = cholesky.getSolver().getInverse();
        double logDeterminant = Math.log(cholesky.getDeterminant());
        if (!Double.isFinite(logDeterminant)) {
            logDeterminant = 0;
            for (int k = 0; k < q; k++) {
                logDeterminant += 2 * Math.log(cholesky.getL().getEntry(k, k));
            }
        }
        for (int k = 0; k < q; k++) {
            double kk = inverse.getEntry(k, k);
            double zk = z.getEntry(k);
            logEach[at[k]] = -zk * zk / (2 * kk) + Math.log(kk) / 2 - HALF_LN_TAU;
            away[at[k]] = zk / Math.sqrt(kk);
        }
        return -y.dotProduct(z) / 2 - logDeterminant / 2 - q * HALF_LN_TAU;
    }

    /** Covariance of the figures at some places of the evidence. */
    static RealMatrix covariance(Expectation[] expected, Common common, int[] at) {
        int q = at.length;
        double[][] k = new double[q][q];
        for (int a = 0; a < q; a++) {
            for (int b = 0; b < q; b++) {
                k[a][b] = common.shared(at[a], at[b]) + expected[at[a]].slope() * expected[at[b]].slope() / 12;
            }
            k[a][a] += expected[at[a]].ownVariance();
        }
        return new Array2DRowRealMatrix(k, false);
    }

    private static Fit slips(
            double log, double[] logEach, double[] away, Expectation[] expected, double[] spread, Common common) {
        int n = logEach.length;
        double[] terms = new double[n + 2];
        double allBroad = 0;
        for (int j = 0; j < n; j++) {
            terms[j] = log - logEach[j] + common.logBroad(j) + Math.log(SLIP) + (n - 1) * Math.log(1 - SLIP);
            allBroad += common.logBroad(j);
        }
        terms[n] = log + n * Math.log(1 - SLIP);
        // more than one slip, at worst all; one reading cannot be two
        terms[n + 1] = n < 2 ? Double.NEGATIVE_INFINITY : allBroad + 2 * Math.log(SLIP);
        double total = logSum(terms);
        double[] mistake = new double[n];
        for (int j = 0; j < n; j++) {
            mistake[j] = misseen(expected[j], common.shown(j)) ? 1 : Math.exp(terms[j] - total);
        }
        return new Fit(total, logEach, away, mistake, expected, spread);
    }

    /** A board that lets expect another sight stands by a wrong look, likely or not. */
    private static boolean misseen(Expectation e, Shown shown) {
        Observation expected = e.sight();
        return expected != null && shown instanceof Shown.Seen seen && Seeing.isMistaken(seen, expected);
    }

    /** ln Σ exp. */
    static double logSum(double[] logs) {
        double most = Double.NEGATIVE_INFINITY;
        for (double x : logs) {
            most = Math.max(most, x);
        }
        if (most == Double.NEGATIVE_INFINITY) {
            return most;
        }
        double sum = 0;
        for (double x : logs) {
            sum += Math.exp(x - most);
        }
        return most + Math.log(sum);
    }
}
