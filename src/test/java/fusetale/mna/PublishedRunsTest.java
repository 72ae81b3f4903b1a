package fusetale.mna;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.signal.Waveform;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Runs from rest whose whole course closes in a formula: every end of a step is compared. Bound: a ten-thousandth of the
 * largest value, steps a hundredth as wrong as usual.
 */
class PublishedRunsTest {
    private static final double BOUND = 1e-4;

    private static Run run(Network n, double seconds) {
        return Solve.run(n, PeriodicSettings.mains(60).withAccuracy(1e-6), seconds);
    }

    private static void assertFollows(Waveform wave, double from, DoubleUnaryOperator formula) {
        double most = 0;
        double size = 0;
        int compared = 0;
        for (int k = 1; k < wave.size(); k += 2) {
            if (wave.seconds(k) >= from) {
                double exact = formula.applyAsDouble(wave.seconds(k) - from);
                most = Math.max(most, Math.abs(wave.value(k) - exact));
                size = Math.max(size, Math.abs(exact));
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(10);
        assertThat(most / size).isLessThan(BOUND);
    }

    private static Network seriesCircuit(double ohms) {
        return Network.builder("0")
                .voltage("E", "a", "0", new SourceShape.Constant(10))
                .resistor("R", "a", "b", ohms)
                .inductor("L", "b", "c", 10e-3)
                .capacitor("C", "c", "0", 10e-6)
                .build();
    }

    /** R = 2·√(L/C): v = V·(1 − (1 + αt)·exp(−αt)), α = R/2L (Nilsson and Riedel, Electric Circuits, ch. 8). */
    @Test
    void criticallyDampedCircuitCreepsUp() {
        double ohms = 2 * Math.sqrt(10e-3 / 10e-6);
        double alpha = ohms / (2 * 10e-3);
        Network n = seriesCircuit(ohms);

        assertFollows(run(n, 3e-3).volts(n.node("c"), 0), 0, t -> 10 * (1 - (1 + alpha * t) * Math.exp(-alpha * t)));
    }

    /** Beyond that two exponentials: v = V·(1 + (s2·exp(s1·t) − s1·exp(s2·t))/(s1 − s2)) (ibid.). */
    @Test
    void overdampedCircuitFollowsTwoExponentials() {
        double alpha = 300 / (2 * 10e-3);
        double root = Math.sqrt(alpha * alpha - 1 / (10e-3 * 10e-6));
        double fast = -alpha - root;
        double slow = -alpha + root;
        Network n = seriesCircuit(300);

        assertFollows(
                run(n, 10e-3).volts(n.node("c"), 0),
                0,
                t -> 10 * (1 + (fast * Math.exp(slow * t) - slow * Math.exp(fast * t)) / (slow - fast)));
    }

    /** Below it a damped sine: v = V·(1 − exp(−αt)·(cos ωt + α/ω·sin ωt)) (ibid.). */
    @Test
    void underdampedCircuitRings() {
        double alpha = 10 / (2 * 10e-3);
        double omega = Math.sqrt(1 / (10e-3 * 10e-6) - alpha * alpha);
        Network n = seriesCircuit(10);

        assertFollows(
                run(n, 10e-3).volts(n.node("c"), 0),
                0,
                t -> 10 * (1 - Math.exp(-alpha * t) * (Math.cos(omega * t) + alpha / omega * Math.sin(omega * t))));
    }

    /** A timer's capacitor passes two thirds of its supply after RC·ln 3, "1.1 RC" (Horowitz and Hill, 2nd ed., §5.14). */
    @Test
    void timerRunsForElevenTenthsOfRc() {
        Network n = Network.builder("0")
                .voltage("E", "a", "0", new SourceShape.Constant(9))
                .resistor("R", "a", "b", 100e3)
                .capacitor("C", "b", "0", 1e-6)
                .build();
        Waveform v = run(n, 0.2).volts(n.node("b"), 0);
        double crossed = 0;
        for (int k = 3; k < v.size(); k += 2) {
            if (v.value(k - 2) < 6 && v.value(k) >= 6) {
                double part = (6 - v.value(k - 2)) / (v.value(k) - v.value(k - 2));
                crossed = v.seconds(k - 2) + part * (v.seconds(k) - v.seconds(k - 2));
            }
        }

        assertThat(crossed / 0.1).isBetween(Math.log(3) - 2e-4, Math.log(3) + 2e-4);
    }

    /**
     * A charge laid on C1 shares itself with C2 through R: v1 = Q/(C1 + C2)·(1 + C2/C1·exp(−t/τ)), τ = R·C1·C2/(C1 + C2),
     * from conservation of charge. The charge comes as 1 A for 1 μs, a ten-thousandth of τ, τ being 10 ms.
     */
    @Test
    void chargeSharesItself() {
        double one = 1e-6;
        double two = 3e-6;
        double tau = 10e-3;
        double ohms = tau * (one + two) / (one * two);
        double grain = 1.0 / 60 / Reductions.GRAINS;
        // corners on the grid of steps, so that the charge is exact
        SourceShape pulse =
                new SourceShape.Corners(List.of(0.0, grain, 2 * grain, 3 * grain), List.of(0.0, 1.0, 1.0, 0.0));
        double charge = 2 * grain;
        Network n = Network.builder("0")
                .current("Q", "0", "a", pulse)
                .capacitor("C1", "a", "0", one)
                .resistor("R", "a", "b", ohms)
                .capacitor("C2", "b", "0", two)
                .build();
        Run run = run(n, 0.1);
        double middle = 1.5 * grain;

        assertFollows(
                run.volts(n.node("a"), 0),
                3 * grain,
                t -> charge / (one + two) * (1 + two / one * Math.exp(-(t + middle) / tau)));
        assertFollows(
                run.volts(n.node("b"), 0), 3 * grain, t -> charge / (one + two) * (1 - Math.exp(-(t + middle) / tau)));
    }

    /**
     * A capacitor empties itself through a diode: with w = 1 − exp(−v/nVT), C·dv/dt = −IS·(exp(v/nVT) − 1) becomes
     * w = w0·exp(−t·IS/(C·nVT)); v0 = nVT·ln(1 + I/IS) is left by a current that ends (open-circuit voltage decay of a
     * junction with constant capacitance, exact).
     */
    @Test
    void capacitorEmptiesThroughADiode() {
        double is = 1e-6;
        double nvt = 0.05;
        double farads = 10e-6;
        double off = 0.1;
        double edge = 1.0 / 60 / Reductions.GRAINS;
        double grainOff = Math.rint(off / edge) * edge;
        Network n = Network.builder("0")
                .current(
                        "I",
                        "0",
                        "a",
                        new SourceShape.Corners(List.of(0.0, grainOff, grainOff + edge), List.of(10e-3, 10e-3, 0.0)))
                .capacitor("C", "a", "0", farads)
                .port("D", "a", "0", new PlainJunction(is, nvt, 0))
                .build();
        double v0 = nvt * Math.log1p(10e-3 / is);
        double w0 = -Math.expm1(-v0 / nvt);

        assertFollows(
                run(n, grainOff + 0.3).volts(n.node("a"), 0),
                grainOff + edge,
                t -> -nvt * Math.log1p(-w0 * Math.exp(-(t + edge / 2) * is / (farads * nvt))));
    }

    /** A coil on a steady voltage behind nothing ramps as V·t/L, a capacitor on a steady current as I·t/C: exact in any step. */
    @ParameterizedTest
    @ValueSource(doubles = {1e-3, 50e-3})
    void rampsAreStraight(double seconds) {
        Network n = Network.builder("0")
                .voltage("E", "a", "0", new SourceShape.Constant(12))
                .inductor("L", "a", "0", 3)
                .current("I", "0", "b", new SourceShape.Constant(2e-3))
                .capacitor("C", "b", "0", 47e-6)
                .build();
        Run run = run(n, seconds);

        assertFollows(run.amps("L"), 0, t -> 4 * t);
        assertFollows(run.volts(n.node("b"), 0), 0, t -> 2e-3 / 47e-6 * t);
    }
}
