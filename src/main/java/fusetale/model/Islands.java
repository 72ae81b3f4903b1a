package fusetale.model;

import fusetale.circuit.Net;
import fusetale.mna.Element;
import fusetale.mna.Network;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Groups of nodes that a direct current can reach from one another (union and find with path halving). */
final class Islands {
    /** A resistance from here on [ohm] counts as insulation. */
    static final double PARTED_FROM_OHMS = 5e7;

    private final int[] parent;

    /**
     * The islands of a network.
     *
     * @param partedFromOhms resistances from here on do not join; infinite for all join
     */
    Islands(Network network, double partedFromOhms) {
        parent = new int[network.nodes().size()];
        for (int k = 0; k < parent.length; k++) {
            parent[k] = k;
        }
        for (Element element : network.elements()) {
            join(element, partedFromOhms);
        }
    }

    private void join(Element element, double partedFromOhms) {
        if (element instanceof Element.Resistor r) {
            if (r.ohms() < partedFromOhms) {
                join(r.one(), r.two());
            }
        } else if (element instanceof Element.Inductor l) {
            join(l.one(), l.two());
        } else if (element instanceof Element.VoltageSource s) {
            join(s.one(), s.two());
        } else if (element instanceof Element.VoltageByVoltage s) {
            join(s.one(), s.two());
        } else if (element instanceof Element.CoupledInductors c) {
            c.windings().forEach(w -> join(w.one(), w.two()));
        } else if (element instanceof Element.Ported p) {
            p.ports().forEach(w -> join(w.one(), w.two()));
        }
    }

    private void join(int one, int two) {
        parent[root(one)] = root(two);
    }

    private int root(int node) {
        int at = node;
        while (parent[at] != at) {
            parent[at] = parent[parent[at]];
            at = parent[at];
        }
        return at;
    }

    /** Number of a node's island. */
    int of(int node) {
        return root(node);
    }

    /** Islands that do not hold the reference, each with its nets in their order. */
    List<List<Net>> apartFromReference(List<Net> nets, Map<Net, Integer> nodes) {
        Map<Integer, List<Net>> apart = new LinkedHashMap<>();
        for (Net net : nets) {
            int island = root(nodes.getOrDefault(net, 0));
            if (island != root(0)) {
                apart.computeIfAbsent(island, k -> new ArrayList<>()).add(net);
            }
        }
        return new ArrayList<>(apart.values());
    }
}
