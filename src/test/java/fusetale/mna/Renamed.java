package fusetale.mna;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.IntUnaryOperator;
import java.util.function.UnaryOperator;

/** A network under other names and in another order: electrically the same. */
final class Renamed {
    private Renamed() {}

    /** The network with elements and nodes shuffled and both renamed by {@code renaming}; the reference stays. */
    static Network shuffled(Network network, long seed, UnaryOperator<String> renaming) {
        Random random = new Random(seed);
        List<String> names =
                new ArrayList<>(network.nodes().subList(1, network.nodes().size()));
        Collections.shuffle(names, random);
        Network.Builder b = Network.builder(network.nodes().get(0));
        names.forEach(n -> b.node(renaming.apply(n)));
        List<Element> elements = new ArrayList<>(network.elements());
        Collections.shuffle(elements, random);
        for (Element e : elements) {
            b.add(element(
                    e,
                    renaming.apply(e.name()),
                    n -> n == 0 ? 0 : b.node(renaming.apply(network.nodes().get(n)))));
        }
        return b.build();
    }

    /** An element under another name between other nodes; what controls it keeps its name. */
    static Element element(Element e, String name, IntUnaryOperator to) {
        if (e instanceof Element.CoupledInductors c) {
            return new Element.CoupledInductors(name, ends(c.windings(), to), c.henries());
        }
        if (e instanceof Element.Ported p) {
            return new Element.Ported(name, ends(p.ports(), to), p.law());
        }
        int one = to.applyAsInt(e.ends().get(0).one());
        int two = to.applyAsInt(e.ends().get(0).two());
        if (e instanceof Element.Resistor r) {
            return new Element.Resistor(name, one, two, r.ohms());
        }
        if (e instanceof Element.Capacitor c) {
            return new Element.Capacitor(name, one, two, c.farads());
        }
        if (e instanceof Element.Inductor l) {
            return new Element.Inductor(name, one, two, l.henries());
        }
        if (e instanceof Element.VoltageSource v) {
            return new Element.VoltageSource(name, one, two, v.shape());
        }
        if (e instanceof Element.CurrentSource i) {
            return new Element.CurrentSource(name, one, two, i.shape());
        }
        if (e instanceof Element.VoltageByVoltage a) {
            return new Element.VoltageByVoltage(
                    name, one, two, to.applyAsInt(a.plus()), to.applyAsInt(a.minus()), a.gain());
        }
        if (e instanceof Element.CurrentByVoltage g) {
            return new Element.CurrentByVoltage(
                    name, one, two, to.applyAsInt(g.plus()), to.applyAsInt(g.minus()), g.siemens());
        }
        throw new IllegalArgumentException("no random network holds " + e);
    }

    private static List<Element.Ends> ends(List<Element.Ends> ends, IntUnaryOperator to) {
        return ends.stream()
                .map(n -> new Element.Ends(to.applyAsInt(n.one()), to.applyAsInt(n.two())))
                .toList();
    }
}
