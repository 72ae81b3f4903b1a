package fusetale.mna;

/** Node voltages and element currents at rest. Immutable. */
public interface OperatingPoint {
    /** Voltage [V] of node one against node two. */
    double volts(int one, int two);

    /**
     * Current [A] through an element from its first node to its second; ports and windings are {@code name.k}.
     *
     * @throws IllegalArgumentException where there is no such element
     */
    double amps(String element);

    /** Cost and quality. */
    Work work();
}
