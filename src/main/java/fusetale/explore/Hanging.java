package fusetale.explore;

import fusetale.circuit.Circuit;
import fusetale.circuit.Connector;
import fusetale.circuit.Net;
import fusetale.circuit.Part;
import fusetale.circuit.Pin;
import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;

/**
 * The nets of a machine into which next to nothing flows, so that a meter laid on them is what loads them: what opens before
 * them carried no current, and still changes what the meter shows. Immutable.
 */
final class Hanging {
    /** Parts with more pins than two may carry their current elsewhere. */
    private static final int ENDS = 2;

    private final Set<Net> nets;
    private final Set<Net> known;

    private Hanging(Set<Net> nets, Set<Net> known) {
        this.nets = nets;
        this.known = known;
    }

    /**
     * Of a machine in a known state.
     *
     * @param amps largest current [A] of a part or contact, by its name
     * @param nothingAmps currents up to this are none [A]
     */
    static Hanging of(Circuit circuit, ToDoubleFunction<String> amps, double nothingAmps) {
        Set<Net> known = circuit.nets();
        Set<Net> hanging = new HashSet<>(known);
        hanging.remove(circuit.ground());
        for (Part part : circuit.parts()) {
            List<Pin> pins = part.pins();
            if (pins.size() == ENDS && amps.applyAsDouble(part.name()) > nothingAmps) {
                pins.forEach(p -> hanging.remove(p.net()));
            }
        }
        for (Connector connector : circuit.connectors()) {
            for (Connector.Contact contact : connector.pins()) {
                if (amps.applyAsDouble(connector.name() + "." + contact.label()) > nothingAmps) {
                    hanging.remove(contact.board());
                    hanging.remove(contact.harness());
                }
            }
        }
        return new Hanging(hanging, known);
    }

    /** Whether a net hangs; one that the machine does not have lies behind something that was laid in, and may. */
    boolean has(Net net) {
        return nets.contains(net) || !known.contains(net);
    }

    /**
     * The nets that hang together with some, those included that do hang.
     *
     * @param supposed the same machine under a supposition
     */
    Set<Net> with(Collection<Net> some, Circuit supposed) {
        Map<Net, Set<Net>> beside = beside(supposed);
        Set<Net> found = new HashSet<>();
        Deque<Net> next = new ArrayDeque<>(some);
        while (!next.isEmpty()) {
            Net net = next.pop();
            if (has(net) && found.add(net)) {
                next.addAll(beside.getOrDefault(net, Set.of()));
            }
        }
        return found;
    }

    private static Map<Net, Set<Net>> beside(Circuit circuit) {
        Map<Net, Set<Net>> beside = new HashMap<>();
        for (Part part : circuit.parts()) {
            List<Net> all = part.pins().stream().map(Pin::net).toList();
            all.forEach(n -> beside.computeIfAbsent(n, k -> new HashSet<>()).addAll(all));
        }
        for (Connector connector : circuit.connectors()) {
            for (Connector.Contact contact : connector.pins()) {
                List<Net> all = List.of(contact.board(), contact.harness());
                all.forEach(n -> beside.computeIfAbsent(n, k -> new HashSet<>()).addAll(all));
            }
        }
        return beside;
    }
}
