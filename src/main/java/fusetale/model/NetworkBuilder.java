package fusetale.model;

import fusetale.circuit.Battery;
import fusetale.circuit.Bridge;
import fusetale.circuit.Capacitor;
import fusetale.circuit.Circuit;
import fusetale.circuit.Coil;
import fusetale.circuit.Connector;
import fusetale.circuit.Controller;
import fusetale.circuit.Darlington;
import fusetale.circuit.Diode;
import fusetale.circuit.DualCoil;
import fusetale.circuit.Electrolytic;
import fusetale.circuit.Fuse;
import fusetale.circuit.Lamp;
import fusetale.circuit.LogicOutput;
import fusetale.circuit.Mosfet;
import fusetale.circuit.Net;
import fusetale.circuit.OpAmp;
import fusetale.circuit.Part;
import fusetale.circuit.Regulator;
import fusetale.circuit.Relay;
import fusetale.circuit.Resistor;
import fusetale.circuit.Switch;
import fusetale.circuit.Thyristor;
import fusetale.circuit.Transformer;
import fusetale.circuit.Transistor;
import fusetale.circuit.Wire;
import fusetale.circuit.Zener;
import fusetale.mna.Network;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Turns a circuit into a network: one builder a part kind, the mains as the conditions say, and insulation of 1 GΩ to
 * ground where an island of the circuit would float.
 */
public final class NetworkBuilder {
    /** Insulation of an island that nothing else joins to ground [ohm]. */
    private static final double INSULATION_OHMS = 1e9;

    private NetworkBuilder() {}

    /**
     * The circuit as a network. Every net gets a node. Values are not checked here: what is zero or not finite comes out as
     * a flaw of the network, named after its part.
     *
     * @throws IllegalArgumentException where a part's model is out of the bounds of its law, naming the part
     */
    public static Modelled build(Circuit circuit, Conditions conditions) {
        Sketch sketch = new Sketch(circuit.ground(), circuit.mains(), conditions);
        Map<Net, Integer> nodes = new HashMap<>();
        for (Net net : circuit.nets()) {
            nodes.put(net, sketch.node(net));
        }
        MainsBuilder.build(circuit, conditions, sketch);
        for (Part part : circuit.parts()) {
            try {
                add(part, sketch);
            } catch (IllegalArgumentException e) {
                throw new IllegalArgumentException(part.name() + ": " + e.getMessage(), e);
            }
        }
        for (Connector connector : circuit.connectors()) {
            ConnectorBuilder.build(connector, sketch);
        }
        List<Net> nets = new ArrayList<>(circuit.nets());
        Islands all = new Islands(sketch.network(), Double.POSITIVE_INFINITY);
        List<Modelled.Tie> ties = new ArrayList<>();
        for (List<Net> island : all.apartFromReference(nets, nodes)) {
            Net at = island.get(0);
            ties.add(new Modelled.Tie(at, INSULATION_OHMS, island));
            sketch.resistor(at + ":tie", at.name(), circuit.ground().name(), INSULATION_OHMS);
        }
        Network network = sketch.network();
        Islands joined = new Islands(network, Islands.PARTED_FROM_OHMS);
        Map<Net, Integer> islands = new HashMap<>();
        for (Net net : nets) {
            islands.put(net, joined.of(nodes.getOrDefault(net, 0)));
        }
        return new Modelled(network, nodes, sketch.currents(), ties, islands);
    }

    private static void add(Part part, Sketch sketch) {
        if (part instanceof Battery p) {
            BatteryBuilder.build(p, sketch);
        } else if (part instanceof Bridge p) {
            BridgeBuilder.build(p, sketch);
        } else if (part instanceof Capacitor p) {
            CapacitorBuilder.build(p, sketch);
        } else if (part instanceof Coil p) {
            CoilBuilder.build(p, sketch);
        } else if (part instanceof Controller p) {
            ControllerBuilder.build(p, sketch);
        } else if (part instanceof Darlington p) {
            DarlingtonBuilder.build(p, sketch);
        } else if (part instanceof Diode p) {
            DiodeBuilder.build(p, sketch);
        } else if (part instanceof DualCoil p) {
            DualCoilBuilder.build(p, sketch);
        } else if (part instanceof Electrolytic p) {
            ElectrolyticBuilder.build(p, sketch);
        } else if (part instanceof Fuse p) {
            FuseBuilder.build(p, sketch);
        } else if (part instanceof Lamp p) {
            LampBuilder.build(p, sketch);
        } else if (part instanceof LogicOutput p) {
            LogicOutputBuilder.build(p, sketch);
        } else if (part instanceof Mosfet p) {
            MosfetBuilder.build(p, sketch);
        } else if (part instanceof OpAmp p) {
            OpAmpBuilder.build(p, sketch);
        } else if (part instanceof Regulator p) {
            RegulatorBuilder.build(p, sketch);
        } else if (part instanceof Relay p) {
            RelayBuilder.build(p, sketch);
        } else if (part instanceof Resistor p) {
            ResistorBuilder.build(p, sketch);
        } else if (part instanceof Switch p) {
            SwitchBuilder.build(p, sketch);
        } else if (part instanceof Thyristor p) {
            ThyristorBuilder.build(p, sketch);
        } else if (part instanceof Transformer p) {
            TransformerBuilder.build(p, sketch);
        } else if (part instanceof Transistor p) {
            TransistorBuilder.build(p, sketch);
        } else if (part instanceof Wire p) {
            WireBuilder.build(p, sketch);
        } else if (part instanceof Zener p) {
            ZenerBuilder.build(p, sketch);
        } else {
            // a test goes through all kinds that the sealed interface permits, so this is never reached
            throw new IllegalStateException("no builder for " + part.getClass().getSimpleName());
        }
    }
}
