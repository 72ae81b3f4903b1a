package fusetale.bench;

import fusetale.circuit.Circuit;
import fusetale.circuit.Net;
import fusetale.mna.OperatingPoint;
import fusetale.mna.PeriodicState;
import fusetale.mna.Work;
import fusetale.model.Modelled;
import fusetale.signal.Waveform;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What a look at the bench gave: readings, and the state they were taken from, without a meter, so that currents and other
 * voltages can be asked for. Immutable.
 */
public final class Seen {
    private final Circuit circuit;
    private final Modelled modelled;
    private final List<Reading> readings;
    private final List<Waveform> waveforms;
    private final @Nullable PeriodicState state;
    private final @Nullable OperatingPoint rest;
    private final List<String> remarks;

    /** Of a machine with the power on. */
    Seen(
            Circuit circuit,
            Modelled modelled,
            List<Reading> readings,
            List<Waveform> waveforms,
            PeriodicState state,
            List<String> remarks) {
        this(circuit, modelled, readings, waveforms, state, null, remarks);
    }

    /** Of a machine with the power off. */
    Seen(
            Circuit circuit,
            Modelled modelled,
            List<Reading> readings,
            List<Waveform> waveforms,
            OperatingPoint rest,
            List<String> remarks) {
        this(circuit, modelled, readings, waveforms, null, rest, remarks);
    }

    private Seen(
            Circuit circuit,
            Modelled modelled,
            List<Reading> readings,
            List<Waveform> waveforms,
            @Nullable PeriodicState state,
            @Nullable OperatingPoint rest,
            List<String> remarks) {
        this.circuit = circuit;
        this.modelled = modelled;
        this.readings = List.copyOf(readings);
        this.waveforms = List.copyOf(waveforms);
        this.state = state;
        this.rest = rest;
        this.remarks = List.copyOf(remarks);
    }

    /** The same for whoever asks for most of its voltages and currents; no look to start from. */
    public Seen tabled() {
        PeriodicState periodic = state;
        return periodic == null
                ? this
                : new Seen(circuit, modelled, readings, waveforms, periodic.tabled(), null, remarks);
    }

    /** Readings in the order of the checks. */
    public List<Reading> readings() {
        return readings;
    }

    /** Voltage [V] across the leads of each check, the meter's load included; steady with the power off. */
    public List<Waveform> waveforms() {
        return waveforms;
    }

    /** Where a neighbouring look may start from; null with the power off. */
    public @Nullable PeriodicState state() {
        return state;
    }

    /** The state at rest; null with the power on. */
    public @Nullable OperatingPoint rest() {
        return rest;
    }

    /** Cost and quality of the state without a meter. */
    public Work work() {
        PeriodicState periodic = state;
        return periodic != null ? periodic.work() : point().work();
    }

    /** What a reader should know, in plain words; may be empty. */
    public List<String> remarks() {
        return remarks;
    }

    /** The circuit as arranged, as a network. */
    public Modelled modelled() {
        return modelled;
    }

    /** The circuit as arranged. */
    public Circuit circuit() {
        return circuit;
    }

    /**
     * Current [A] of a part, a leg, a winding, a contact: names as {@link Modelled#element} lists them.
     *
     * @throws IllegalArgumentException where there is no such current
     */
    public Waveform amps(String name) {
        String element = modelled.element(name)
                .orElseThrow(() -> new IllegalArgumentException("no current called " + name + " in this circuit"));
        PeriodicState periodic = state;
        if (periodic != null) {
            return periodic.amps(element);
        }
        return Waveform.steady(point().amps(element));
    }

    /**
     * Voltage [V] between two points without a meter.
     *
     * @throws IllegalArgumentException where there is no such point
     */
    public Waveform volts(String from, String to) {
        return volts(net(from), net(to));
    }

    /**
     * Voltage [V] between two nets without a meter.
     *
     * @throws IllegalArgumentException where there is no such net
     */
    public Waveform volts(Net from, Net to) {
        int one = modelled.node(from);
        int two = modelled.node(to);
        PeriodicState periodic = state;
        if (periodic != null) {
            return periodic.volts(one, two);
        }
        return Waveform.steady(point().volts(one, two));
    }

    /**
     * Mean voltage [V] between two nets without a meter: quicker than {@link #volts} where that is all that is asked for.
     *
     * @throws IllegalArgumentException where there is no such net
     */
    public double meanVolts(Net from, Net to) {
        int one = modelled.node(from);
        int two = modelled.node(to);
        PeriodicState periodic = state;
        return periodic != null ? periodic.meanVolts(one, two) : point().volts(one, two);
    }

    /** With the power off there is one. */
    private OperatingPoint point() {
        return Objects.requireNonNull(rest);
    }

    private Net net(String point) {
        return circuit.find(point)
                .orElseThrow(() -> new IllegalArgumentException("no point " + point + " in this circuit"));
    }
}
