package fusetale.mna;

import fusetale.signal.Waveform;

/** Voltages and currents over one period or one run. Immutable. */
public interface Run {
    /** Voltage [V] of node one against node two. */
    Waveform volts(int one, int two);

    /** Its mean [V]; quicker, to the last digits, where nothing else of it is asked for. */
    default double meanVolts(int one, int two) {
        return volts(one, two).mean();
    }

    /**
     * Current [A] through an element from its first node to its second; ports and windings are {@code name.k}.
     *
     * @throws IllegalArgumentException where there is no such element
     */
    Waveform amps(String element);

    /** Cost and quality. */
    Work work();
}
