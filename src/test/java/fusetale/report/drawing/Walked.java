package fusetale.report.drawing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * A drawing read the way a person reads it, from lines, dots, signs and names alone: what is joined to what. No use is made of
 * the nets that the plan keeps beside its lines.
 */
final class Walked {
    private final List<Segment> wires = new ArrayList<>();
    private final Map<Object, Object> parents = new HashMap<>();
    private final Map<String, Spot> ports = new LinkedHashMap<>();
    private final List<Spot> dots = new ArrayList<>();

    private Walked(DrawingPlan plan) {
        plan.nets().forEach(n -> {
            wires.addAll(n.wires());
            dots.addAll(n.joints());
        });
        plan.symbols()
                .forEach(part -> part.ports()
                        .forEach((pin, port) -> ports.put(part.name() + "." + pin, new Spot(port.x(), port.y()))));
        for (int i = 0; i < wires.size(); i++) {
            for (int j = i + 1; j < wires.size(); j++) {
                if (meet(wires.get(i), wires.get(j))) {
                    join(wires.get(i), wires.get(j));
                }
            }
        }
        ports.forEach((name, spot) -> {
            join(name, spot);
            touch(spot);
        });
        plan.nets().stream().flatMap(n -> n.flags().stream()).forEach(flag -> {
            Spot spot = new Spot(flag.x(), flag.y());
            touch(spot);
            join(spot, said(flag));
        });
    }

    /** Groups of ports that hang together. */
    static List<Set<String>> groups(DrawingPlan plan) {
        Walked walked = new Walked(plan);
        Map<Object, Set<String>> groups = new LinkedHashMap<>();
        walked.ports
                .keySet()
                .forEach(name -> groups.computeIfAbsent(walked.root(name), r -> new TreeSet<>())
                        .add(name));
        return List.copyOf(groups.values());
    }

    private static String said(Flag flag) {
        return flag.labels().isEmpty() ? "three bars" : flag.labels().get(0).text();
    }

    private void touch(Spot spot) {
        for (Segment wire : wires) {
            if (wire.holds(spot.x(), spot.y())) {
                join(spot, wire);
            }
        }
    }

    /** Ends that touch are joined; lines that cross only where there is a dot. */
    private boolean meet(Segment one, Segment two) {
        boolean ends = two.holds(one.x1(), one.y1())
                || two.holds(one.x2(), one.y2())
                || one.holds(two.x1(), two.y1())
                || one.holds(two.x2(), two.y2());
        return ends || dots.stream().anyMatch(d -> one.holds(d.x(), d.y()) && two.holds(d.x(), d.y()));
    }

    private void join(Object one, Object two) {
        parents.put(root(one), root(two));
    }

    private Object root(Object item) {
        Object at = item;
        Object up = parents.get(at);
        while (up != null && !up.equals(at)) {
            at = up;
            up = parents.get(at);
        }
        return at;
    }
}
