package fusetale.desk.waves;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fusetale.explore.Trace;
import fusetale.quantity.Unit;
import fusetale.signal.Waveform;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Waveforms of closed form: means and peaks of rectified sines, how often they come. */
class WaveModelTest {
    private static final double CYCLE = 1.0 / 60;
    private static final int SAMPLES = 400;

    /** One cycle of a function of the angle [rad], its last sample at the end of the cycle as the solver has it. */
    private static Waveform wave(DoubleUnaryOperator ofAngle) {
        double[] seconds = new double[SAMPLES];
        double[] values = new double[SAMPLES];
        double[] weights = new double[SAMPLES];
        for (int k = 0; k < SAMPLES; k++) {
            seconds[k] = CYCLE * (k + 1) / SAMPLES;
            values[k] = ofAngle.applyAsDouble(2 * Math.PI * (k + 1) / SAMPLES);
            weights[k] = CYCLE / SAMPLES;
        }
        return new Waveform(seconds, values, weights);
    }

    private static Waveform named(String name) {
        return switch (name) {
            case "full" -> wave(a -> 10 * Math.abs(Math.sin(a)));
            case "half" -> wave(a -> 10 * Math.max(0, Math.sin(a)));
            case "sine" -> wave(a -> 10 * Math.sin(a));
            case "uneven" -> wave(a -> Math.sin(a) > 0 ? 10 * Math.sin(a) : -3 * Math.sin(a));
            default -> throw new IllegalArgumentException(name);
        };
    }

    private static WaveModel model(Waveform built, Waveform supposed) {
        return WaveModel.repeated(new Trace("TP2", Unit.VOLT, built, supposed), CYCLE);
    }

    @ParameterizedTest
    @CsvSource({"full, 2", "half, 1", "sine, 1", "uneven, 2"})
    void humpsAreCountedRoundTheCycle(String name, int humps) {
        assertThat(Humps.in(named(name))).isEqualTo(humps);
    }

    @Test
    void nothingThatStandsStillHasHumps() {
        assertThat(Humps.in(Waveform.steady(5))).isZero();
    }

    /** Mean of a full-wave rectified sine: 2/π of its peak; of a half-wave one: 1/π (any handbook). */
    @Test
    void meansStandInTheHeading() {
        WaveModel model = model(named("full"), named("half"));

        assertThat(model.kind()).isEqualTo("mean");
        assertThat(Double.parseDouble(model.builtFigure())).isCloseTo(20 / Math.PI, within(0.005));
        assertThat(Double.parseDouble(model.supposedFigure())).isCloseTo(10 / Math.PI, within(0.005));
    }

    /** R.m.s. of a sine: its peak over √2; of a half-wave rectified one: its peak over 2. */
    @Test
    void whatAlternatesIsGivenAsRms() {
        WaveModel model = model(named("sine"), named("half"));

        assertThat(model.kind()).isEqualTo("r.m.s.");
        assertThat(Double.parseDouble(model.builtFigure())).isCloseTo(10 / Math.sqrt(2), within(0.005));
        assertThat(Double.parseDouble(model.supposedFigure())).isCloseTo(5, within(0.005));
    }

    @Test
    void spokenTextHasMeanExtremesAndHowOften() {
        assertThat(model(named("full"), named("half")).spoken())
                .isEqualTo("TP2 volts; healthy: mean 6.37 V, lowest 0.0 V, highest 10.0 V, 120 humps a second; "
                        + "supposed: mean 3.18 V, lowest 0.0 V, highest 10.0 V, 60 humps a second");
        assertThat(model(named("full"), Waveform.steady(0)).spoken()).endsWith("supposed: steady at 0.00 V");
    }

    @Test
    void twoCyclesAreShownAndTheSecondIsTheFirst() {
        WaveModel model = model(named("uneven"), named("sine"));

        assertThat(model.seconds()).isCloseTo(2 * CYCLE, within(1e-12));
        for (double share = 0; share <= 1; share += 0.05) {
            assertThat(model.builtAt((1 + share) * CYCLE)).isCloseTo(model.builtAt(share * CYCLE), within(1e-9));
        }
    }

    @Test
    void valuesAtTheCursorAreThoseOfTheCurve() {
        WaveModel model = model(named("sine"), named("half"));

        // a straight line between samples misses a sine by no more than (2π/400)²/8 of its peak
        assertThat(model.builtAt(CYCLE / 8)).isCloseTo(10 * Math.sin(Math.PI / 4), within(4e-4));
        assertThat(model.supposedAt(0.75 * CYCLE)).isCloseTo(0, within(1e-9));
        assertThat(model.builtSaid(CYCLE / 4)).isEqualTo("10.0 V");
    }

    @Test
    void axisEndsAreRoundAndHoldBothCurves() {
        WaveModel model = model(named("full"), named("sine"));

        assertThat(model.low()).isLessThanOrEqualTo(-10);
        assertThat(model.high()).isGreaterThanOrEqualTo(10);
        assertThat(model.axisEnd(model.high())).isEqualTo("10");
        assertThat(model.timeEnd()).isEqualTo("33.3 ms");
    }

    @Test
    void thinningKeepsPeaks() {
        Waveform spike = wave(a -> Math.abs(a - 2) < 0.01 ? 50 : Math.sin(a));
        Curve curve = Curve.repeated(spike, CYCLE);
        double[] thinned = curve.thinned(30);
        double highest = 0;
        for (int k = 1; k < thinned.length; k += 2) {
            highest = Math.max(highest, thinned[k]);
        }

        assertThat(thinned.length).isLessThanOrEqualTo(2 * 4 * 31).isLessThan(2 * curve.size());
        assertThat(highest).isEqualTo(50);
        assertThat(thinned[0]).isZero();
        assertThat(thinned[thinned.length - 2]).isEqualTo(curve.end());
    }

    @Test
    void csvReadsBackAsTheCurves() {
        WaveModel one = model(named("full"), named("half"));
        WaveModel two = WaveModel.repeated(new Trace("F1", Unit.AMPERE, named("sine"), named("uneven")), CYCLE);
        List<String> lines = WaveModel.csv(List.of(one, two)).lines().toList();

        assertThat(lines.get(0)).isEqualTo("time [ms],TP2 healthy [V],TP2 supposed [V],F1 healthy [A],F1 supposed [A]");
        assertThat(lines).hasSizeGreaterThan(2 * SAMPLES);
        for (String line : lines.subList(1, lines.size())) {
            String[] cells = line.split(",");
            double seconds = Double.parseDouble(cells[0]) / 1000;
            // times are written to 0.1 μs, a sine of 10 V at 60 Hz climbs 0.4 mV in that; values to five digits
            assertThat(Double.parseDouble(cells[1])).isCloseTo(one.builtAt(seconds), within(1e-3));
            assertThat(Double.parseDouble(cells[4])).isCloseTo(two.supposedAt(seconds), within(1e-3));
        }
    }

    @Test
    void aRunIsShownOnceByItsHighest() {
        WaveModel model = WaveModel.once(new Trace("L1", Unit.AMPERE, named("half"), named("full")));

        assertThat(model.repeats()).isFalse();
        assertThat(model.seconds()).isCloseTo(CYCLE, within(1e-12));
        assertThat(model.kind()).isEqualTo("highest");
        assertThat(model.builtFigure()).isEqualTo("10.0");
    }
}
