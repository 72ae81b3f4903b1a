package fusetale.model;

import fusetale.circuit.Mains;
import fusetale.circuit.Net;
import fusetale.mna.Element;
import fusetale.mna.Network;
import fusetale.mna.PortLaw;
import fusetale.mna.SourceShape;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A network while its parts are being added. Inner nodes and elements of a part are called {@code PART:what}. */
final class Sketch {
    /** Resistance [ohm] that stands for a bond where a part's own inner resistance is not known or 0. */
    static final double BOND_OHMS = 1e-3;
    /** Insulation, open contacts and pulled parts [ohm]: what still leaks across them lies far below what a meter loads. */
    static final double OPEN_OHMS = 1e10;

    private final Network.Builder network;
    private final Map<String, String> currents = new HashMap<>();
    private final String ground;
    private final double hertz;
    private final double ratedHertz;
    private final boolean powered;
    private final List<TimedOutput> timed;

    Sketch(Net ground, Mains mains, Conditions conditions) {
        this.network = Network.builder(ground.name());
        this.ground = ground.name();
        this.hertz = mains.hertz().si();
        this.ratedHertz = mains.ratedHertz().si();
        this.powered = conditions.powerOn();
        this.timed = conditions.timed();
    }

    /** Name of the reference node. */
    String ground() {
        return ground;
    }

    /** Mains frequency [Hz]. */
    double hertz() {
        return hertz;
    }

    /** Frequency for which transformers are made [Hz]. */
    double ratedHertz() {
        return ratedHertz;
    }

    /** Whether the machine is switched on. */
    boolean powered() {
        return powered;
    }

    /** What a logic output does for a while, where it does. */
    Optional<TimedOutput> timed(String output) {
        return timed.stream().filter(t -> t.output().equals(output)).findFirst();
    }

    /** Makes a node for a net, so that it can be measured even where no element reaches it. */
    int node(Net net) {
        return network.node(net.name());
    }

    int node(String name) {
        return network.node(name);
    }

    /** A resistor that carries the current of its name. */
    void carrying(String name, String one, String two, double ohms) {
        network.resistor(name, one, two, ohms);
        currents.put(name, name);
    }

    void resistor(String name, String one, String two, double ohms) {
        network.resistor(name, one, two, ohms);
    }

    void capacitor(String name, String one, String two, double farads) {
        network.capacitor(name, one, two, farads);
    }

    void inductor(String name, String one, String two, double henries) {
        network.inductor(name, one, two, henries);
    }

    void voltage(String name, String plus, String minus, SourceShape shape) {
        network.voltage(name, plus, minus, shape);
    }

    void port(String name, String one, String two, PortLaw law) {
        network.port(name, one, two, law);
        currents.put(name, name + ".0");
    }

    /** A part with two ports; {@code ends}: first and second node of each. */
    void twoPorts(String name, List<String> ends, PortLaw law) {
        network.ports(name, ends.get(0), ends.get(1), ends.get(2), ends.get(3), law);
    }

    Element.Ends ends(String one, String two) {
        return network.ends(one, two);
    }

    void add(Element element) {
        network.add(element);
    }

    /** Says which element carries the current called {@code name}. */
    void current(String name, String element) {
        currents.put(name, element);
    }

    /** Gives a current a second name. */
    void alias(String name, String other) {
        currents.put(name, currents.getOrDefault(other, other));
    }

    Map<String, String> currents() {
        return currents;
    }

    Network network() {
        return network.build();
    }
}
