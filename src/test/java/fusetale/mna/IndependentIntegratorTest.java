package fusetale.mna;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fusetale.signal.Waveform;
import java.util.List;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;

/**
 * The judge from outside: state equations derived by hand and integrated by Hipparchus ODE (Dormand-Prince 8(5,3)), beside
 * the same circuit in this package.
 */
class IndependentIntegratorTest {
    private static final double VT = 0.025693;

    /**
     * A bridge with a capacitor: e = Vp·sin ωt behind R, four equal junctions, C beside RL; one state v. By symmetry the two
     * legs that conduct share the voltage w between the a.c. pins less v: each sees (w − v)/2, the other two (−w − v)/2.
     * Hence the winding's current i = 2·IS·exp(−v/(2nVt))·sinh(w/(2nVt)), the current into C ∥ RL
     * sqrt(i² + (2·IS·exp(−v/(2nVt)))²) − 2·IS, and e = R·i + w(i), solved for i by bisection at every call.
     */
    @Test
    void bridgeWithCapacitorAgreesOverTenCycles() {
        double peak = 28 * Math.sqrt(2);
        double r = 0.4;
        double farads = 4700e-6;
        double load = 20;
        double is = 1e-6;
        double nvt = 2 * VT;
        OrdinaryDifferentialEquation equation = new OrdinaryDifferentialEquation() {
            @Override
            public int getDimension() {
                return 1;
            }

            @Override
            public double[] computeDerivatives(double t, double[] y) {
                double e = peak * Math.sin(2 * Math.PI * 60 * t);
                double leak = 2 * is * Math.exp(-y[0] / (2 * nvt));
                double low = -200;
                double high = 200;
                for (int k = 0; k < 70; k++) {
                    double i = (low + high) / 2;
                    if (r * i + 2 * nvt * arsinh(i / leak) < e) {
                        low = i;
                    } else {
                        high = i;
                    }
                }
                double into = Math.hypot(low, leak) - 2 * is;
                return new double[] {(into - y[0] / load) / farads};
            }
        };
        DormandPrince853Integrator integrator = new DormandPrince853Integrator(1e-12, 1e-4, 1e-8, 1e-8);
        double[] y = {0};
        double mean = 0;
        double piece = 1.0 / 60 / 512;
        for (int k = 0; k < 10 * 512; k++) {
            double before = y[0];
            y = integrator
                    .integrate(equation, new ODEState(k * piece, y), (k + 1) * piece)
                    .getPrimaryState();
            mean += k >= 9 * 512 ? (before + y[0]) / 1024 : 0;
        }
        Network n = bridge(peak, r, farads, load, new PlainJunction(is, nvt, 1e-11));
        Run run = Solve.run(n, PeriodicSettings.mains(60).withAccuracy(1e-6), 10.0 / 60);
        Waveform v = run.volts(n.node("plus"), n.node("minus"));
        double sum = 0;
        double weight = 0;
        for (int k = 0; k < v.size(); k++) {
            if (v.seconds(k) > 9.0 / 60) {
                sum += v.value(k) * v.weight(k);
                weight += v.weight(k);
            }
        }
        assertThat(v.value(v.size() - 1)).isCloseTo(y[0], within(5e-4 * y[0]));
        assertThat(sum / weight).isCloseTo(mean, within(5e-4 * mean));
    }

    /** Without squaring: the arguments here reach 1e165. */
    private static double arsinh(double a) {
        return Math.signum(a) * Math.log(Math.abs(a) + Math.hypot(a, 1));
    }

    private static Network bridge(double peak, double r, double farads, double load, PortLaw leg) {
        return Network.builder("minus")
                .voltage("V", "e", "ac2", new SourceShape.Sine(0, peak, 60, 0))
                .resistor("R", "e", "ac1", r)
                .port("D1", "ac1", "plus", leg)
                .port("D2", "ac2", "plus", leg)
                .port("D3", "minus", "ac1", leg)
                .port("D4", "minus", "ac2", leg)
                .capacitor("C", "plus", "minus", farads)
                .resistor("RL", "plus", "minus", load)
                .build();
    }

    /**
     * A coil with a flyback diode, fed through a resistance from a source that falls to zero: one state i. With the node
     * voltage u between source resistance, coil and diode: L·di/dt = u − Rc·i, and current balance at the node
     * (E(t) − u)/Rs + ID(−u) = i with ID(v) = IS·(exp(v/nVt) − 1), solved for u by bisection at every call.
     */
    @Test
    void coilWithFlybackDiodeAgreesAfterTheSwitchOpens() {
        double rs = 50;
        double rc = 4;
        double henries = 20e-3;
        double is = 1e-8;
        double nvt = 2 * VT;
        double off = 20e-3;
        SourceShape.Corners source = new SourceShape.Corners(List.of(0.0, off, off + 1e-3), List.of(48.0, 48.0, 0.0));
        OrdinaryDifferentialEquation equation = new OrdinaryDifferentialEquation() {
            @Override
            public int getDimension() {
                return 1;
            }

            @Override
            public double[] computeDerivatives(double t, double[] y) {
                double low = -2;
                double high = 100;
                for (int k = 0; k < 80; k++) {
                    double u = (low + high) / 2;
                    double balance = (source.at(t) - u) / rs + is * Math.expm1(-u / nvt) - y[0];
                    if (balance > 0) {
                        low = u;
                    } else {
                        high = u;
                    }
                }
                return new double[] {(low - rc * y[0]) / henries};
            }
        };
        DormandPrince853Integrator integrator = new DormandPrince853Integrator(1e-12, 1e-4, 1e-10, 1e-10);
        double[] atEnd = integrator
                .integrate(equation, new ODEState(0, new double[] {0}), off)
                .getPrimaryState();
        double[] later = integrator
                .integrate(equation, new ODEState(off, atEnd), off + 6e-3)
                .getPrimaryState();
        Network n = Network.builder("0")
                .voltage("E", "s", "0", source)
                .resistor("RS", "s", "u", rs)
                .resistor("RC", "u", "c", rc)
                .inductor("L", "c", "0", henries)
                .port("D", "0", "u", new PlainJunction(is, nvt, 0))
                .build();
        Run run = Solve.run(n, PeriodicSettings.mains(60).withAccuracy(1e-7), off + 6e-3);
        Waveform i = run.amps("L");
        assertThat(i.value(i.size() - 1)).isCloseTo(later[0], within(2e-4 * later[0]));
        assertThat(later[0]).isGreaterThan(0.05);
    }
}
