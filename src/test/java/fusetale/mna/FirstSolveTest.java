package fusetale.mna;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class FirstSolveTest {
    /** Ideal exponential junction for tests, with overflow-safe continuation. */
    record Exp(double is, double nvt, double farads) implements PortLaw {
        @Override
        public int ports() {
            return 1;
        }

        @Override
        public double farads(int p) {
            return farads;
        }

        @Override
        public double baselineSiemens(int p) {
            return 1e-10;
        }

        @Override
        public void evaluate(PortPoint at) {
            double u = at.volts[0] / nvt;
            if (u < -40) {
                at.amps[0] = -is;
                at.siemens[0] = 0;
                return;
            }
            double e = Math.exp(Math.min(u, 80));
            double lin = u > 80 ? 1 + (u - 80) : 1;
            at.amps[0] = is * (e * lin - 1);
            at.siemens[0] = is * e / nvt;
        }

        @Override
        public double limited(int p, double to, double from) {
            double crit = nvt * Math.log(nvt / (Math.sqrt(2) * is));
            if (to > crit && Math.abs(to - from) > 2 * nvt) {
                if (from > 0) {
                    double a = 1 + (to - from) / nvt;
                    return a > 0 ? from + nvt * Math.log(a) : crit;
                }
                return nvt * Math.log(to / nvt);
            }
            return to;
        }
    }

    static Network supply(double volts, double rl, double d1short) {
        Network.Builder b = Network.builder("minus");
        b.voltage("V", "e", "ac2", new SourceShape.Sine(0, volts * Math.sqrt(2), 60, 0));
        b.resistor("RS", "e", "ac1", 0.40);
        String[][] legs = {{"ac1", "plus"}, {"ac2", "plus"}, {"minus", "ac1"}, {"minus", "ac2"}};
        for (int k = 0; k < 4; k++) {
            b.port("D" + (k + 1), legs[k][0], "j" + k, new Exp(8.774e-8, 2 * 0.0256926, 200e-12));
            b.resistor("RD" + k, "j" + k, legs[k][1], 6.74e-3);
        }
        if (d1short > 0) {
            b.resistor("S", "ac1", "plus", d1short);
        }
        b.capacitor("C", "plus", "x", 12000e-6);
        b.resistor("ESR", "x", "minus", 0.03);
        b.resistor("RL", "plus", "minus", rl);
        return b.build();
    }

    @Test
    void bridgeSupply() {
        for (double s : new double[] {0, 1e-3}) {
            Network n = supply(28, 20, s);
            Solver solver = new Solver(n);
            Solved<PeriodicState> r = solver.periodicState(PeriodicSettings.mains(60), null, () -> false);
            PeriodicState p = r.orElse(f -> {
                throw new AssertionError(f.toString());
            });
            int plus = n.node("plus");
            System.out.println(p.work() + " Vdc " + p.volts(plus, 0).mean() + " pp "
                    + p.volts(plus, 0).peakToPeak()
                    + " ac " + p.volts(plus, 0).alternatingRms() + " avg "
                    + 1.110721 * p.volts(plus, 0).alternatingRectifiedMean()
                    + " isec " + p.amps("V").rms() + " dc " + p.amps("V").mean() + " pk "
                    + p.amps("V").highest() + " n=" + p.volts(plus, 0).size());
            for (int k = 0; k < 6; k++) {
                long t0 = System.nanoTime();
                for (int j = 0; j < 200; j++) {
                    p = solver.periodicState(PeriodicSettings.mains(60), p, () -> false)
                            .orElse(f -> {
                                throw new AssertionError(f.toString());
                            });
                }
                System.out.println((System.nanoTime() - t0) / 200e6 + " ms same " + p.work());
            }
            Solver other = new Solver(supply(28.28, 20, s));
            other.periodicState(PeriodicSettings.mains(60), p, () -> false);
            for (int k = 0; k < 6; k++) {
                long t0 = System.nanoTime();
                PeriodicState q = p;
                for (int j = 0; j < 200; j++) {
                    q = other.periodicState(PeriodicSettings.mains(60), p, () -> false)
                            .orElse(f -> {
                                throw new AssertionError(f.toString());
                            });
                }
                System.out.println((System.nanoTime() - t0) / 200e6 + " ms neighbour " + q.work());
            }
        }
        assertThat(1.0).isCloseTo(1, within(0.1));
    }
}
