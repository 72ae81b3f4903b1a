package fusetale.mna;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.signal.Waveform;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.assertj.core.api.SoftAssertions;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;

/**
 * The judge from outside over whole waveforms: state equations derived by hand, device equations written here anew, both
 * integrated by Hipparchus ODE (Dormand-Prince 8(5,3)); every state is compared at every second step of the run, from rest.
 * Bound: 2e-4 of the waveform's largest magnitude, at a hundredth of the usual local accuracy; set after a first look at the
 * results, the worst of which was 8e-5.
 */
class IndependentWaveformsTest {
    /** kT/q at 25 °C by the constants of the SI of 2019 [V]. */
    private static final double VT = 1.380649e-23 * 298.15 / 1.602176634e-19;

    private static final double MAINS = 2 * Math.PI * 60;
    private static final double BOUND = 2e-4;

    /** y' = f(t, y), told as a function. */
    private interface Slopes {
        double[] at(double seconds, double[] y);
    }

    /** A state's name and the waveform the solver gives for it. */
    private record State(String name, Waveform wave) {}

    /** Root of a function that rises through zero, by halving the interval seventy times. */
    private static double root(DoubleUnaryOperator rising, double from, double to) {
        double low = from;
        double high = to;
        for (int k = 0; k < 70 && high - low > 1e-14 * Math.abs(high); k++) {
            double middle = (low + high) / 2;
            if (rising.applyAsDouble(middle) < 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    /** i = IS·(exp(v/nVT) − 1), Shockley's equation. */
    private static double diode(double is, double nvt, double v) {
        return is * Math.expm1(Math.min(v / nvt, 200));
    }

    private static void assertFollows(Slopes slopes, List<State> states) {
        int n = states.size();
        OrdinaryDifferentialEquation equation = new OrdinaryDifferentialEquation() {
            @Override
            public int getDimension() {
                return n;
            }

            @Override
            public double[] computeDerivatives(double t, double[] y) {
                return slopes.at(t, y);
            }
        };
        DormandPrince853Integrator integrator = new DormandPrince853Integrator(1e-13, 1e-3, 1e-10, 1e-9);
        Waveform times = states.get(0).wave();
        double[] most = new double[n];
        double[] size = new double[n];
        double[] y = new double[n];
        double at = 0;
        int compared = 0;
        // odd samples stand at the ends of steps
        for (int k = 3; k < times.size(); k += 4) {
            y = integrator
                    .integrate(equation, new ODEState(at, y), times.seconds(k))
                    .getPrimaryState();
            at = times.seconds(k);
            compared++;
            for (int s = 0; s < n; s++) {
                most[s] = Math.max(most[s], Math.abs(states.get(s).wave().value(k) - y[s]));
                size[s] = Math.max(size[s], Math.abs(y[s]));
            }
        }
        assertThat(compared).isGreaterThan(100);
        SoftAssertions softly = new SoftAssertions();
        for (int s = 0; s < n; s++) {
            softly.assertThat(most[s] / size[s]).as(states.get(s).name()).isLessThan(BOUND);
        }
        softly.assertAll();
    }

    private static Run run(Network n, double seconds) {
        return Solve.run(n, PeriodicSettings.mains(60).withAccuracy(1e-6), seconds);
    }

    /**
     * Two windings on one core with leakage, iron loss Rp across the secondary, half-wave diode, C ∥ RL, from switching on
     * at the zero crossing. States i1, i2 (both into their dotted ends) and v:
     *
     * <pre>
     * [L1 M; M L2]·d(i1, i2)/dt = (e − R1·i1, u)        u = R2·iD + d + v
     * iD(d) + u/Rp + i2 = 0  gives d                     C·dv/dt = iD − v/RL
     * </pre>
     */
    @Test
    void transformerWithLeakageFeedsAHalfWaveRectifier() {
        double peak = 120 * Math.sqrt(2);
        double turns = 0.2;
        double magnetising = 4;
        double l1 = magnetising + 20e-3;
        double m = turns * magnetising;
        double l2 = turns * turns * magnetising + 0.5e-3;
        double r1 = 6;
        double r2 = 0.5;
        double rp = 500;
        double farads = 1000e-6;
        double load = 60;
        double is = 1e-8;
        double nvt = 1.8 * VT;
        Network.Builder b = Network.builder("0");
        b.voltage("E", "line", "0", new SourceShape.Sine(0, peak, 60, 0));
        b.resistor("R1", "line", "p", r1);
        b.add(new Element.CoupledInductors(
                "T", List.of(b.ends("p", "0"), b.ends("s", "0")), List.of(List.of(l1, m), List.of(m, l2))));
        b.resistor("RP", "s", "0", rp);
        b.resistor("R2", "s", "a", r2);
        b.port("D", "a", "out", JunctionLaw.of(is, 1.8));
        b.capacitor("C", "out", "0", farads);
        b.resistor("RL", "out", "0", load);
        Network n = b.build();
        Run run = run(n, 5.0 / 60);
        double det = l1 * l2 - m * m;
        assertFollows(
                (t, y) -> {
                    double d = root(
                            x -> {
                                double i = diode(is, nvt, x);
                                return i + (r2 * i + x + y[2]) / rp + y[1];
                            },
                            -300,
                            3);
                    double amps = diode(is, nvt, d);
                    double one = peak * Math.sin(MAINS * t) - r1 * y[0];
                    double two = r2 * amps + d + y[2];
                    return new double[] {
                        (l2 * one - m * two) / det, (l1 * two - m * one) / det, (amps - y[2] / load) / farads
                    };
                },
                List.of(
                        new State("primary current", run.amps("T.0")),
                        new State("secondary current", run.amps("T.1")),
                        new State("reservoir", run.volts(n.node("out"), 0))));
    }

    /**
     * An NPN transistor switches a coil with flyback diode and Rp across it, 24 V. State: the coil's current i. At the
     * collector i + (V − vc)/Rp = IC + ID(vc − V), at the base (vin − vb)/RB = IB, with the equations of Ebers and Moll:
     * IC = IF − IR·(1 + 1/βR), IB = IF/βF + IR/βR, IF = IS·(exp(vb/VT) − 1), IR = IS·(exp((vb − vc)/VT) − 1).
     */
    @Test
    void transistorSwitchesACoil() {
        double supply = 24;
        double henries = 30e-3;
        double rc = 20;
        double rp = 470;
        double rb = 220;
        double is = 1e-13;
        double gain = 120;
        double reverse = 4;
        double isd = 1e-9;
        double nvt = 1.9 * VT;
        SourceShape.Corners in = new SourceShape.Corners(
                List.of(0.0, 1e-3, 1.2e-3, 8e-3, 8.2e-3, 13e-3, 13.2e-3), List.of(0.0, 0.0, 5.0, 5.0, 0.0, 0.0, 5.0));
        double most = Double.POSITIVE_INFINITY;
        Network n = Network.builder("0")
                .voltage("V", "v", "0", new SourceShape.Constant(supply))
                .voltage("IN", "in", "0", in)
                .resistor("RB", "in", "b", rb)
                .ports(
                        "Q",
                        "b",
                        "0",
                        "b",
                        "c",
                        BipolarLaw.of(BipolarLaw.Polarity.NPN, is, gain, reverse, most, 0, most))
                .resistor("RC", "v", "x", rc)
                .inductor("L", "x", "c", henries)
                .resistor("RP", "v", "c", rp)
                .port("D", "c", "v", JunctionLaw.of(isd, 1.9))
                .build();
        Run run = run(n, 20e-3);
        assertFollows(
                (t, y) -> {
                    DoubleUnaryOperator collector = vb -> root(
                            vc -> {
                                double back = diode(is, VT, vb - vc);
                                double ic = diode(is, VT, vb) - back * (1 + 1 / reverse);
                                return ic + diode(isd, nvt, vc - supply) - y[0] - (supply - vc) / rp;
                            },
                            -3,
                            supply + 3);
                    double base = root(
                            vb -> {
                                double vc = collector.applyAsDouble(vb);
                                double ib = diode(is, VT, vb) / gain + diode(is, VT, vb - vc) / reverse;
                                return ib - (in.at(t) - vb) / rb;
                            },
                            -1,
                            1.2);
                    return new double[] {(supply - rc * y[0] - collector.applyAsDouble(base)) / henries};
                },
                List.of(new State("coil", run.amps("L"))));
    }

    /**
     * A zener supply: 24 V r.m.s. through a diode and Rs into C1, through R into a zener of 12 V at 20 mA with 10 ohm, C2
     * and a load beside it. States v1, v2: C1·dv1/dt = iD − (v1 − v2)/R, C2·dv2/dt = (v1 − v2)/R − iZ(v2) − v2/RL, with
     * e = Rs·iD + d + v1 and, over the knee width s = 10 ohm·20 mA/25, iZ = (s/r)·ln(1 + exp((v2 − v0)/s)) less Shockley's
     * forward current, v0 from 20 mA at 12 V.
     */
    @Test
    void zenerSupplyTakesItsRipple() {
        double peak = 24 * Math.sqrt(2);
        double rs = 2;
        double c1 = 220e-6;
        double r = 330;
        double c2 = 10e-6;
        double load = 820;
        double is = 1e-9;
        double nvt = 1.7 * VT;
        double ohms = 10;
        double knee = ohms * 20e-3 / 25;
        double v0 = 12 - knee * Math.log(Math.expm1(20e-3 * ohms / knee));
        Network n = Network.builder("0")
                .voltage("E", "e", "0", new SourceShape.Sine(0, peak, 60, 0))
                .resistor("RS", "e", "a", rs)
                .port("D", "a", "raw", JunctionLaw.of(is, 1.7))
                .capacitor("C1", "raw", "0", c1)
                .resistor("R", "raw", "out", r)
                .port("Z", "0", "out", JunctionLaw.of(1e-14, 1).withBreakdown(12, 20e-3, ohms))
                .capacitor("C2", "out", "0", c2)
                .resistor("RL", "out", "0", load)
                .build();
        Run run = run(n, 6.0 / 60);
        assertFollows(
                (t, y) -> {
                    double e = peak * Math.sin(MAINS * t);
                    double d = root(x -> rs * diode(is, nvt, x) + x + y[0] - e, -100, 3);
                    double zener = knee / ohms * Math.log1p(Math.exp((y[1] - v0) / knee)) - diode(1e-14, VT, -y[1]);
                    double through = (y[0] - y[1]) / r;
                    return new double[] {(diode(is, nvt, d) - through) / c1, (through - zener - y[1] / load) / c2};
                },
                List.of(
                        new State("reservoir", run.volts(n.node("raw"), 0)),
                        new State("output", run.volts(n.node("out"), 0))));
    }

    /** The equations of the two other circuits stand in {@link IndependentIntegratorTest}; here their whole waveforms. */
    @Test
    void bridgeWithCapacitorOverItsWholeCourse() {
        double peak = 28 * Math.sqrt(2);
        double r = 0.4;
        double farads = 4700e-6;
        double load = 20;
        double is = 1e-6;
        double nvt = 2 * VT;
        JunctionLaw leg = JunctionLaw.of(is, 2).withLinear(1e-11, 0);
        Network n = Network.builder("minus")
                .voltage("V", "e", "ac2", new SourceShape.Sine(0, peak, 60, 0))
                .resistor("R", "e", "ac1", r)
                .port("D1", "ac1", "plus", leg)
                .port("D2", "ac2", "plus", leg)
                .port("D3", "minus", "ac1", leg)
                .port("D4", "minus", "ac2", leg)
                .capacitor("C", "plus", "minus", farads)
                .resistor("RL", "plus", "minus", load)
                .build();
        Run run = run(n, 5.0 / 60);
        assertFollows(
                (t, y) -> {
                    double leak = 2 * is * Math.exp(-y[0] / (2 * nvt));
                    double e = peak * Math.sin(MAINS * t);
                    double i = root(
                            x -> {
                                double a = Math.abs(x) / leak;
                                return r * x + 2 * nvt * Math.signum(x) * Math.log(a + Math.hypot(a, 1)) - e;
                            },
                            -200,
                            200);
                    return new double[] {(Math.hypot(i, leak) - 2 * is - y[0] / load) / farads};
                },
                List.of(new State("reservoir", run.volts(n.node("plus"), 0))));
    }

    @Test
    void coilWithFlybackDiodeOverItsWholeCourse() {
        double rs = 50;
        double rc = 4;
        double henries = 20e-3;
        double is = 1e-8;
        double nvt = 2 * VT;
        double off = 20e-3;
        SourceShape.Corners source = new SourceShape.Corners(List.of(0.0, off, off + 1e-3), List.of(48.0, 48.0, 0.0));
        Network n = Network.builder("0")
                .voltage("E", "s", "0", source)
                .resistor("RS", "s", "u", rs)
                .resistor("RC", "u", "c", rc)
                .inductor("L", "c", "0", henries)
                .port("D", "0", "u", JunctionLaw.of(is, 2))
                .build();
        Run run = run(n, 45e-3);
        assertFollows(
                (t, y) -> {
                    double u = root(x -> y[0] - (source.at(t) - x) / rs - diode(is, nvt, -x), -2, 100);
                    return new double[] {(u - rc * y[0]) / henries};
                },
                List.of(new State("coil", run.amps("L"))));
    }
}
