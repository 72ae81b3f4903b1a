package fusetale.circuit;

import java.util.List;

/**
 * One part of a machine as the schematic draws it. Kinds are sealed: a new kind is a new record here, a new failure list in
 * {@code fault}, a new builder in {@code model}, and tests name every place that has not learnt of it.
 */
public sealed interface Part
        permits Battery,
                Bridge,
                Capacitor,
                Coil,
                Controller,
                Darlington,
                Diode,
                DualCoil,
                Electrolytic,
                Fuse,
                Lamp,
                LogicOutput,
                Mosfet,
                Regulator,
                OpAmp,
                Relay,
                Resistor,
                Switch,
                Thyristor,
                Transformer,
                Transistor,
                Wire,
                Zener {
    /** Reference designator, unique in the circuit: {@code R204}. */
    String name();

    /** All pins, in a fixed order with fixed names for the kind. */
    List<Pin> pins();

    /** Notes and mounting. */
    About about();

    /**
     * The same part with one pin soldered to another net.
     *
     * @throws IllegalArgumentException where the part has no such pin
     */
    Part rewired(String pin, Net net);

    /** The net of a pin. */
    default Net net(String pin) {
        for (Pin p : pins()) {
            if (p.name().equals(pin)) {
                return p.net();
            }
        }
        throw noPin(pin);
    }

    /** What to throw where {@code pin} is not a pin of this part. */
    default IllegalArgumentException noPin(String pin) {
        return new IllegalArgumentException(name() + " has no pin " + pin + "; it has "
                + String.join(", ", pins().stream().map(Pin::name).toList()));
    }
}
