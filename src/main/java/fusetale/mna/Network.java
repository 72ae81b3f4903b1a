package fusetale.mna;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Elements between nodes. Immutable; build one with {@link #builder}.
 *
 * @param nodes node names, index = node; 0 is the reference
 * @param elements elements in the order added
 */
public record Network(List<String> nodes, List<Element> elements) {
    /** Copies the lists. */
    public Network {
        nodes = List.copyOf(nodes);
        elements = List.copyOf(elements);
    }

    /** A builder whose reference node is called {@code reference}. */
    public static Builder builder(String reference) {
        return new Builder(reference);
    }

    /** Index of a node, −1 where there is none of that name. */
    public int node(String name) {
        return nodes.indexOf(name);
    }

    /** Collects elements. Values are checked when the network is solved, so that all errors are told at once. */
    public static final class Builder {
        private final Map<String, Integer> indices = new LinkedHashMap<>();
        private final List<Element> elements = new ArrayList<>();

        private Builder(String reference) {
            indices.put(reference, 0);
        }

        /** The node of this name, made where it is new. */
        public int node(String name) {
            return indices.computeIfAbsent(name, n -> indices.size());
        }

        /** Adds an element. */
        public Builder add(Element element) {
            elements.add(element);
            return this;
        }

        /** {@link Element.Resistor}. */
        public Builder resistor(String name, String one, String two, double ohms) {
            return add(new Element.Resistor(name, node(one), node(two), ohms));
        }

        /** {@link Element.Capacitor}. */
        public Builder capacitor(String name, String one, String two, double farads) {
            return add(new Element.Capacitor(name, node(one), node(two), farads));
        }

        /** {@link Element.Inductor}. */
        public Builder inductor(String name, String one, String two, double henries) {
            return add(new Element.Inductor(name, node(one), node(two), henries));
        }

        /** {@link Element.VoltageSource}. */
        public Builder voltage(String name, String plus, String minus, SourceShape shape) {
            return add(new Element.VoltageSource(name, node(plus), node(minus), shape));
        }

        /** {@link Element.CurrentSource}. */
        public Builder current(String name, String one, String two, SourceShape shape) {
            return add(new Element.CurrentSource(name, node(one), node(two), shape));
        }

        /** A {@link Element.Ported} with one port. */
        public Builder port(String name, String one, String two, PortLaw law) {
            return add(new Element.Ported(name, List.of(ends(one, two)), law));
        }

        /** A {@link Element.Ported} with two ports. */
        public Builder ports(String name, String one0, String two0, String one1, String two1, PortLaw law) {
            return add(new Element.Ported(name, List.of(ends(one0, two0), ends(one1, two1)), law));
        }

        /** The nodes of these names as the ends of a winding or a port. */
        public Element.Ends ends(String one, String two) {
            return new Element.Ends(node(one), node(two));
        }

        /** The network. */
        public Network build() {
            return new Network(new ArrayList<>(indices.keySet()), elements);
        }
    }
}
