package fusetale.mna;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.RealMatrix;

/**
 * What double precision leaves open of the voltages and currents that are told of a run. Each is a sum Σ z_j·u_j over the inputs,
 * with z_j solved from A·z_j = b_j, and off by no more than |A⁻¹|·(|b_j − A·z_j| + γ·(|A|·|z_j| + |b_j|)), γ = (m + 1)·2⁻⁵³ for m
 * equations (N. J. Higham, Accuracy and Stability of Numerical Algorithms, 2nd ed., SIAM 2002, §7.4). Where a node hangs on
 * picofarads alone, currents that cancel make it move by megavolts each. And a junction's current is told to 2⁻⁵³ of the
 * exponentials it is the difference of, each some 26 mV times its slope: through a transistor that is saturated, with nothing at its
 * collector, ten amperes go either way, and what is left of them sees a teraohm.
 */
final class Rounding {
    private static final double UNIT = 0x1p-53;
    /** kT/q at 300 K [V]. */
    private static final double THERMAL_VOLTS = 25.85e-3;

    private final Network network;
    /** By node and sample [V]. */
    private final double[][] volts;
    /** Of all elements at a node together, by node and sample [A]. */
    private final double[][] amps;

    private final Map<Reduction, Equations> equations = new HashMap<>();
    private double residual;

    private Rounding(Network network, int samples) {
        this.network = network;
        this.volts = new double[network.nodes().size()][samples];
        this.amps = new double[network.nodes().size()][samples];
    }

    /** Of a run. */
    static Rounding of(Network network, SampledRun run) {
        Recorder.Tape tape = run.tape();
        Rounding all = new Rounding(network, tape.size());
        double[] input = new double[tape.width];
        for (int k = 0; k < tape.size(); k++) {
            System.arraycopy(tape.block(k), tape.place(k), input, 0, tape.width);
            all.sample(k, run.reduction(tape.levels[k]), input, tape.seconds[k]);
        }
        return all;
    }

    /** Of a state at rest. */
    static Rounding of(Network network, RestPoint rest) {
        Rounding all = new Rounding(network, 1);
        all.sample(0, rest.reduction(), rest.input(), 0);
        return all;
    }

    private void sample(int k, Reduction reduction, double[] input, double seconds) {
        Layout layout = reduction.layout;
        Equations solved = equations.computeIfAbsent(reduction, Equations::new);
        double[] open = solved.open(input, exponentials(layout, reduction.unknowns(input), seconds));
        residual = Math.max(residual, solved.residual);
        for (int n = 1; n < volts.length; n++) {
            volts[n][k] = open[n - 1];
        }
        for (Element e : network.elements()) {
            boolean several = e instanceof Element.CoupledInductors;
            for (int p = 0; p < e.ends().size(); p++) {
                Element.Ends ends = e.ends().get(p);
                Integer branch = layout.branches.get(several ? e.name() + "." + p : e.name());
                double of = branch != null
                        ? open[branch]
                        : siemens(e, p, reduction.stageSeconds) * (volts[ends.one()][k] + volts[ends.two()][k]);
                amps[ends.one()][k] += of;
                amps[ends.two()][k] += of;
            }
        }
    }

    /** By what a current is told from the voltage across [S]; 0 where it is told otherwise. */
    private static double siemens(Element e, int port, double stageSeconds) {
        if (e instanceof Element.Resistor r) {
            return 1 / r.ohms();
        }
        if (e instanceof Element.Capacitor c) {
            return c.farads() / stageSeconds;
        }
        return e instanceof Element.Ported p
                ? p.law().baselineSiemens(port) + p.law().farads(port) / stageSeconds
                : 0;
    }

    /**
     * By port, what its current is the difference of [A], each as often as its argument is large, by which the rounding of that grows
     * (the condition of an exponential: Higham, §1.6); 0 of laws with states of their own.
     */
    private static double[] exponentials(Layout layout, double[] told, double seconds) {
        double[] amps = new double[layout.ports];
        for (Layout.Device d : layout.devices) {
            int ports = d.law().ports();
            if (d.law().states() > 0) {
                continue;
            }
            PortPoint at = new PortPoint(ports, 0);
            for (int p = 0; p < ports; p++) {
                at.volts[p] = Layout.across(told, layout.portOne[d.firstPort() + p], layout.portTwo[d.firstPort() + p]);
            }
            at.seconds = seconds;
            d.law().evaluate(at);
            for (int k = 0; k < ports * ports; k++) {
                double argument = Math.abs(at.volts[k % ports]) / THERMAL_VOLTS;
                amps[d.firstPort() + k / ports] += THERMAL_VOLTS * Math.abs(at.siemens[k]) * (1 + argument);
            }
        }
        return amps;
    }

    /** The equations behind one reduction, with what is open of their solutions. */
    private static final class Equations {
        private final int size;
        /** |z| and what is open of it, [input][unknown]. */
        private final double[][] answers;

        private final double[][] open;
        /** The largest of what the equations miss by, as a ratio of the largest term of each set. */
        private double residual;

        Equations(Reduction reduction) {
            Layout layout = reduction.layout;
            SparsePattern pattern = layout.pattern();
            double perSecond = 1 / reduction.stageSeconds;
            this.size = pattern.size;
            RealMatrix a = new Array2DRowRealMatrix(size, size);
            double[] values = pattern.values(perSecond);
            for (int c = 0; c < size; c++) {
                for (int e = pattern.columnStart[c]; e < pattern.columnStart[c + 1]; e++) {
                    a.setEntry(pattern.order[pattern.rows[e]], pattern.order[c], values[e]);
                }
            }
            double[][] inverse = inverse(LinearSystem.factor(pattern, perSecond).system());
            int inputs = reduction.inputs;
            this.answers = new double[inputs][];
            this.open = new double[inputs][];
            double[][] right = right(layout, inputs, perSecond);
            double[] unit = new double[inputs];
            for (int j = 0; j < inputs; j++) {
                unit[j] = 1;
                double[] z = reduction.unknowns(unit);
                unit[j] = 0;
                open[j] = times(inverse, missed(a, z, right[j]));
                answers[j] = Arrays.stream(z).map(Math::abs).toArray();
            }
        }

        private double[][] inverse(LinearSystem system) {
            double[][] inverse = new double[size][size];
            for (int c = 0; c < size; c++) {
                double[] column = new double[size];
                column[c] = 1;
                system.solve(column);
                for (int r = 0; r < size; r++) {
                    inverse[r][c] = Math.abs(column[r]);
                }
            }
            return inverse;
        }

        /** Right sides, [input][equation]. */
        private double[][] right(Layout layout, int inputs, double perSecond) {
            double[][] right = new double[inputs][size];
            int sources = layout.sources.size();
            for (int s = 0; s < layout.slowStates; s++) {
                layout.addState(s, perSecond, right[s]);
            }
            for (int s = 0; s < sources; s++) {
                layout.sourceColumn(s, right[layout.states + s]);
            }
            for (int p = 0; p < layout.ports; p++) {
                double[] column = right[layout.states + sources + p];
                layout.portColumn(p, column);
                int state = layout.portState[p];
                if (state >= 0) {
                    // its charge enters where its current does
                    Reduction.axpy(
                            right[state], column, -layout.cells.get(state).farads() * perSecond, size);
                }
            }
            return right;
        }

        private double[] missed(RealMatrix a, double[] z, double[] b) {
            double[] open = a.operate(z);
            double largest = 0;
            double missed = 0;
            for (int r = 0; r < size; r++) {
                double magnitude = Math.abs(b[r]);
                for (int c = 0; c < size; c++) {
                    magnitude += Math.abs(a.getEntry(r, c) * z[c]);
                }
                missed = Math.max(missed, Math.abs(open[r] - b[r]));
                largest = Math.max(largest, magnitude);
                open[r] = Math.abs(open[r] - b[r]) + (size + 1) * UNIT * magnitude;
            }
            residual = Math.max(residual, largest == 0 ? 0 : missed / largest);
            return open;
        }

        private double[] times(double[][] rows, double[] vector) {
            return new Array2DRowRealMatrix(rows, false).operate(vector);
        }

        /** What is open of each unknown. */
        double[] open(double[] input, double[] exponentials) {
            double[] all = new double[size];
            int firstPort = input.length - exponentials.length;
            for (int j = 0; j < input.length; j++) {
                for (int r = 0; r < size; r++) {
                    all[r] += Math.abs(input[j]) * (open[j][r] + input.length * UNIT * answers[j][r]);
                    all[r] += j < firstPort ? 0 : UNIT * exponentials[j - firstPort] * answers[j][r];
                }
            }
            return all;
        }
    }

    /** What the linear equations were solved to, as a ratio of the largest term of each set: 0 were there no rounding. */
    double residual() {
        return residual;
    }

    /** Of the sum of the currents at a node [A]; at the reference, what all others leave open together comes in. */
    double amps(int node, int sample) {
        return node > 0
                ? amps[node][sample]
                : Arrays.stream(amps).mapToDouble(of -> of[sample]).sum();
    }

    /** Most that is open of a voltage [V]. */
    double volts(Element.Ends ends) {
        return most(volts[ends.one()]) + most(volts[ends.two()]);
    }

    /** Most that is open of a current between these nodes [A]. */
    double amps(Element.Ends ends) {
        return Math.max(most(amps[ends.one()]), most(amps[ends.two()]));
    }

    /** Most that is open of any current, times the largest voltage [V] it may be at [W]. */
    double watts(double peakVolts) {
        return peakVolts * Arrays.stream(amps).mapToDouble(Rounding::most).sum();
    }

    private static double most(double[] values) {
        return Arrays.stream(values).max().orElse(0);
    }
}
