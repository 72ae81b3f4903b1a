package fusetale.match;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fusetale.bench.Arrangement;
import fusetale.bench.Check;
import fusetale.bench.Observation;
import fusetale.circuit.MeterFunction;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.hipparchus.distribution.multivariate.MultivariateNormalDistribution;
import org.junit.jupiter.api.Test;

/** The joint normal law and its leave-one-out form, against the densities of a general-purpose statistics library. */
class FitTest {
    private static final Check CHECK = new Check("TP1", "gnd", MeterFunction.DC_VOLTS);

    private static Expectation figure(double middle, double variance) {
        return new Expectation(Expectation.Kind.FIGURE, middle, 0, variance, null, null);
    }

    private static Evidence read(double axis) {
        return new Evidence(
                new Ask.Metered(Arrangement.unpowered(), CHECK),
                new Shown.Figure(Axis.back(MeterFunction.DC_VOLTS, axis)));
    }

    /** Two readings that move together over good machines, and what each says once the other is known. */
    @Test
    void leaveOneOutIsTheConditionalLaw() {
        double[][] drawn = new double[3][400];
        Random random = new Random(3);
        for (int d = 0; d < 400; d++) {
            double mains = 0.05 * random.nextGaussian();
            for (int j = 0; j < 3; j++) {
                drawn[j][d] = mains + 0.01 * random.nextGaussian();
            }
        }
        double[] read = {5.02, 5.06, 6.9};
        Common common =
                new Common(List.of(read(read[0]), read(read[1]), read(read[2])), drawn, new double[] {-3, -3, -3});
        Expectation[] expected = {figure(5, 1e-4), figure(5, 2e-4), figure(7, 1e-4)};
        Fit fit = Fit.of(expected, common);
        double[][] k = new double[3][3];
        for (int a = 0; a < 3; a++) {
            for (int b = 0; b < 3; b++) {
                k[a][b] = common.shared(a, b) + (a == b ? expected[a].ownVariance() : 0);
            }
        }
        double all = Math.log(new MultivariateNormalDistribution(new double[] {5, 5, 7}, k).density(read));
        double[][] two = {{k[0][0], k[0][1]}, {k[1][0], k[1][1]}};
        double without = Math.log(
                new MultivariateNormalDistribution(new double[] {5, 5}, two).density(new double[] {read[0], read[1]}));
        assertThat(fit.logEach()[2]).isCloseTo(all - without, within(1e-6));
    }

    /** One slip among many readings costs about its odds, not the whole of the likelihood, and is found. */
    @Test
    void oneSlipIsFound() {
        double[] none = {};
        Common common = new Common(
                List.of(read(5), read(6), read(1)), new double[][] {none, none, none}, new double[] {-3, -3, -3});
        Fit fit = Fit.of(new Expectation[] {figure(5, 1e-3), figure(6, 1e-3), figure(5, 1e-3)}, common);
        assertThat(fit.mistake()[2]).isGreaterThan(0.99);
        assertThat(fit.mistake()[0]).isLessThan(0.01);
        assertThat(Math.abs(fit.away()[2])).isGreaterThan(100);
    }

    /** Bayes' rule by hand: two boards of one weight, one reading; odds are the ratio of two normal densities. */
    @Test
    void posteriorIsTheRatioOfDensities() {
        double[] none = {};
        double broad = -8;
        Common common = new Common(List.of(read(5.02)), new double[][] {none}, new double[] {broad});
        Fit near = Fit.of(new Expectation[] {figure(5, 4e-4)}, common);
        Fit far = Fit.of(new Expectation[] {figure(5.06, 4e-4)}, common);
        double slip = Fit.SLIP;
        double a = (1 - slip) * density(5.02, 5, 4e-4) + slip * Math.exp(broad);
        double b = (1 - slip) * density(5.02, 5.06, 4e-4) + slip * Math.exp(broad);
        assertThat(near.logLikelihood() - far.logLikelihood()).isCloseTo(Math.log(a / b), within(1e-9));
    }

    private static double density(double x, double mean, double variance) {
        return Math.exp(-(x - mean) * (x - mean) / (2 * variance)) / Math.sqrt(2 * Math.PI * variance);
    }

    /** Three rails that move together over 24 machines, beside sixty things seen, which do not: shrunk as for three readings. */
    @Test
    void whatIsOnlySeenDoesNotLoosenWhatIsRead() {
        Random random = new Random(5);
        double[][] rails = new double[3][24];
        for (int d = 0; d < 24; d++) {
            double mains = 0.05 * random.nextGaussian();
            for (int j = 0; j < 3; j++) {
                rails[j][d] = mains + 0.01 * random.nextGaussian();
            }
        }
        List<Evidence> read = List.of(read(5), read(5), read(5));
        List<Evidence> all = new ArrayList<>(read);
        double[][] drawn = new double[63][];
        for (int j = 0; j < 63; j++) {
            drawn[j] = j < 3 ? rails[j] : new double[0];
            if (j >= 3) {
                all.add(new Evidence(
                        new Ask.Noticed(Arrangement.unpowered(), "E" + j, Observation.Aspect.LAMP),
                        new Shown.Seen(Observation.Sight.DARK)));
            }
        }

        Common alone = new Common(read, rails, new double[3]);
        Common beside = new Common(all, drawn, new double[63]);

        assertThat(beside.shared(0, 1)).isEqualTo(alone.shared(0, 1));
        // q + 1 of 24 + q + 1 are taken off
        assertThat(alone.shared(0, 1)).isCloseTo(24 / 28.0 * Common.covariance(rails[0], rails[1]), within(1e-12));
    }

    /** A buzzer tells no figure: a beep is the same of a short and of 25 ohm, and all but rules out an open. */
    @Test
    void aBeepIsACategory() {
        Check buzzer = new Check("one", "two", MeterFunction.CONTINUITY);
        Evidence beep = new Evidence(new Ask.Metered(Arrangement.unpowered(), buzzer), new Shown.Figure(0));
        Common common = new Common(List.of(beep), new double[][] {{}}, new double[] {Math.log(0.5)});
        Expectation open = new Expectation(Expectation.Kind.OVER, 0, 0, 0, null, null);
        double shorted = Axis.at(MeterFunction.CONTINUITY, 0.1);
        double winding = Axis.at(MeterFunction.CONTINUITY, 25);

        Fit ofShort = Fit.of(new Expectation[] {figure(shorted, 0.1)}, common);
        Fit ofWinding = Fit.of(new Expectation[] {figure(winding, 0.1)}, common);
        Fit ofOpen = Fit.of(new Expectation[] {open}, common);

        assertThat(ofWinding.logLikelihood()).isEqualTo(ofShort.logLikelihood());
        assertThat(ofWinding.away()[0]).isZero();
        // the odds of a slip, 1 in 50, are the most that a wrong category can be worth
        assertThat(ofShort.logLikelihood() - ofOpen.logLikelihood()).isGreaterThan(Math.log(50));
    }

    /** asinh x = ln 2x for large x, whatever a cell holds (Abramowitz and Stegun, 4.6.31, from memory). */
    @Test
    void theAxisHoldsAnyFigure() {
        assertThat(Axis.at(MeterFunction.DC_VOLTS, 1e200)).isCloseTo(Math.log(2e200 / 0.05), within(1e-9));
        assertThat(Axis.at(MeterFunction.DC_VOLTS, -1e9)).isCloseTo(-Math.log(2e9 / 0.05), within(1e-9));
    }
}
