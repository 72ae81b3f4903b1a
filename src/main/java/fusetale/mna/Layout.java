package fusetale.mna;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Which unknown, state, source and port each element of a network owns, and how the elements stamp into the nodal equations
 * (Ho, Ruehli and Brennan, "The Modified Nodal Approach to Network Analysis", IEEE Trans. CAS-22(6), 504-509, 1975).
 *
 * <p>Unknowns: node voltages [V] without the reference, then branch currents [A] of voltage sources, controlled voltage
 * sources and windings. States, in this order: voltages [V] of capacitors, currents [A] of windings (together the slow
 * states), then voltages [V] of the ports that have a capacitance (the fast states).
 */
final class Layout {
    final Network network;
    final int nodeCount;
    final int unknowns;
    final int states;
    final int slowStates;
    final int ports;
    final int deviceStates;
    final List<StateCell> cells = new ArrayList<>();
    final List<Source> sources = new ArrayList<>();
    final List<Device> devices = new ArrayList<>();
    final int[] portOne;
    final int[] portTwo;
    final int[] portState;
    /** Where each port's voltage stands among the outputs of a reduction: states, then ports without one. */
    final int[] portRow;
    /** Number of those outputs. */
    final int outputs;

    final Map<String, Integer> branches = new HashMap<>();
    final Map<String, Element> elements = new HashMap<>();
    /** Worked out when first asked for; immutable, so that threads may race for it. */
    private @Nullable SparsePattern pattern;

    /**
     * A state. Capacitors have a branch of −1; windings are unknown {@code branch} and couple to {@code with}.
     *
     * @param name element, or element.k of windings and ports
     * @param one first node
     * @param two second node
     * @param branch unknown of a winding's current, −1 for a capacitor
     * @param farads capacitance [F] of a capacitor
     * @param with states of the same core
     * @param henries inductance [H] to each of {@code with}
     */
    record StateCell(
            String name, int one, int two, int branch, double farads, List<Integer> with, List<Double> henries) {}

    /**
     * An independent source.
     *
     * @param name element
     * @param one first node
     * @param two second node
     * @param branch unknown of its current, −1 for a current source
     * @param shape value over time
     */
    record Source(String name, int one, int two, int branch, SourceShape shape) {}

    /**
     * A ported element.
     *
     * @param name element
     * @param law its law
     * @param firstPort index of its first port
     * @param firstState index of its first own state
     */
    record Device(String name, PortLaw law, int firstPort, int firstState) {}

    Layout(Network network) {
        this.network = network;
        this.nodeCount = network.nodes().size() - 1;
        int next = nodeCount;
        for (Element e : network.elements()) {
            elements.put(e.name(), e);
            if (e instanceof Element.Inductor
                    || e instanceof Element.VoltageSource
                    || e instanceof Element.VoltageByVoltage
                    || e instanceof Element.VoltageByCurrent) {
                branches.put(e.name(), next++);
            } else if (e instanceof Element.CoupledInductors coupled) {
                for (int k = 0; k < coupled.windings().size(); k++) {
                    branches.put(e.name() + "." + k, next++);
                }
            }
        }
        this.unknowns = next;
        collectCapacitors();
        collectWindings();
        this.slowStates = cells.size();
        int portCount = 0;
        int ownStates = 0;
        for (Element e : network.elements()) {
            if (e instanceof Element.Ported p) {
                devices.add(new Device(p.name(), p.law(), portCount, ownStates));
                portCount += p.law().ports();
                ownStates += p.law().states();
            } else if (e instanceof Element.VoltageSource s) {
                sources.add(new Source(s.name(), s.one(), s.two(), branch(s.name()), s.shape()));
            } else if (e instanceof Element.CurrentSource s) {
                sources.add(new Source(s.name(), s.one(), s.two(), -1, s.shape()));
            }
        }
        this.ports = portCount;
        this.deviceStates = ownStates;
        this.portOne = new int[ports];
        this.portTwo = new int[ports];
        this.portState = new int[ports];
        collectPorts();
        this.states = cells.size();
        this.portRow = new int[ports];
        int rows = states;
        for (int p = 0; p < ports; p++) {
            portRow[p] = portState[p] >= 0 ? portState[p] : rows++;
        }
        this.outputs = rows;
    }

    /** The outputs of a reduction among all unknowns. {@code z}: not modified. */
    double[] outputs(double[] z) {
        double[] out = new double[outputs];
        for (int s = 0; s < states; s++) {
            StateCell cell = cells.get(s);
            out[s] = cell.branch() >= 0 ? z[cell.branch()] : across(z, cell.one(), cell.two());
        }
        for (int p = 0; p < ports; p++) {
            if (portState[p] < 0) {
                out[portRow[p]] = across(z, portOne[p], portTwo[p]);
            }
        }
        return out;
    }

    /** Voltage of one node against another. {@code z}: all unknowns; not modified. */
    static double across(double[] z, int one, int two) {
        return (one > 0 ? z[one - 1] : 0) - (two > 0 ? z[two - 1] : 0);
    }

    int branch(String name) {
        Integer b = branches.get(name);
        if (b == null) {
            throw new IllegalArgumentException("no branch current of " + name);
        }
        return b;
    }

    private void collectCapacitors() {
        for (Element e : network.elements()) {
            if (e instanceof Element.Capacitor c) {
                cells.add(new StateCell(c.name(), c.one(), c.two(), -1, c.farads(), List.of(), List.of()));
            }
        }
    }

    private void collectWindings() {
        for (Element e : network.elements()) {
            if (e instanceof Element.Inductor l) {
                int self = cells.size();
                cells.add(new StateCell(
                        l.name(), l.one(), l.two(), branch(l.name()), 0, List.of(self), List.of(l.henries())));
            } else if (e instanceof Element.CoupledInductors c) {
                int first = cells.size();
                List<Integer> with = new ArrayList<>();
                for (int k = 0; k < c.windings().size(); k++) {
                    with.add(first + k);
                }
                for (int k = 0; k < c.windings().size(); k++) {
                    Element.Ends w = c.windings().get(k);
                    String name = c.name() + "." + k;
                    cells.add(new StateCell(
                            name,
                            w.one(),
                            w.two(),
                            branch(name),
                            0,
                            with,
                            c.henries().get(k)));
                }
            }
        }
    }

    private void collectPorts() {
        int p = 0;
        for (Element e : network.elements()) {
            if (e instanceof Element.Ported ported) {
                for (int k = 0; k < ported.law().ports(); k++) {
                    Element.Ends ends = ported.ports().get(k);
                    portOne[p] = ends.one();
                    portTwo[p] = ends.two();
                    double farads = ported.law().farads(k);
                    portState[p] = farads > 0 ? cells.size() : -1;
                    if (farads > 0) {
                        cells.add(new StateCell(
                                ported.name() + "." + k, ends.one(), ends.two(), -1, farads, List.of(), List.of()));
                    }
                    p++;
                }
            }
        }
    }

    /**
     * The matrix of the nodal equations at one implicit stage, G + C·perSecond with perSecond = 1/(γh) [1/s], 0 for the state
     * at rest.
     */
    SparsePattern pattern() {
        SparsePattern known = pattern;
        if (known == null) {
            known = new SparsePattern(conductances(), storage(), unknowns);
            pattern = known;
        }
        return known;
    }

    /** G: row-major, unknowns × unknowns. */
    double[] conductances() {
        double[] a = new double[unknowns * unknowns];
        for (Element e : network.elements()) {
            stamp(a, e);
        }
        for (StateCell cell : cells) {
            if (cell.branch() >= 0) {
                incidence(a, cell.one(), cell.two(), cell.branch());
            }
        }
        return a;
    }

    /** C: row-major, unknowns × unknowns. */
    private double[] storage() {
        double[] a = new double[unknowns * unknowns];
        for (StateCell cell : cells) {
            if (cell.branch() < 0) {
                conductance(a, cell.one(), cell.two(), cell.farads());
            } else {
                for (int k = 0; k < cell.with().size(); k++) {
                    int column = cells.get(cell.with().get(k)).branch();
                    a[cell.branch() * unknowns + column] -= cell.henries().get(k);
                }
            }
        }
        return a;
    }

    private void stamp(double[] a, Element e) {
        if (e instanceof Element.Resistor r) {
            conductance(a, r.one(), r.two(), 1 / r.ohms());
        } else if (e instanceof Element.VoltageSource s) {
            incidence(a, s.one(), s.two(), branch(s.name()));
        } else if (e instanceof Element.VoltageByVoltage s) {
            int row = branch(s.name());
            incidence(a, s.one(), s.two(), row);
            add(a, row, s.plus() - 1, -s.gain());
            add(a, row, s.minus() - 1, s.gain());
        } else if (e instanceof Element.VoltageByCurrent s) {
            int row = branch(s.name());
            incidence(a, s.one(), s.two(), row);
            add(a, row, branch(s.control()), -s.ohms());
        } else if (e instanceof Element.CurrentByVoltage s) {
            add(a, s.one() - 1, s.plus() - 1, s.siemens());
            add(a, s.one() - 1, s.minus() - 1, -s.siemens());
            add(a, s.two() - 1, s.plus() - 1, -s.siemens());
            add(a, s.two() - 1, s.minus() - 1, s.siemens());
        } else if (e instanceof Element.CurrentByCurrent s) {
            add(a, s.one() - 1, branch(s.control()), s.gain());
            add(a, s.two() - 1, branch(s.control()), -s.gain());
        } else if (e instanceof Element.Ported p) {
            for (int k = 0; k < p.law().ports(); k++) {
                Element.Ends ends = p.ports().get(k);
                conductance(a, ends.one(), ends.two(), p.law().baselineSiemens(k));
            }
        }
    }

    private void conductance(double[] a, int one, int two, double siemens) {
        add(a, one - 1, one - 1, siemens);
        add(a, two - 1, two - 1, siemens);
        add(a, one - 1, two - 1, -siemens);
        add(a, two - 1, one - 1, -siemens);
    }

    private void incidence(double[] a, int one, int two, int branch) {
        add(a, one - 1, branch, 1);
        add(a, two - 1, branch, -1);
        add(a, branch, one - 1, 1);
        add(a, branch, two - 1, -1);
    }

    private void add(double[] a, int row, int column, double value) {
        if (row >= 0 && column >= 0) {
            a[row * unknowns + column] += value;
        }
    }

    /**
     * Adds to the right side what state {@code s} does.
     *
     * @param valuePerSecond its predicted value over γh [V/s or A/s]
     * @param b unknowns long. Modified.
     */
    void addState(int s, double valuePerSecond, double[] b) {
        StateCell cell = cells.get(s);
        if (cell.branch() < 0) {
            nodes(b, cell.one(), cell.two(), cell.farads() * valuePerSecond);
        } else {
            for (int k = 0; k < cell.with().size(); k++) {
                // symmetric matrix: the column of s holds the same inductances as its row
                b[cells.get(cell.with().get(k)).branch()] -= cell.henries().get(k) * valuePerSecond;
            }
        }
    }

    /** Right side that source {@code s} adds per unit of its value. {@code b}: Modified. */
    void sourceColumn(int s, double[] b) {
        addSource(s, 1, b);
    }

    /** Adds to the right side what source {@code s} does at a value [V or A]. {@code b}: Modified. */
    void addSource(int s, double value, double[] b) {
        Source source = sources.get(s);
        if (source.branch() >= 0) {
            b[source.branch()] += value;
        } else {
            nodes(b, source.one(), source.two(), -value);
        }
    }

    /** Right side that port {@code p} adds per ampere. {@code b}: Modified. */
    void portColumn(int p, double[] b) {
        nodes(b, portOne[p], portTwo[p], -1);
    }

    /** Adds {@code value} at node one and takes it away at node two. {@code b}: Modified. */
    static void nodes(double[] b, int one, int two, double value) {
        if (one > 0) {
            b[one - 1] += value;
        }
        if (two > 0) {
            b[two - 1] -= value;
        }
    }

    /** Name of an unknown for a message. */
    String unknownName(int unknown) {
        if (unknown < nodeCount) {
            return network.nodes().get(unknown + 1);
        }
        for (Map.Entry<String, Integer> e : branches.entrySet()) {
            if (e.getValue() == unknown) {
                return e.getKey();
            }
        }
        return "?";
    }

    /** The state of this name, −1 where there is none. */
    int stateNamed(String name) {
        for (int s = 0; s < cells.size(); s++) {
            if (cells.get(s).name().equals(name)) {
                return s;
            }
        }
        return -1;
    }

    /** Whether another layout has the same states, ports and devices in the same order. */
    boolean sameStates(Layout other) {
        if (other == this) {
            return true;
        }
        if (other.states != states || other.slowStates != slowStates || other.devices.size() != devices.size()) {
            return false;
        }
        for (int s = 0; s < states; s++) {
            if (!cells.get(s).name().equals(other.cells.get(s).name())) {
                return false;
            }
        }
        for (int d = 0; d < devices.size(); d++) {
            Device mine = devices.get(d);
            Device theirs = other.devices.get(d);
            if (!mine.name().equals(theirs.name())
                    || mine.firstPort() != theirs.firstPort()
                    || mine.firstState() != theirs.firstState()) {
                return false;
            }
        }
        return other.ports == ports && other.deviceStates == deviceStates;
    }
}
