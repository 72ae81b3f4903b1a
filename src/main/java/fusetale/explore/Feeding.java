package fusetale.explore;

import fusetale.circuit.Bridge;
import fusetale.circuit.Circuit;
import fusetale.circuit.Connector;
import fusetale.circuit.Diode;
import fusetale.circuit.Electrolytic;
import fusetale.circuit.Fuse;
import fusetale.circuit.Mains;
import fusetale.circuit.Net;
import fusetale.circuit.Part;
import fusetale.circuit.Switch;
import fusetale.circuit.Transformer;
import fusetale.circuit.Wire;
import fusetale.fault.Fitting;
import fusetale.fault.Swap;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/**
 * Which rectifier charges which capacitor through which fuse, as drawn. Joined are nets with a fuse, a switch that is
 * closed, a wire, a connector or a secondary winding between them; ground joins everything and is left out.
 */
final class Feeding {
    private final Circuit circuit;

    Feeding(Circuit circuit) {
        this.circuit = circuit;
    }

    /** Parts whose figures a supposition's swaps may change: the swapped ones, then what works together with them. */
    Set<String> touched(List<Swap> swaps) {
        Set<String> touched = new LinkedHashSet<>();
        swaps.forEach(s -> touched.add(s.part()));
        for (Swap swap : swaps) {
            if (!(swap.fitting() instanceof Fitting.Mounted)) {
                circuit.part(swap.part()).ifPresent(p -> touched.addAll(around(p)));
            }
        }
        return touched;
    }

    private List<String> around(Part part) {
        List<String> around = new ArrayList<>();
        if (part instanceof Electrolytic c) {
            for (Part rectifier : charging(c)) {
                around.add(rectifier.name());
                around.addAll(fuses(rectifier));
            }
        } else if (part instanceof Fuse) {
            for (Part rectifier : rectifiers()) {
                if (fuses(rectifier).contains(part.name())) {
                    around.add(rectifier.name());
                }
            }
        } else if (rectifiers().contains(part)) {
            around.addAll(fuses(part));
            for (Part other : circuit.parts()) {
                if (other instanceof Electrolytic c && charging(c).contains(part)) {
                    around.add(c.name());
                }
            }
        }
        return around;
    }

    /** Bridges, and diodes that a winding or a bridge feeds: one that catches a coil's current is fed by neither. */
    private List<Part> rectifiers() {
        return circuit.parts().stream()
                .filter(p -> p instanceof Bridge || (p instanceof Diode d && (fedAtAnode(d) || fedAtCathode(d))))
                .toList();
    }

    /** What charges a capacitor: the rectifier itself, or a diode and the bridge before it. */
    private Set<Part> charging(Electrolytic c) {
        Set<Net> plus = reach(c.plus());
        Set<Net> minus = reach(c.minus());
        Set<Part> charging = new LinkedHashSet<>();
        for (Part part : circuit.parts()) {
            if (part instanceof Bridge b && (plus.contains(b.plus()) || minus.contains(b.minus()))) {
                charging.add(b);
            } else if (part instanceof Diode d && plus.contains(d.cathode()) && fedAtAnode(d)) {
                charging.add(d);
                charging.addAll(bridges(d.anode(), Bridge::plus));
            } else if (part instanceof Diode d && minus.contains(d.anode()) && fedAtCathode(d)) {
                charging.add(d);
                charging.addAll(bridges(d.cathode(), Bridge::minus));
            }
        }
        return charging;
    }

    private boolean fedAtAnode(Diode d) {
        return wound(d.anode()) || !bridges(d.anode(), Bridge::plus).isEmpty();
    }

    private boolean fedAtCathode(Diode d) {
        return wound(d.cathode()) || !bridges(d.cathode(), Bridge::minus).isEmpty();
    }

    private boolean wound(Net net) {
        Set<Net> reached = reach(net);
        return circuit.parts().stream()
                .anyMatch(p -> p instanceof Transformer t
                        && t.secondaries().stream()
                                .flatMap(w -> w.nets().stream())
                                .anyMatch(reached::contains));
    }

    private List<Part> bridges(Net net, Function<Bridge, Net> pin) {
        Set<Net> reached = reach(net);
        return circuit.parts().stream()
                .filter(p -> p instanceof Bridge b && reached.contains(pin.apply(b)))
                .toList();
    }

    /** Fuses between a rectifier's a.c. side and the windings that feed it. */
    private List<String> fuses(Part rectifier) {
        Set<Net> fed = new LinkedHashSet<>();
        if (rectifier instanceof Bridge b) {
            fed.addAll(reach(b.ac1()));
            fed.addAll(reach(b.ac2()));
        } else if (rectifier instanceof Diode d) {
            fed.addAll(reach(d.anode().equals(circuit.ground()) ? d.cathode() : d.anode()));
        }
        return circuit.parts().stream()
                .filter(p -> p instanceof Fuse f && (fed.contains(f.one()) || fed.contains(f.two())))
                .map(Part::name)
                .toList();
    }

    private Set<Net> reach(Net start) {
        Set<Net> reached = new LinkedHashSet<>();
        Deque<Net> ahead = new ArrayDeque<>();
        step(start, reached, ahead);
        while (!ahead.isEmpty()) {
            Net net = ahead.remove();
            for (List<Net> joined : joints()) {
                if (joined.contains(net)) {
                    joined.forEach(n -> step(n, reached, ahead));
                }
            }
        }
        return reached;
    }

    private void step(Net net, Set<Net> reached, Deque<Net> ahead) {
        boolean common = net.equals(circuit.ground()) || net.equals(Mains.LINE) || net.equals(Mains.NEUTRAL);
        if (!common && reached.add(net)) {
            ahead.add(net);
        }
    }

    private List<List<Net>> joints() {
        List<List<Net>> joints = new ArrayList<>();
        for (Part part : circuit.parts()) {
            if (part instanceof Fuse f) {
                joints.add(List.of(f.one(), f.two()));
            } else if (part instanceof Wire w) {
                joints.add(List.of(w.one(), w.two()));
            } else if (part instanceof Switch s && s.closed()) {
                joints.add(List.of(s.one(), s.two()));
            } else if (part instanceof Transformer t) {
                t.secondaries().forEach(w -> joints.add(w.nets()));
            }
        }
        for (Connector connector : circuit.connectors()) {
            connector.pins().forEach(p -> joints.add(List.of(p.board(), p.harness())));
        }
        return joints;
    }
}
