package fusetale.mna;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A network's linear part at one step size, solved once for a unit of every input, so that a step costs small dense
 * products. Inputs, in this order: predicted states, independent sources, port currents. Outputs, in this order: states,
 * then voltages of the ports that have no state of their own.
 *
 * <p>With A = G + C/(γh), every stage of the implicit step obeys A·z = X·x* + U·u + P·i, hence z = A⁻¹[X U P]·(x*, u, i):
 * this class holds A⁻¹[X U P] and the rows of it that are outputs.
 */
final class Reduction {
    /** Least that may be left of 1 by a rank-one update, which then keeps ten digits. */
    private static final double LEAST_LEFT = 1e-6;
    /** A change that lowers a resistance by more than this leaves the rounding of the large voltages that were there. */
    private static final double MOST_LEFT = 1e3;

    final Layout layout;
    final int inputs;
    final int outputs;
    /** Which of the few reductions of its layout this is, for what callers keep beside each: below {@link Reductions#SLOTS}. */
    final int slot;
    /** γh [s]; infinite at rest. */
    final double stageSeconds;
    /** {@code columns[input][output]}: contiguous by output, so that a step is a row of axpys the compiler vectorises. */
    final double[][] columns;
    /** Output index of each port's voltage. */
    final int[] portRow;
    /** What each port's voltage rises by per ampere of its own current [ohm]: 0 or less, the current flowing out. */
    final double[] ownOhms;

    private final @Nullable Blocks blocks;
    private @Nullable Felt felt;
    private final UnitAnswers full;

    private final int firstPortInput;
    private final LinearSystem system;
    private final @Nullable Laid laid;

    private Reduction(
            Layout layout,
            int slot,
            double stageSeconds,
            LinearSystem system,
            UnitAnswers full,
            double[][] columns,
            @Nullable Laid laid) {
        this.layout = layout;
        this.slot = slot;
        this.stageSeconds = stageSeconds;
        this.system = system;
        this.full = full;
        this.laid = laid;
        this.inputs = columns.length;
        this.portRow = layout.portRow;
        this.outputs = layout.outputs;
        this.columns = columns;
        this.ownOhms = new double[layout.ports];
        this.firstPortInput = layout.states + layout.sources.size();
        this.blocks = Blocks.of(columns, outputs);
        for (int p = 0; p < layout.ports; p++) {
            ownOhms[p] = columns[firstPortInput + p][portRow[p]];
        }
    }

    /** Adds to {@code out} what the first {@code count} inputs do. Modified. */
    void add(double[] input, int count, double[] out) {
        int j = 0;
        if (blocks != null) {
            for (; j < count; j++) {
                if (input[j] != 0) {
                    blocks.axpy(out, columns[j], input[j], j);
                }
            }
        }
        addAll(out, columns, input, j, count, outputs);
    }

    /**
     * Adds columns {@code from} to {@code end}, each times its input, over the first {@code n}; four at a time, for the
     * traffic. {@code y}: Modified.
     */
    static void addAll(double[] y, double[][] columns, double[] input, int from, int end, int n) {
        int j = from;
        for (; j + 3 < end; j += 4) {
            double a = input[j];
            double b = input[j + 1];
            double c = input[j + 2];
            double d = input[j + 3];
            double[] ca = columns[j];
            double[] cb = columns[j + 1];
            double[] cc = columns[j + 2];
            double[] cd = columns[j + 3];
            for (int k = 0; k < n; k++) {
                y[k] += a * ca[k] + b * cb[k] + c * cc[k] + d * cd[k];
            }
        }
        for (; j < end; j++) {
            axpy(y, columns[j], input[j], n);
        }
    }

    /** The entries that sensitivities feel. */
    Felt felt() {
        Felt known = felt;
        if (known == null) {
            known = new Felt(columns, outputs, layout.states, firstPortInput);
            felt = known;
        }
        return known;
    }

    /** Adds to {@code out} what a current [A] through a port does. Modified. */
    void addPort(double[] out, int port, double amps) {
        if (amps == 0) {
            return;
        }
        int j = firstPortInput + port;
        if (blocks != null) {
            blocks.axpy(out, columns[j], amps, j);
        } else {
            axpy(out, columns[j], amps, outputs);
        }
    }

    /** y + a·x over the first {@code n}. {@code y}: Modified. */
    static void axpy(double[] y, double[] x, double a, int n) {
        for (int k = 0; k < n; k++) {
            y[k] += a * x[k];
        }
    }

    /** What was laid across two nodes of another reduction, and that one's answer to a unit of current between them. */
    private static final class Laid {
        final Reduction over;
        final Norton norton;
        final double[] direction;

        Laid(Reduction over, Norton norton) {
            this.over = over;
            this.norton = norton;
            this.direction = new double[over.layout.unknowns];
            Layout.nodes(direction, norton.one(), norton.two(), 1);
            over.solve(direction);
        }

        /** Turns a solution of the other reduction into one with the conductance in place. Modified. */
        void correct(double[] z) {
            axpy(z, direction, -part(across(z)), z.length);
        }

        /** How much of the direction is taken off a column whose two nodes differ by {@code volts}. */
        double part(double volts) {
            return gain() * volts;
        }

        private double gain() {
            return norton.siemens() / left();
        }

        /** What is left of 1 after the change: its distance from 0 in digits is what the update keeps. */
        double left() {
            return 1 + norton.siemens() * across(direction);
        }

        int one() {
            return norton.one();
        }

        int two() {
            return norton.two();
        }

        double across(double[] z) {
            return Layout.across(z, norton.one(), norton.two());
        }
    }

    /** Factors and reduces; the reason where the matrix is singular. */
    static Solved<Reduction> of(Layout layout, int slot, double stageSeconds) {
        double perSecond = 1 / stageSeconds;
        LinearSystem.Factored factored = LinearSystem.factor(layout.pattern(), perSecond);
        if (!factored.ok()) {
            String name = layout.unknownName(factored.brokenUnknown());
            return new Solved.Failed<>(new NotSolved(
                    NotSolved.Kind.SINGULAR,
                    List.of(name),
                    "the equations have no single solution near " + name
                            + ": something there is joined to nothing, or shorts an ideal source"));
        }
        LinearSystem system = factored.system();
        int nx = layout.states;
        int nu = layout.sources.size();
        double[][] full = new double[nx + nu + layout.ports][layout.unknowns];
        for (int s = 0; s < layout.slowStates; s++) {
            layout.addState(s, perSecond, full[s]);
        }
        for (int s = 0; s < nu; s++) {
            layout.sourceColumn(s, full[nx + s]);
        }
        for (int p = 0; p < layout.ports; p++) {
            layout.portColumn(p, full[nx + nu + p]);
        }
        system.solve(full, 0, layout.slowStates);
        system.solve(full, nx, full.length);
        for (int p = 0; p < layout.ports; p++) {
            double[] column = full[nx + nu + p];
            int state = layout.portState[p];
            if (state >= 0) {
                // its charge enters where its current does
                axpy(full[state], column, -layout.cells.get(state).farads() * perSecond, column.length);
            }
        }
        double[][] columns = Arrays.stream(full).map(layout::outputs).toArray(double[][]::new);
        UnitAnswers answers = UnitAnswers.of(full, layout.unknowns);
        return new Solved.Found<>(new Reduction(layout, slot, stageSeconds, system, answers, columns, null));
    }

    /**
     * The same with a conductance laid across two nodes and one more source, its current into node one, between the sources
     * and the ports (Sherman and Morrison's rank-one update).
     *
     * @param widened the layout with the extra source
     */
    Reduction with(Layout widened, Norton norton) {
        return laid(widened, new Laid(this, norton), layout.states + layout.sources.size());
    }

    /** With a conductance laid across, and a source there as input {@code own}; −1 for none. */
    private Reduction laid(Layout other, Laid across, int own) {
        double[] direction = layout.outputs(across.direction);
        double[] parts = new double[own < 0 ? inputs : inputs + 1];
        double[][] corrected = new double[parts.length][];
        int j = 0;
        for (int k = 0; k < parts.length; k++) {
            double volts = k == own ? across.across(across.direction) : full.across(j, across.one(), across.two());
            parts[k] = across.part(volts);
            double[] before = k == own ? direction : columns[j];
            corrected[k] = before.clone();
            axpy(corrected[k], direction, -parts[k], outputs);
            j += k == own ? 0 : 1;
        }
        UnitAnswers answers = UnitAnswers.corrected(full, across.direction, parts, own);
        return new Reduction(other, slot, stageSeconds, system, answers, corrected, across);
    }

    /**
     * The same with conductances changed, one after the other; null where a change undoes what was there so nearly that the
     * difference would be rounding.
     *
     * @param other the layout of the network with the changes made
     */
    @Nullable
    Reduction changed(Layout other, List<Norton> changes) {
        Reduction now = this;
        if (changes.isEmpty()) {
            return new Reduction(other, slot, stageSeconds, system, full, columns, laid);
        }
        for (Norton change : changes) {
            Laid across = new Laid(now, change);
            if (!(Math.abs(across.left()) > LEAST_LEFT && Math.abs(across.left()) < MOST_LEFT)) {
                return null;
            }
            now = now.laid(other, across, -1);
        }
        return now;
    }

    /** Takes A·x off a right side, in place: what is left is missed by x. {@code y}: Modified. */
    void subtractProduct(double[] x, double[] y) {
        if (laid == null) {
            system.subtractProduct(x, y);
        } else {
            laid.over.subtractProduct(x, y);
            Layout.nodes(y, laid.one(), laid.two(), -laid.norton.siemens() * laid.across(x));
        }
    }

    /** Solves for one right side in place. {@code b}: Modified. */
    void solve(double[] b) {
        if (laid == null) {
            system.solve(b);
        } else {
            laid.over.solve(b);
            laid.correct(b);
        }
    }

    /** How the voltage of one node against another follows from the inputs. */
    double[] voltageRow(int one, int two) {
        double[] row = new double[inputs];
        for (int j = 0; j < inputs; j++) {
            row[j] = full.across(j, one, two);
        }
        return row;
    }

    /** How a branch current follows from the inputs. */
    double[] branchRow(int branch) {
        double[] row = new double[inputs];
        for (int j = 0; j < inputs; j++) {
            row[j] = full.at(j, branch);
        }
        return row;
    }

    /** All unknowns for given inputs. {@code input}: not modified. */
    double[] unknowns(double[] input) {
        return full.unknowns(input);
    }
}
