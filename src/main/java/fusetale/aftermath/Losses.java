package fusetale.aftermath;

import fusetale.bench.Seen;
import fusetale.circuit.Bridge;
import fusetale.circuit.Circuit;
import fusetale.circuit.Coil;
import fusetale.circuit.Conductor;
import fusetale.circuit.Connector;
import fusetale.circuit.Darlington;
import fusetale.circuit.Diode;
import fusetale.circuit.DualCoil;
import fusetale.circuit.Fuse;
import fusetale.circuit.Mosfet;
import fusetale.circuit.Net;
import fusetale.circuit.Part;
import fusetale.circuit.Regulator;
import fusetale.circuit.Relay;
import fusetale.circuit.Resistor;
import fusetale.circuit.Thyristor;
import fusetale.circuit.Transformer;
import fusetale.circuit.Transformer.Winding;
import fusetale.circuit.Transistor;
import fusetale.circuit.Wire;
import fusetale.circuit.Zener;
import fusetale.fault.Catalogue;
import fusetale.signal.Waveform;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Heat of everything that warms up, over one cycle of a machine that was looked at: R·I² of copper and contacts, mean of v·i of
 * silicon. Names are those of {@link Bodies}.
 */
final class Losses {
    /** Rise at rated current, and its growth, of contacts: ΔT = 30 K·(I/Irated)^1.85 (MIL-HDBK-217F Notice 2, 15.1). */
    private static final double CONTACT_RISE_KELVIN = 30;

    private static final double CONTACT_EXPONENT = 1.85;

    /** What a pin is rated for where a file does not say: a common 0.156 inch contact with wire of 18 AWG [A]. */
    private static final double USUAL_CONTACT_AMPS = 7;

    /** A link's own resistance, hot over cold at the currents of interest, of which half goes into the clips (judgement). */
    private static final double LINK_SHARE = 0.75;

    private final Seen seen;
    private final Circuit healthy;
    private final Map<String, Double> watts = new HashMap<>();
    private final Map<String, Double> outerWatts = new HashMap<>();

    private final Circuit bodied;
    private final Map<String, Body> bodies = new HashMap<>();

    private Losses(Seen seen, Circuit healthy, Circuit bodied) {
        this.seen = seen;
        this.healthy = healthy;
        this.bodied = bodied;
        Bodies.of(bodied).forEach(b -> bodies.put(b.name(), b));
    }

    /**
     * Heats of a machine.
     *
     * @param healthy as drawn, for what a contact's resistance should be
     * @param bodied the machine whose {@link Bodies} these heats warm: turns that have shorted since then are none of them
     */
    static Heat of(Seen seen, Circuit healthy, Circuit bodied) {
        Losses losses = new Losses(seen, healthy, bodied);
        seen.circuit().parts().forEach(losses::part);
        seen.circuit().connectors().forEach(losses::connector);
        return new Heat(losses.watts, losses.outerWatts);
    }

    private void part(Part part) {
        if (part instanceof Transformer p) {
            transformer(p);
        } else if (part instanceof Coil p) {
            copper(p.name(), p.name(), p.ohms().si());
        } else if (part instanceof DualCoil p) {
            copper(p.name() + ".power", p.name(), p.powerOhms().si());
            copper(p.name() + ".hold", p.name() + ".hold", p.holdOhms().si());
        } else if (part instanceof Relay p) {
            copper(p.name() + ".coil", p.name(), p.winding().ohms().si());
        } else if (part instanceof Resistor p) {
            copper(p.name(), p.name(), p.ohms().si());
        } else if (part instanceof Fuse p) {
            double link = p.fitted().coldOhms().si();
            // an opened link carries next to nothing, and what it does is not heat of its clips
            double ohms = p.clipOhms().si() + (link < 1e6 ? LINK_SHARE * link : 0);
            copper(p.name(), p.name(), ohms);
        } else if (part instanceof Wire p) {
            wire(p);
        } else {
            silicon(part);
        }
    }

    /** One with a rating warms up by itself; what a fault laid through a part warms the part. */
    private void wire(Wire wire) {
        if (wire.ratedAmps() != null) {
            double ratio = rms(wire.name()) / wire.ratedAmps().si();
            watts.put(wire.name(), ratedRiseKelvin(wire) * ratio * ratio); // behind 1 K/W
            return;
        }
        Catalogue.bridged(wire).ifPresent(failed -> within(failed, wire));
    }

    /**
     * Heat of a path through a part that should not be there: the chip's where it leads through silicon, the winding's where it
     * leads through one. A fuse or a resistor is bridged from outside, by foil or by solder, which warms neither.
     */
    private void within(String failed, Wire path) {
        double amps = rms(path.name());
        double heat = amps * amps * path.ohms().si();
        int dot = failed.indexOf('.');
        String part = dot < 0 ? failed : failed.substring(0, dot);
        Body body = bodies.getOrDefault(failed, bodies.get(part));
        if (body == null) {
            outerWatts.merge(part, heat, Double::sum); // a coil of two windings, shorted over both
        } else if (body.nature() == Body.Nature.JUNCTION || body.nature().copper()) {
            watts.merge(body.name(), heat, Double::sum);
        }
    }

    /** Rise at the current by which a conductor is rated [K]. */
    private static double ratedRiseKelvin(Wire wire) {
        Conductor conductor = wire.conductor();
        return conductor != null && conductor.shape() == Conductor.Shape.TRACE
                ? Conductor.TRACE_RISE_KELVIN
                : Conductor.WIRE_RISE_KELVIN;
    }

    private void silicon(Part part) {
        if (part instanceof Diode p) {
            junction(p.name(), p.name(), p.anode(), p.cathode());
        } else if (part instanceof Bridge p) {
            for (int n = 1; n <= 4; n++) {
                Diode leg = p.leg(n);
                junction(leg.name(), leg.name(), leg.anode(), leg.cathode());
            }
        } else if (part instanceof Zener p) {
            junction(p.name(), p.name(), p.anode(), p.cathode());
        } else if (part instanceof Transistor p) {
            junction(p.name(), p.name() + ".collector", p.collector(), p.emitter());
            junction(p.name(), p.name() + ".base", p.base(), p.emitter());
        } else if (part instanceof Darlington p) {
            junction(p.name(), p.name() + ".collector", p.collector(), p.emitter());
            junction(p.name(), p.name() + ".base", p.base(), p.emitter());
        } else if (part instanceof Mosfet p) {
            junction(p.name(), p.name(), p.drain(), p.source());
        } else if (part instanceof Thyristor p) {
            junction(p.name(), p.name(), p.anode(), p.cathode());
        } else if (part instanceof Regulator p) {
            junction(p.name(), p.name(), p.in(), p.out());
            junction(p.name(), p.name() + ".ground", p.in(), p.ground());
        }
    }

    private void transformer(Transformer t) {
        for (Winding w : t.windings()) {
            String first = t.name() + "." + w.name();
            int sections = w.nets().size() - 1;
            double sum = 0;
            for (int k = 1; k <= sections; k++) {
                double amps = rms(k == 1 ? first : first + "." + k);
                sum += amps * amps * w.ohms().si() / sections;
            }
            watts.merge(first, sum, Double::sum);
        }
        boolean fed = rms(t.name() + "." + t.primary().name())
                > t.magnetics().magnetisingAmps().si() / 2;
        double iron = fed ? t.magnetics().coreLossWatts().si() : 0;
        outerWatts.merge(t.name(), iron + deadTurns(t), Double::sum);
    }

    /** Heat of turns that have shorted since: a winding that is no body. */
    private double deadTurns(Transformer t) {
        Optional<Transformer> before = bodied.part(t.name()).map(Transformer.class::cast);
        double sum = 0;
        for (Winding w : t.windings()) {
            boolean known = before.isPresent()
                    && before.get().windings().stream().anyMatch(d -> d.name().equals(w.name()));
            sum += known ? 0 : watts.getOrDefault(t.name() + "." + w.name(), 0.0);
        }
        return sum;
    }

    private void copper(String body, String current, double ohms) {
        double amps = rms(current);
        watts.merge(body, amps * amps * ohms, Double::sum);
    }

    private void junction(String body, String current, Net from, Net to) {
        double mean =
                amps(current).map(a -> seen.volts(from, to).times(a).mean()).orElse(0.0);
        watts.merge(body, Math.max(0, mean), Double::sum);
    }

    /** A good contact warms up with its current as handbooks say, and what it has too many ohms comes on top. */
    private void connector(Connector connector) {
        double rated = connector.ratedAmps() == null
                ? USUAL_CONTACT_AMPS
                : connector.ratedAmps().si();
        for (Connector.Contact pin : connector.pins()) {
            String name = connector.name() + "." + pin.label();
            double amps = rms(name);
            double good = CONTACT_RISE_KELVIN * Math.pow(amps / rated, CONTACT_EXPONENT);
            double more = Math.max(0, pin.ohms().si() - drawnOhms(connector, pin));
            watts.put(name, good / Bodies.CONTACT_KELVIN_PER_WATT + amps * amps * more);
        }
    }

    private double drawnOhms(Connector connector, Connector.Contact pin) {
        return healthy.connector(connector.name()).stream()
                .flatMap(c -> c.pins().stream())
                .filter(p -> p.label().equals(pin.label()))
                .mapToDouble(p -> p.ohms().si())
                .findFirst()
                .orElse(0);
    }

    private double rms(String current) {
        return amps(current).map(Waveform::rms).orElse(0.0);
    }

    private Optional<Waveform> amps(String name) {
        return seen.modelled().element(name).isPresent() ? Optional.of(seen.amps(name)) : Optional.empty();
    }
}
