package fusetale.bench;

import fusetale.circuit.Net;
import fusetale.mna.PeriodicState;
import fusetale.mna.Run;
import fusetale.model.Modelled;
import fusetale.signal.Waveform;
import java.util.Optional;

/**
 * A machine while its drivers are pulsed: from the state at rest through the pulse until its coils are without current. Time
 * 0 is a zero of the mains, rising. Immutable.
 *
 * @param modelled the machine as a network
 * @param rest the machine at rest, over one cycle of the mains from time 0 on
 * @param run from time 0 on
 * @param fromSeconds when all pulses begin [s]
 * @param endSeconds when the run ends [s]
 */
public record PulseRun(Modelled modelled, PeriodicState rest, Run run, double fromSeconds, double endSeconds) {
    /**
     * Voltage [V] between two nets during the run.
     *
     * @throws IllegalArgumentException where there is no such net
     */
    public Waveform volts(Net from, Net to) {
        return run.volts(modelled.node(from), modelled.node(to));
    }

    /**
     * The same at rest.
     *
     * @throws IllegalArgumentException where there is no such net
     */
    public Waveform restVolts(Net from, Net to) {
        return rest.volts(modelled.node(from), modelled.node(to));
    }

    /** Current [A] during the run, names as {@link Modelled#element} lists them; empty where there is none of that name. */
    public Optional<Waveform> amps(String name) {
        return modelled.element(name).map(run::amps);
    }

    /** The same at rest. */
    public Optional<Waveform> restAmps(String name) {
        return modelled.element(name).map(rest::amps);
    }
}
