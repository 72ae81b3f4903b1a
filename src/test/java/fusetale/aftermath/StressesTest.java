package fusetale.aftermath;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fusetale.circuit.About;
import fusetale.circuit.Diode;
import fusetale.circuit.DiodeModel;
import fusetale.circuit.Electrolytic;
import fusetale.circuit.Fuse;
import fusetale.circuit.FuseLink;
import fusetale.circuit.Net;
import fusetale.circuit.Ratings;
import fusetale.circuit.Resistor;
import fusetale.circuit.Transformer.Winding;
import fusetale.quantity.Quantity;
import fusetale.quantity.Tolerance;
import fusetale.quantity.Toleranced;
import fusetale.quantity.Unit;
import fusetale.signal.Waveform;
import java.util.List;
import org.junit.jupiter.api.Test;

class StressesTest {
    private static final int SAMPLES = 1000;
    private static final Net A = new Net("a");
    private static final Net B = new Net("b");

    @Test
    void windingIsHeldByTheHeatingCurrent() {
        Winding winding = new Winding(
                "sec", List.of(A, B), new Quantity(28, Unit.VOLT), exact(0.4, Unit.OHM), new Quantity(5, Unit.AMPERE));

        Stress stress = Stresses.winding("T1", winding, sine(10)).get(0);

        // r.m.s. of a sine: peak/√2
        assertThat(stress.value()).isCloseTo(10 / Math.sqrt(2), within(1e-6));
        assertThat(stress.over()).isTrue();
    }

    @Test
    void windingWithoutARatingGivesNoRow() {
        Winding winding = new Winding("sec", List.of(A, B), new Quantity(28, Unit.VOLT), exact(0.4, Unit.OHM), null);

        assertThat(Stresses.winding("T1", winding, sine(10))).isEmpty();
    }

    @Test
    void wrongFuseIsHeldAgainstItsMarkingToo() {
        List<Stress> rows = Stresses.fuse(fuse(5, 25), Waveform.steady(20));

        assertThat(rows).extracting(Stress::strain).containsExactly(Strain.LINK_CURRENT, Strain.MARKED_CURRENT);
        assertThat(rows).extracting(Stress::over).containsExactly(false, true);
    }

    @Test
    void rightFuseHasOneRow() {
        assertThat(Stresses.fuse(fuse(5, 5), Waveform.steady(2))).hasSize(1);
    }

    @Test
    void diodeIsHeldByItsMeanCurrent() {
        List<Stress> rows = Stresses.diode(diode(), halfSine(10), sine(50));

        // mean of a half-wave: peak/π
        assertThat(rows.get(0).value()).isCloseTo(10 / Math.PI, within(1e-4));
    }

    @Test
    void diodeIsHeldByItsReversePeak() {
        List<Stress> rows = Stresses.diode(diode(), halfSine(10), sine(50));

        Stress reverse = rows.get(1);
        assertThat(reverse.strain()).isEqualTo(Strain.REVERSE_VOLTAGE);
        assertThat(reverse.value()).isCloseTo(50, within(1e-3));
    }

    @Test
    void unknownRatingOfADiodeGivesNoRow() {
        // surge current is not known for this model
        assertThat(Stresses.diode(diode(), halfSine(10), sine(50)))
                .extracting(Stress::strain)
                .doesNotContain(Strain.PEAK_CURRENT)
                .hasSize(2);
    }

    /** Data sheets of bipolar drivers: collector current continuous and peak, collector-emitter voltage. */
    @Test
    void driverIsHeldByMeanAndPeakCurrentAndTheVoltageAcrossIt() {
        Ratings ratings = new Ratings(8, 15, Double.POSITIVE_INFINITY, 100, 80, 62.5, List.of("a test's own"));

        List<Stress> rows = Stresses.driver("Q1", ratings, Waveform.steady(12), sine(120));

        assertThat(rows)
                .extracting(Stress::strain)
                .containsExactly(Strain.DRIVER_CURRENT, Strain.PEAK_CURRENT, Strain.VOLTAGE);
        assertThat(rows).extracting(Stress::over).containsExactly(true, false, true);
        // a PNP one counts downwards
        assertThat(Stresses.driver("Q1", ratings, Waveform.steady(-12), Waveform.steady(-45))
                        .get(0)
                        .ratio())
                .isCloseTo(1.5, within(1e-12));
    }

    /** A channel is a resistance: what heats it is i²R, so r.m.s. against the continuous drain current. */
    @Test
    void channelIsHeldByItsHeatingCurrent() {
        Ratings ratings = new Ratings(10, 40, Double.POSITIVE_INFINITY, 100, 80, 62.5, List.of("a test's own"));

        Stress heating = Stresses.channel("Q1", ratings, sine(10 * Math.sqrt(2)), sine(50))
                .get(0);

        assertThat(heating.strain()).isEqualTo(Strain.CONDUCTOR_CURRENT);
        assertThat(heating.ratio()).isCloseTo(1, within(1e-4));
    }

    @Test
    void regulatorIsHeldByItsInput() {
        Ratings ratings = new Ratings(1, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, 35, 15, 50, List.of());

        assertThat(Stresses.input("U1", ratings, Waveform.steady(42)).get(0).ratio())
                .isCloseTo(1.2, within(1e-12));
    }

    @Test
    void resistorDissipatesVoltsSquaredOverOhms() {
        Resistor r = new Resistor("R1", A, B, exact(100, Unit.OHM), new Quantity(0.5, Unit.WATT), About.NOTHING);

        // Joule: 10 V across 100 Ω is 1 W, twice what it stands
        assertThat(Stresses.resistor(r, Waveform.steady(10)).get(0).ratio()).isCloseTo(2, within(1e-12));
    }

    @Test
    void electrolyticIsHeldByItsHighestVoltage() {
        Electrolytic c = new Electrolytic(
                "C1",
                A,
                B,
                exact(1e-3, Unit.FARAD),
                new Quantity(25, Unit.VOLT),
                new Quantity(0.1, Unit.OHM),
                new Quantity(1e4, Unit.OHM),
                About.NOTHING);

        assertThat(Stresses.electrolytic(c, sine(30)).get(0).ratio()).isCloseTo(1.2, within(1e-4));
    }

    @Test
    void worstComesFirst() {
        Stress little = new Stress("F1", "", Strain.LINK_CURRENT, 1, 5);
        Stress much = new Stress("F2", "", Strain.LINK_CURRENT, 9, 5);

        assertThat(Stresses.worstFirst(List.of(little, much))).containsExactly(much, little);
    }

    private static Diode diode() {
        Ratings ratings =
                new Ratings(1, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, 100, 1, 50, List.of("a test's own"));
        return new Diode(
                "D1", A, B, new DiodeModel("d", 1e-8, 2, 0.1, 1e-11, 1e9, 100, 1e-3, 1, ratings), About.NOTHING);
    }

    private static Fuse fuse(double marked, double fitted) {
        return new Fuse("F1", A, B, link(marked), link(fitted), exact(0.005, Unit.OHM), About.NOTHING);
    }

    private static FuseLink link(double amps) {
        return new FuseLink(
                new Quantity(amps, Unit.AMPERE),
                FuseLink.Speed.SLOW,
                FuseLink.Standard.UL_248_14,
                "6.3x32",
                new Quantity(0.02, Unit.OHM));
    }

    private static Toleranced exact(double value, Unit unit) {
        return new Toleranced(new Quantity(value, unit), Tolerance.EXACT);
    }

    private static Waveform sine(double peak) {
        return wave(peak, -peak);
    }

    private static Waveform halfSine(double peak) {
        return wave(peak, 0);
    }

    /** A sine of a peak, cut off below {@code lowest}. */
    private static Waveform wave(double peak, double lowest) {
        double[] seconds = new double[SAMPLES];
        double[] values = new double[SAMPLES];
        double[] weights = new double[SAMPLES];
        for (int k = 0; k < SAMPLES; k++) {
            seconds[k] = k / (double) SAMPLES;
            values[k] = Math.max(lowest, peak * Math.sin(2 * Math.PI * k / SAMPLES));
            weights[k] = 1.0 / SAMPLES;
        }
        return new Waveform(seconds, values, weights);
    }
}
