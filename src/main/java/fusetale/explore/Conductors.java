package fusetale.explore;

import fusetale.circuit.Circuit;
import fusetale.circuit.Connector;
import fusetale.circuit.Fuse;
import fusetale.circuit.Net;
import fusetale.circuit.Part;
import fusetale.circuit.Switch;
import fusetale.circuit.Wire;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What is one piece of copper on the drawing. */
final class Conductors {
    private Conductors() {}

    /** Nets that conductors join to one: contacts, wires, fuses, closed switches. */
    static Set<Net> joined(Circuit circuit, Net start) {
        List<List<Net>> pairs = pairs(circuit);
        Set<Net> reached = new LinkedHashSet<>(List.of(start));
        Deque<Net> open = new ArrayDeque<>(reached);
        while (!open.isEmpty()) {
            Net at = open.pop();
            for (List<Net> pair : pairs) {
                if (pair.contains(at)) {
                    pair.stream().filter(reached::add).forEach(open::push);
                }
            }
        }
        return reached;
    }

    private static List<List<Net>> pairs(Circuit circuit) {
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
