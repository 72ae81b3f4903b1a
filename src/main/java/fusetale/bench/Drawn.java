package fusetale.bench;

import fusetale.circuit.Capacitor;
import fusetale.circuit.Circuit;
import fusetale.circuit.Coil;
import fusetale.circuit.Connector;
import fusetale.circuit.DualCoil;
import fusetale.circuit.Electrolytic;
import fusetale.circuit.Fuse;
import fusetale.circuit.Lamp;
import fusetale.circuit.Part;
import fusetale.circuit.Regulator;
import fusetale.circuit.Relay;
import fusetale.circuit.Resistor;
import fusetale.circuit.Transformer;
import fusetale.circuit.Wire;
import fusetale.circuit.Zener;
import fusetale.quantity.Toleranced;
import java.util.List;
import java.util.random.RandomGenerator;

/** One healthy machine out of many: each part drawn uniformly within its tolerance. */
public final class Drawn {
    private final RandomGenerator random;

    /**
     * Draws machines.
     *
     * @param random each machine takes as many numbers from it as it has values with a tolerance
     */
    public Drawn(RandomGenerator random) {
        this.random = random;
    }

    /** The circuit with other values; parts and contacts are drawn in the order of the file. */
    public Circuit circuit(Circuit circuit) {
        List<Part> parts = circuit.parts().stream().map(this::part).toList();
        List<Connector> connectors =
                circuit.connectors().stream().map(this::connector).toList();
        return circuit.withParts(parts).withConnectors(connectors);
    }

    private Part part(Part part) {
        if (part instanceof Resistor p) {
            return new Resistor(p.name(), p.one(), p.two(), value(p.ohms()), p.ratedWatts(), p.about());
        } else if (part instanceof Capacitor p) {
            return new Capacitor(p.name(), p.one(), p.two(), value(p.farads()), p.ratedVolts(), p.about());
        } else if (part instanceof Electrolytic p) {
            return new Electrolytic(
                    p.name(),
                    p.plus(),
                    p.minus(),
                    value(p.farads()),
                    p.ratedVolts(),
                    p.seriesOhms(),
                    p.leakageOhms(),
                    p.about());
        } else if (part instanceof Wire p) {
            return new Wire(p.name(), p.one(), p.two(), value(p.ohms()), p.ratedAmps(), p.about());
        } else if (part instanceof Fuse p) {
            return new Fuse(p.name(), p.one(), p.two(), p.marked(), p.fitted(), value(p.clipOhms()), p.about());
        } else if (part instanceof Lamp p) {
            return new Lamp(p.name(), p.one(), p.two(), p.volts(), value(p.amps()), p.count(), p.about());
        } else if (part instanceof Zener p) {
            return new Zener(p.name(), p.anode(), p.cathode(), p.model(), value(p.volts()), p.about());
        } else if (part instanceof Transformer p) {
            return new Transformer(
                    p.name(),
                    winding(p.primary()),
                    p.secondaries().stream().map(this::winding).toList(),
                    p.magnetics(),
                    p.about());
        }
        return coilOrRegulator(part);
    }

    private Part coilOrRegulator(Part part) {
        if (part instanceof Coil p) {
            return new Coil(
                    p.name(),
                    p.one(),
                    p.two(),
                    value(p.ohms()),
                    value(p.henries()),
                    p.pullInAmps(),
                    p.holdAmps(),
                    p.about());
        } else if (part instanceof DualCoil p) {
            return new DualCoil(
                    p.name(),
                    p.one(),
                    p.two(),
                    value(p.powerOhms()),
                    value(p.powerHenries()),
                    value(p.holdOhms()),
                    value(p.holdHenries()),
                    p.endOfStroke(),
                    p.pulledIn(),
                    p.about());
        } else if (part instanceof Relay p) {
            Relay.Winding w = p.winding();
            return p.with(new Relay.Winding(
                    value(w.ohms()), value(w.henries()), w.pullInAmps(), w.dropOutAmps(), w.operateSeconds()));
        } else if (part instanceof Regulator p) {
            double ratio = p.model().outputToleranceRatio();
            double volts = p.model().outputVolts() * (1 + between(-ratio, ratio));
            return new Regulator(
                    p.name(), p.in(), p.out(), p.ground(), p.model().withOutputVolts(volts), p.about());
        }
        return part;
    }

    private Transformer.Winding winding(Transformer.Winding w) {
        return new Transformer.Winding(w.name(), w.nets(), w.volts(), value(w.ohms()), w.ratedAmps());
    }

    private Connector connector(Connector connector) {
        return new Connector(
                connector.name(),
                connector.pins().stream()
                        .map(p -> new Connector.Contact(p.label(), p.board(), p.harness(), value(p.ohms())))
                        .toList(),
                connector.ratedAmps());
    }

    private Toleranced value(Toleranced value) {
        return value.times(
                1 + between(value.tolerance().lowRatio(), value.tolerance().highRatio()));
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }
}
