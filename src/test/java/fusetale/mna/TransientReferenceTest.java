package fusetale.mna;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fusetale.signal.Waveform;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Runs from rest against closed forms; the source stands beside each. */
class TransientReferenceTest {
    private static final SourceShape TEN_VOLTS = new SourceShape.Constant(10);

    private static double at(Waveform w, double seconds) {
        int k = 0;
        while (k + 1 < w.size() && w.seconds(k + 1) < seconds) {
            k++;
        }
        if (k + 1 == w.size()) {
            return w.value(k);
        }
        double part = (seconds - w.seconds(k)) / (w.seconds(k + 1) - w.seconds(k));
        return w.value(k) + part * (w.value(k + 1) - w.value(k));
    }

    private static PeriodicSettings fine() {
        return PeriodicSettings.mains(60).withAccuracy(1e-7);
    }

    // Exact: 1 − exp(−t/τ).
    @ParameterizedTest
    @CsvSource({"1, 0.632121", "2, 0.864665", "3, 0.950213", "5, 0.993262"})
    void capacitorChargesThroughAResistor(double taus, double expected) {
        Network n = Network.builder("0")
                .voltage("E", "a", "0", new SourceShape.Constant(1))
                .resistor("R", "a", "b", 1000)
                .capacitor("C", "b", "0", 1e-6)
                .build();
        Run run = Solve.run(n, fine(), 6e-3);
        assertThat(at(run.volts(n.node("b"), 0), taus * 1e-3)).isCloseTo(expected, within(2e-5));
    }

    // Exact: the current of a coil behind a resistance rises as 1 − exp(−t·R/L).
    @ParameterizedTest
    @CsvSource({"1, 0.632121", "3, 0.950213"})
    void coilCurrentRises(double taus, double expected) {
        Network n = Network.builder("0")
                .voltage("E", "a", "0", TEN_VOLTS)
                .resistor("R", "a", "b", 10)
                .inductor("L", "b", "0", 20e-3)
                .build();
        Run run = Solve.run(n, fine(), 12e-3);
        assertThat(at(run.amps("L"), taus * 2e-3)).isCloseTo(expected, within(2e-5));
    }

    // Exact, from the damped oscillation: 10 Ω, 10 mH, 10 μF, 10 V: vC(1 ms) 16.045658 V, largest 16.046791 V, i max
    // 0.252234 A.
    @Test
    void seriesResonantCircuitOvershoots() {
        Network n = Network.builder("0")
                .voltage("E", "a", "0", TEN_VOLTS)
                .resistor("R", "a", "b", 10)
                .inductor("L", "b", "c", 10e-3)
                .capacitor("C", "c", "0", 10e-6)
                .build();
        Run run = Solve.run(n, fine(), 2e-3);
        assertThat(at(run.volts(n.node("c"), 0), 1e-3)).isCloseTo(16.045658, within(1e-3));
        assertThat(run.volts(n.node("c"), 0).highest()).isCloseTo(16.046791, within(1e-3));
        assertThat(run.amps("L").highest()).isCloseTo(0.252234, within(3e-5));
    }

    // Exact: i(t) = (I0 + VD/R)·exp(−tR/L) − VD/R until t0 = (L/R)·ln(1 + I0·R/VD): 7 A, 4 Ω, 20 mH, 0.9 V clamp:
    // t0 17.3460 ms, i(5 ms) 2.432929 A. The clamp is a source in series with a nearly ideal junction; the source is
    // lower
    // by the 15 mV that junction drops at amperes (1 mV·ln(i/1 μA): 13.8 mV at 1 A, 15.8 mV at 7 A).
    @Test
    void coilWithFlybackDiodeDiesOut() {
        double switchOff = 0.1;
        Network n = Network.builder("0")
                .current(
                        "I",
                        "a",
                        "0",
                        new SourceShape.Corners(
                                List.of(0.0, 1e-3, switchOff, switchOff + 2e-6), List.of(0.0, -7.0, -7.0, 0.0)))
                .resistor("R", "a", "b", 4)
                .inductor("L", "b", "0", 20e-3)
                .port("D", "0", "k", PlainJunction.nearlyIdeal())
                .voltage("VD", "k", "a", new SourceShape.Constant(0.9 - 0.0150))
                .build();
        Run run = Solve.run(n, fine(), switchOff + 25e-3);
        Waveform i = run.amps("L");
        assertThat(at(i, switchOff)).isCloseTo(7, within(1e-3));
        assertThat(at(i, switchOff + 5e-3)).isCloseTo(2.432929, within(2e-3));
        double end = 0;
        for (int k = 1; k < i.size(); k++) {
            if (i.value(k - 1) > 1e-3 && i.value(k) <= 1e-3) {
                double part = (i.value(k - 1) - 1e-3) / (i.value(k - 1) - i.value(k));
                end = i.seconds(k - 1) + part * (i.seconds(k) - i.seconds(k - 1));
            }
        }
        assertThat(end - switchOff).isCloseTo(17.3460e-3, within(0.1e-3));
    }

    // Definition of order 2: the error of a sine through RC falls by four when the step halves. The accuracy asked for
    // never bites, so every step is the longest one.
    @ParameterizedTest
    @ValueSource(doubles = {1e-3, 4e-3})
    void errorFallsWithTheSquareOfTheStep(double tau) {
        double coarse = rcError(tau, 128);
        double half = rcError(tau, 256);
        assertThat(coarse / half).isBetween(3.5, 4.6);
    }

    private static double rcError(double tau, int steps) {
        double omega = 2 * Math.PI * 60;
        Network n = Network.builder("0")
                .voltage("E", "a", "0", new SourceShape.Sine(0, 1, 60, 0))
                .resistor("R", "a", "b", tau / 1e-6)
                .capacitor("C", "b", "0", 1e-6)
                .build();
        PeriodicSettings loose = new PeriodicSettings(1.0 / 60, 1, 1e-12, 40, 10, steps);
        PeriodicState p = Solve.found(new Solver(n).periodicState(loose, null, () -> false));
        Waveform v = p.volts(n.node("b"), 0);
        double size = 1 / Math.sqrt(1 + omega * omega * tau * tau);
        double lag = Math.atan(omega * tau);
        double most = 0;
        for (int k = 1; k < v.size(); k += 2) {
            most = Math.max(most, Math.abs(v.value(k) - size * Math.sin(omega * v.seconds(k) - lag)));
        }
        return most;
    }
}
