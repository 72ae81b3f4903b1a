package fusetale.mna;

import java.util.List;

/**
 * One element of a {@link Network}. Nodes are indices of the network, 0 is the reference. A branch current is counted from
 * the first node through the element to the second.
 */
public sealed interface Element {
    /** Unique name, used in errors and to ask for its current. */
    String name();

    /** Nodes between which the element carries current: one pair for most, one a winding or a port. */
    List<Ends> ends();

    /** Name to ask for the current between one pair of its nodes: {@code name.k} for winding or port k. */
    default String currentName(int pair) {
        return this instanceof CoupledInductors || this instanceof Ported ? name() + "." + pair : name();
    }

    /**
     * The two nodes of a winding or a port.
     *
     * @param one first node
     * @param two second node
     */
    record Ends(int one, int two) {}

    /**
     * Resistor.
     *
     * @param name unique name
     * @param one first node
     * @param two second node
     * @param ohms resistance, above 0 and finite
     */
    record Resistor(String name, int one, int two, double ohms) implements Element {
        @Override
        public List<Ends> ends() {
            return List.of(new Ends(one, two));
        }
    }

    /**
     * Capacitor.
     *
     * @param name unique name
     * @param one first node
     * @param two second node
     * @param farads capacitance, above 0 and finite
     */
    record Capacitor(String name, int one, int two, double farads) implements Element {
        @Override
        public List<Ends> ends() {
            return List.of(new Ends(one, two));
        }
    }

    /**
     * Inductor, alone.
     *
     * @param name unique name
     * @param one first node
     * @param two second node
     * @param henries inductance, above 0 and finite
     */
    record Inductor(String name, int one, int two, double henries) implements Element {
        @Override
        public List<Ends> ends() {
            return List.of(new Ends(one, two));
        }
    }

    /**
     * Windings on one core: v = L·di/dt with a symmetric positive definite matrix.
     *
     * @param name unique name; winding k's current is asked for as {@code name.k}, k from 0
     * @param windings nodes of each winding
     * @param henries inductance matrix, one row a winding
     */
    record CoupledInductors(String name, List<Ends> windings, List<List<Double>> henries) implements Element {
        /** Copies the lists. */
        public CoupledInductors {
            windings = List.copyOf(windings);
            henries = henries.stream().map(List::copyOf).toList();
        }

        @Override
        public List<Ends> ends() {
            return windings;
        }
    }

    /**
     * Independent voltage source, v(one) − v(two) = shape.
     *
     * @param name unique name
     * @param one plus node
     * @param two minus node
     * @param shape value over time [V]
     */
    record VoltageSource(String name, int one, int two, SourceShape shape) implements Element {
        @Override
        public List<Ends> ends() {
            return List.of(new Ends(one, two));
        }
    }

    /**
     * Independent current source, current from one through the source to two.
     *
     * @param name unique name
     * @param one first node
     * @param two second node
     * @param shape value over time [A]
     */
    record CurrentSource(String name, int one, int two, SourceShape shape) implements Element {
        @Override
        public List<Ends> ends() {
            return List.of(new Ends(one, two));
        }
    }

    /**
     * Voltage-controlled voltage source, v(one) − v(two) = gain·(v(plus) − v(minus)).
     *
     * @param name unique name
     * @param one plus node
     * @param two minus node
     * @param plus controlling plus node
     * @param minus controlling minus node
     * @param gain ratio
     */
    record VoltageByVoltage(String name, int one, int two, int plus, int minus, double gain) implements Element {
        @Override
        public List<Ends> ends() {
            return List.of(new Ends(one, two));
        }
    }

    /**
     * Voltage-controlled current source, i = siemens·(v(plus) − v(minus)).
     *
     * @param name unique name
     * @param one first node
     * @param two second node
     * @param plus controlling plus node
     * @param minus controlling minus node
     * @param siemens transconductance
     */
    record CurrentByVoltage(String name, int one, int two, int plus, int minus, double siemens) implements Element {
        @Override
        public List<Ends> ends() {
            return List.of(new Ends(one, two));
        }
    }

    /**
     * Current-controlled voltage source, v(one) − v(two) = ohms·i(control).
     *
     * @param name unique name
     * @param one plus node
     * @param two minus node
     * @param control name of the voltage source whose current controls
     * @param ohms transresistance
     */
    record VoltageByCurrent(String name, int one, int two, String control, double ohms) implements Element {
        @Override
        public List<Ends> ends() {
            return List.of(new Ends(one, two));
        }
    }

    /**
     * Current-controlled current source, i = gain·i(control).
     *
     * @param name unique name
     * @param one first node
     * @param two second node
     * @param control name of the voltage source whose current controls
     * @param gain ratio
     */
    record CurrentByCurrent(String name, int one, int two, String control, double gain) implements Element {
        @Override
        public List<Ends> ends() {
            return List.of(new Ends(one, two));
        }
    }

    /**
     * Element with its own law behind ports.
     *
     * @param name unique name; port k's current is asked for as {@code name.k}, k from 0
     * @param ports nodes of each port
     * @param law the law
     */
    record Ported(String name, List<Ends> ports, PortLaw law) implements Element {
        /** Copies the list. */
        public Ported {
            ports = List.copyOf(ports);
        }

        @Override
        public List<Ends> ends() {
            return ports;
        }
    }
}
