package fusetale.bench;

import fusetale.circuit.Capacitor;
import fusetale.circuit.Circuit;
import fusetale.circuit.Electrolytic;
import fusetale.circuit.Net;
import fusetale.circuit.Part;
import java.util.List;
import java.util.Optional;

/**
 * A part that holds charge.
 *
 * @param part its designator
 * @param plus net of its plus, or first, pin
 * @param minus net of the other
 * @param farads capacitance [F]
 * @param element the capacitor of the network that stands for it
 */
record Capacitance(String part, Net plus, Net minus, double farads, String element) {
    /** All of a circuit, in the order of its parts. */
    static List<Capacitance> all(Circuit circuit) {
        return circuit.parts().stream()
                .map(Capacitance::of)
                .flatMap(Optional::stream)
                .toList();
    }

    /** The one of a name. */
    static Optional<Capacitance> of(Circuit circuit, String name) {
        return circuit.part(name).flatMap(Capacitance::of);
    }

    private static Optional<Capacitance> of(Part part) {
        if (part instanceof Electrolytic c) {
            // behind its series resistance, see ElectrolyticBuilder
            return Optional.of(
                    new Capacitance(c.name(), c.plus(), c.minus(), c.farads().si(), c.name() + ":plates"));
        }
        if (part instanceof Capacitor c) {
            return Optional.of(
                    new Capacitance(c.name(), c.one(), c.two(), c.farads().si(), c.name()));
        }
        return Optional.empty();
    }
}
