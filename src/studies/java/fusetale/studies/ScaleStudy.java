package fusetale.studies;

import fusetale.circuit.Circuit;
import fusetale.mna.Element;
import fusetale.mna.Network;
import fusetale.mna.PeriodicSettings;
import fusetale.mna.PeriodicState;
import fusetale.mna.Solver;
import fusetale.model.Conditions;
import fusetale.model.NetworkBuilder;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * How the time of a periodic solve grows with the size of the machine: a {@link Family} of supplies, warm from their state 1 V
 * away and cold, in milliseconds of the thread's own time, and the exponent of growth, fitted to logarithms over all sizes
 * and over the larger half.
 */
public final class ScaleStudy {
    private static final double MAINS_VOLTS = 120;
    private static final double NEIGHBOUR_VOLTS = 119;
    private static final PeriodicSettings SETTINGS = PeriodicSettings.mains(60);
    private static final int WARMING = 5;
    private static final int ROUNDS = 9;

    private ScaleStudy() {}

    /**
     * A supply, measured.
     *
     * @param rails its size
     * @param warmMilliseconds from a neighbour, everything prepared
     * @param coldMilliseconds from the network alone
     */
    private record Measured(int rails, double warmMilliseconds, double coldMilliseconds) {}

    /**
     * Prints a table for supplies on one transformer and one for supplies on a transformer a rail.
     *
     * @param arguments sizes; {@code 1 2 4 8 16} where none is given
     */
    public static void main(String[] arguments) {
        int[] sizes = arguments.length == 0
                ? new int[] {1, 2, 4, 8, 16}
                : Arrays.stream(arguments).mapToInt(Integer::parseInt).toArray();
        for (boolean own : new boolean[] {false, true}) {
            say("%n%s", own ? "each rail on a transformer of its own" : "all rails on one transformer");
            say(
                    "%6s%10s%8s%8s%8s%8s%8s%12s%12s%14s",
                    "rails", "unknowns", "states", "ports", "steps", "passes", "cold", "solves", "warm ms", "cold ms");
            List<Measured> all = new ArrayList<>();
            for (int rails : sizes) {
                all.add(measured(rails, own));
            }
            exponents("all sizes", all);
            exponents("larger half", all.subList(all.size() / 2, all.size()));
        }
    }

    private static Measured measured(int rails, boolean own) {
        Circuit circuit = Family.supply(rails, own);
        Network network =
                NetworkBuilder.build(circuit, Conditions.mains(MAINS_VOLTS)).network();
        Network neighbour =
                NetworkBuilder.build(circuit, Conditions.mains(NEIGHBOUR_VOLTS)).network();
        PeriodicState near = solve(new Solver(neighbour), null);
        Solver prepared = Solver.near(network, near);
        PeriodicState warm = solve(prepared, near);
        PeriodicState cold = solve(new Solver(network), null);
        double warmMilliseconds = median(() -> solve(prepared, near));
        double coldMilliseconds = median(() -> solve(new Solver(network), null));
        Size size = Size.of(network);
        say(
                "%6d%10d%8d%8d%8d%8d%8d%12d%12.2f%14.1f",
                rails,
                size.unknowns(),
                size.states(),
                size.ports(),
                warm.volts(1, 0).size() / 2,
                warm.work().passes(),
                cold.work().passes(),
                warm.work().solves(),
                warmMilliseconds,
                coldMilliseconds);
        return new Measured(rails, warmMilliseconds, coldMilliseconds);
    }

    /**
     * What the solver has to do with.
     *
     * @param unknowns voltages of nodes and currents of branches
     * @param states capacitors, windings and junctions with a capacitance
     * @param ports of elements with a law of their own
     */
    private record Size(int unknowns, int states, int ports) {
        static Size of(Network network) {
            int unknowns = network.nodes().size() - 1;
            int states = 0;
            int ports = 0;
            for (Element e : network.elements()) {
                if (e instanceof Element.Inductor
                        || e instanceof Element.VoltageSource
                        || e instanceof Element.VoltageByVoltage
                        || e instanceof Element.VoltageByCurrent) {
                    unknowns++;
                }
                states += e instanceof Element.Capacitor || e instanceof Element.Inductor ? 1 : 0;
                if (e instanceof Element.Ported p) {
                    ports += p.law().ports();
                    for (int k = 0; k < p.law().ports(); k++) {
                        states += p.law().farads(k) > 0 ? 1 : 0;
                    }
                }
            }
            return new Size(unknowns, states, ports);
        }
    }

    private static double median(Runnable solve) {
        var threads = ManagementFactory.getThreadMXBean();
        for (int k = 0; k < WARMING; k++) {
            solve.run();
        }
        double[] milliseconds = new double[ROUNDS];
        for (int k = 0; k < ROUNDS; k++) {
            long start = threads.getCurrentThreadCpuTime();
            solve.run();
            milliseconds[k] = (threads.getCurrentThreadCpuTime() - start) * 1e-6;
        }
        Arrays.sort(milliseconds);
        return milliseconds[ROUNDS / 2];
    }

    private static PeriodicState solve(Solver solver, @Nullable PeriodicState near) {
        return solver.periodicState(SETTINGS, near, () -> false).orElse(reason -> {
            throw new IllegalStateException(reason.toString());
        });
    }

    private static void exponents(String what, List<Measured> of) {
        if (of.size() < 2) {
            return;
        }
        double[] rails = of.stream().mapToDouble(Measured::rails).toArray();
        double[] warm = of.stream().mapToDouble(Measured::warmMilliseconds).toArray();
        double[] cold = of.stream().mapToDouble(Measured::coldMilliseconds).toArray();
        say(
                "time grows as rails to the power of %.2f warm, %.2f cold (%s)",
                slope(rails, warm), slope(rails, cold), what);
    }

    /** Slope of the straight line through the logarithms, by least squares. */
    private static double slope(double[] x, double[] y) {
        double meanX = Arrays.stream(x).map(Math::log).average().orElse(0);
        double meanY = Arrays.stream(y).map(Math::log).average().orElse(0);
        double over = 0;
        double under = 0;
        for (int k = 0; k < x.length; k++) {
            over += (Math.log(x[k]) - meanX) * (Math.log(y[k]) - meanY);
            under += (Math.log(x[k]) - meanX) * (Math.log(x[k]) - meanX);
        }
        return over / under;
    }

    private static void say(String format, Object... values) {
        System.out.println(String.format(Locale.ROOT, format, values));
    }
}
