package fusetale.explore;

import fusetale.circuit.Circuit;
import fusetale.circuit.Connector;
import fusetale.circuit.Darlington;
import fusetale.circuit.Diode;
import fusetale.circuit.Fuse;
import fusetale.circuit.LogicOutput;
import fusetale.circuit.Mosfet;
import fusetale.circuit.Net;
import fusetale.circuit.Part;
import fusetale.circuit.Switch;
import fusetale.circuit.Thyristor;
import fusetale.circuit.Transistor;
import fusetale.circuit.Wire;
import fusetale.circuit.Zener;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Who switches a coil or lamp, found on the drawing: the transistor whose collector (drain, anode), or the logic output,
 * that conductors join to one of its ends.
 *
 * @param driven the coil or lamp
 * @param railPin name of its pin at the other end
 * @param driver what switches it
 * @param upper driver's pin at the coil: collector, drain, anode, out
 * @param lower driver's other pin
 * @param clamps diodes and zeners at the driver's end of the coil
 */
record Switching(Part driven, String railPin, Part driver, String upper, String lower, List<Part> clamps) {
    /** Copies the list. */
    Switching {
        clamps = List.copyOf(clamps);
    }

    /** What a pulse of this name reaches: the coil or lamp itself, or that of a logic output; empty where nothing switches it. */
    static Optional<Switching> of(Circuit drawn, String name) {
        Part part = drawn.part(name).orElse(null);
        if (part instanceof LogicOutput output) {
            String commands = output.commands();
            part = commands == null ? null : drawn.part(commands).orElse(null);
        }
        if (part == null) {
            return Optional.empty();
        }
        for (int end : new int[] {1, 0}) {
            Set<Net> joined = joined(drawn, part.pins().get(end).net());
            for (Part candidate : drawn.parts()) {
                String[] pins = switched(candidate);
                if (pins != null && joined.contains(candidate.net(pins[0]))) {
                    List<Part> clamps = drawn.parts().stream()
                            .filter(p -> p instanceof Diode || p instanceof Zener)
                            .filter(p -> p.pins().stream().anyMatch(pin -> joined.contains(pin.net())))
                            .toList();
                    String railPin = part.pins().get(1 - end).name();
                    return Optional.of(new Switching(part, railPin, candidate, pins[0], pins[1], clamps));
                }
            }
        }
        return Optional.empty();
    }

    /** Pin at the load and other pin of what can switch a load; null for what cannot. */
    private static String @Nullable [] switched(Part part) {
        if (part instanceof Transistor || part instanceof Darlington) {
            return new String[] {"collector", "emitter"};
        } else if (part instanceof Mosfet) {
            return new String[] {"drain", "source"};
        } else if (part instanceof Thyristor) {
            return new String[] {"anode", "cathode"};
        } else if (part instanceof LogicOutput) {
            return new String[] {"out", "ground"};
        }
        return null;
    }

    /** Nets that conductors join to one: contacts, wires, fuses, closed switches. */
    private static Set<Net> joined(Circuit circuit, Net start) {
        Set<Net> reached = new LinkedHashSet<>(List.of(start));
        Deque<Net> open = new ArrayDeque<>(reached);
        while (!open.isEmpty()) {
            Net at = open.pop();
            for (List<Net> pair : conductors(circuit)) {
                if (pair.contains(at)) {
                    pair.stream().filter(reached::add).forEach(open::push);
                }
            }
        }
        return reached;
    }

    private static List<List<Net>> conductors(Circuit circuit) {
        List<List<Net>> pairs = new ArrayList<>();
        for (Part part : circuit.parts()) {
            boolean conducts = part instanceof Wire || part instanceof Fuse || (part instanceof Switch s && s.closed());
            if (conducts) {
                pairs.add(List.of(part.pins().get(0).net(), part.pins().get(1).net()));
            }
        }
        for (Connector connector : circuit.connectors()) {
            connector.pins().forEach(p -> pairs.add(List.of(p.board(), p.harness())));
        }
        return pairs;
    }
}
