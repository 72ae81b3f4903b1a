package fusetale.mna;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fusetale.signal.Waveform;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TimedContactLawTest extends PortLawContract {
    private static final double OPEN = 1e9;

    @Override
    Stream<Case> cases() {
        List<double[]> volts = List.of(new double[] {-5}, new double[] {3});
        return Stream.of(
                new Case("closed", new TimedContactLaw(0.05, OPEN, true, 1), volts),
                new Case("open", new TimedContactLaw(0.05, OPEN, false, 1), volts));
    }

    @ParameterizedTest
    @CsvSource({"0.5e-3, 1e9", "1.5e-3, 0.05", "2.5e-3, 1e9"})
    void changesOverAtItsTimes(double seconds, double ohms) {
        TimedContactLaw law = new TimedContactLaw(0.05, OPEN, false, 1e-3, 2e-3);
        PortPoint at = new PortPoint(1, 0);
        at.volts[0] = 1;
        at.seconds = seconds;
        law.evaluate(at);

        assertThat(1 / (at.amps[0] + law.baselineSiemens(0))).isCloseTo(ohms, within(1e-6 * ohms));
    }

    @Test
    void timesThatDoNotRiseAreRefused() {
        assertThatThrownBy(() -> new TimedContactLaw(0.05, OPEN, false, 2e-3, 1e-3))
                .hasMessageContaining("times must rise");
    }

    private static Network charging(double... changes) {
        Network.Builder b = Network.builder("gnd");
        b.voltage("V", "supply", "gnd", new SourceShape.Constant(10));
        b.port("S", "supply", "r", new TimedContactLaw(1e-3, OPEN, false, changes));
        b.resistor("R", "r", "c", 1000);
        b.capacitor("C", "c", "gnd", 1e-6);
        b.resistor("RD", "c", "gnd", 1000);
        return b.build();
    }

    /** V/2·(1 − e^(−t/τ)) with τ = 0.5 ms, t = 1 ms after closing (closed form). */
    @Test
    void capacitorChargesFromTheInstantOfClosing() {
        Network n = charging(2e-3);
        Waveform w = Solve.run(n, PeriodicSettings.mains(60).withAccuracy(1e-6), 3e-3)
                .volts(n.node("c"), 0);

        assertThat(w.value(w.size() - 1)).isCloseTo(5 * (1 - Math.exp(-2)), within(5e-3));
    }

    /**
     * A contact that closes between 2 and 8 ms of every period under a voltage that does not move by a bit: 5 V for 6 ms (divider
     * of two equal resistors).
     */
    @Test
    void contactUnderASteadyVoltageStillCloses() {
        Network n = Network.builder("gnd")
                .voltage("V", "supply", "gnd", new SourceShape.Constant(10))
                .resistor("RV", "supply", "s", 1000)
                .port("S", "s", "r", new TimedContactLaw(1e-3, OPEN, false, 2e-3, 8e-3))
                .resistor("R", "r", "gnd", 1000)
                .build();

        Waveform run = Solve.run(n, PeriodicSettings.mains(60), 12e-3).volts(n.node("r"), 0);
        double periodic = Solve.periodic(n).volts(n.node("r"), 0).mean();

        assertThat(run.mean()).isCloseTo(5 * 6 / 12.0, within(0.01));
        assertThat(periodic).isCloseTo(5 * 6e-3 * 60, within(0.01));
    }

    /**
     * Closed for the second half of every period of 1/60 s, τ 0.5 ms closed and 1 ms open: within e^(−8) of full and empty,
     * so the mean is 5·(T/2 − 0.5 ms) + 5·1 ms over T (closed form: areas of two exponentials).
     */
    @Test
    void periodicStateIsThatOfAChopper() {
        Network n = charging(1 / 120.0);
        PeriodicState p = Solve.periodic(n);
        double period = 1 / 60.0;

        assertThat(p.work().method()).isEqualTo("shooting");
        double mean = (5 * (period / 2 - 0.5e-3) + 5 * 1e-3) / period;
        assertThat(p.volts(n.node("c"), 0).mean()).isCloseTo(mean, within(0.003 * mean));
    }
}
