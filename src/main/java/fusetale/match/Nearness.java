package fusetale.match;

import fusetale.circuit.Circuit;
import fusetale.circuit.Connector;
import fusetale.circuit.Net;
import fusetale.circuit.Part;
import fusetale.circuit.Pin;
import fusetale.fault.Fault;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * How many parts lie between a supposition and what was found out of order. It only says what is worked out first; all is
 * worked out in the end.
 */
final class Nearness {
    /** A part further away is looked at so much later, as if it failed so much more seldom. */
    private static final double EACH_PART = 0.3;

    private static final int FAR = 8;

    private final Circuit circuit;
    private final Map<String, Integer> distance = new HashMap<>();

    /**
     * From some points.
     *
     * @param points names of points, parts and contacts that something out of order was found at; none makes all equally near
     */
    Nearness(Circuit circuit, Set<String> points) {
        this.circuit = circuit;
        Map<Net, List<Set<Net>>> around = new HashMap<>();
        Map<String, Set<Net>> nets = new HashMap<>();
        Map<String, String> owners = new HashMap<>();
        for (Part part : circuit.parts()) {
            nets.put(part.name(), of(part.pins().stream().map(Pin::net).toList()));
        }
        for (Connector connector : circuit.connectors()) {
            for (Connector.Contact pin : connector.pins()) {
                String name = connector.name() + "." + pin.label();
                nets.put(name, of(List.of(pin.board(), pin.harness())));
                owners.put(name, connector.name());
            }
        }
        nets.values()
                .forEach(set -> set.forEach(net ->
                        around.computeIfAbsent(net, n -> new ArrayList<>()).add(set)));
        Map<Net, Integer> reached = reached(points, nets, around);
        nets.forEach((name, set) -> {
            int least = set.stream()
                    .mapToInt(n -> reached.getOrDefault(n, FAR))
                    .min()
                    .orElse(FAR);
            distance.merge(owners.getOrDefault(name, name), least, Math::min);
        });
    }

    /** Ground joins everything and says nothing. */
    private Set<Net> of(List<Net> nets) {
        Set<Net> set = new HashSet<>(nets);
        set.remove(circuit.ground());
        return set;
    }

    private Map<Net, Integer> reached(Set<String> points, Map<String, Set<Net>> nets, Map<Net, List<Set<Net>>> around) {
        Map<Net, Integer> reached = new HashMap<>();
        Deque<Net> next = new ArrayDeque<>();
        for (String point : points) {
            Set<Net> start = new HashSet<>(nets.getOrDefault(point, Set.of()));
            circuit.find(point).filter(n -> !n.equals(circuit.ground())).ifPresent(start::add);
            for (Net net : start) {
                if (reached.putIfAbsent(net, 0) == null) {
                    next.add(net);
                }
            }
        }
        while (!next.isEmpty()) {
            Net net = next.remove();
            int further = reached.getOrDefault(net, FAR) + 1;
            for (Set<Net> set : around.getOrDefault(net, List.of())) {
                for (Net other : set) {
                    if (further < FAR && reached.putIfAbsent(other, further) == null) {
                        next.add(other);
                    }
                }
            }
        }
        return reached;
    }

    /** What the weight of a supposition counts when it is decided what to work out first. */
    double ratio(List<Fault> faults) {
        return Math.pow(EACH_PART, parts(faults));
    }

    /** Parts between the points and the nearest of some faults; none where there are no faults. */
    int parts(List<Fault> faults) {
        return faults.stream()
                .mapToInt(f -> distance.getOrDefault(f.part(), 0))
                .min()
                .orElse(0);
    }

    /** Parts between the points and a part. */
    int partsTo(String part) {
        return distance.getOrDefault(part, FAR);
    }

    /** Whether one of some faults lies no more than so many parts away. */
    boolean within(int parts, List<Fault> faults) {
        return faults.stream().anyMatch(f -> distance.getOrDefault(f.part(), FAR) <= parts);
    }
}
