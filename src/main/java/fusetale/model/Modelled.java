package fusetale.model;

import fusetale.circuit.Net;
import fusetale.mna.Element;
import fusetale.mna.Network;
import fusetale.mna.SourceShape;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A circuit as a network, with the way back: which node a net became, which element carries the current of a part.
 *
 * @param network elements and nodes
 * @param nodes node of each net
 * @param currents element whose current is meant by a part, a leg, a winding or a contact; see {@link #element}
 * @param ties insulation that had to be laid in so that no part of the circuit floats, one an island
 * @param islands number of the galvanic island of each net; a joint of 50 MΩ and more parts islands
 */
public record Modelled(
        Network network,
        Map<Net, Integer> nodes,
        Map<String, String> currents,
        List<Tie> ties,
        Map<Net, Integer> islands) {
    /** Node between the wall and a lamp in the mains lead, where there is one. */
    public static final String SERIES_LAMP_NODE = "mains:lamp";

    /** Copies what can change. */
    public Modelled {
        nodes = Map.copyOf(nodes);
        currents = Map.copyOf(currents);
        ties = List.copyOf(ties);
        islands = Map.copyOf(islands);
    }

    /**
     * An island of the circuit that only insulation joins to ground.
     *
     * @param at net where the insulation was laid
     * @param ohms its resistance [ohm]
     * @param nets all nets of the island
     */
    public record Tie(Net at, double ohms, List<Net> nets) {
        /** Copies the list. */
        public Tie {
            nets = List.copyOf(nets);
        }
    }

    /**
     * Node of a net.
     *
     * @throws IllegalArgumentException where the circuit has no such net
     */
    public int node(Net net) {
        Integer node = nodes.get(net);
        if (node == null) {
            throw new IllegalArgumentException("no net " + net + " in this circuit");
        }
        return node;
    }

    /**
     * Name of the element that carries a current. Two-terminal parts by their name, from their first pin to their second;
     * {@code BR201.leg1} anode to cathode; {@code T1.sol} into the first end of a winding, {@code T1.sol.2} of its second
     * section where it is tapped; {@code Q205} or {@code Q205.collector} into the collector, {@code Q205.base}, {@code
     * Q205.emitter}; {@code VR101} from input to output, {@code VR101.ground} into the ground pin; {@code L207} the strong
     * winding, {@code L207.hold}, {@code L207.switch}; {@code J3.4} from board to harness; {@code mains} out of the wall.
     */
    public Optional<String> element(String current) {
        return Optional.ofNullable(currents.get(current));
    }

    /**
     * The network with its mains elsewhere in the cycle at the start: √2·volts·sin(2π·f·t + phase).
     *
     * @param phaseRadians 0 where the voltage rises through zero
     */
    public Network closingAt(double phaseRadians) {
        List<Element> elements = new ArrayList<>();
        for (Element element : network.elements()) {
            boolean mains = element.name().equals(MainsBuilder.SOURCE);
            elements.add(mains && element instanceof Element.VoltageSource v ? shifted(v, phaseRadians) : element);
        }
        return new Network(network.nodes(), elements);
    }

    private static Element shifted(Element.VoltageSource source, double phaseRadians) {
        return source.shape() instanceof SourceShape.Sine s
                ? new Element.VoltageSource(
                        source.name(),
                        source.one(),
                        source.two(),
                        new SourceShape.Sine(s.offset(), s.peak(), s.hertz(), phaseRadians))
                : source;
    }

    /** Whether more than insulation joins two nets. */
    public boolean joined(Net one, Net two) {
        Integer a = islands.get(one);
        return a != null && a.equals(islands.get(two));
    }
}
