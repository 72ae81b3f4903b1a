package fusetale.bench;

import fusetale.circuit.Bridge;
import fusetale.circuit.Coil;
import fusetale.circuit.Darlington;
import fusetale.circuit.Diode;
import fusetale.circuit.DualCoil;
import fusetale.circuit.Fuse;
import fusetale.circuit.Lamp;
import fusetale.circuit.Mosfet;
import fusetale.circuit.Net;
import fusetale.circuit.Part;
import fusetale.circuit.Regulator;
import fusetale.circuit.Relay;
import fusetale.circuit.Resistor;
import fusetale.circuit.Thyristor;
import fusetale.circuit.Transformer;
import fusetale.circuit.Transistor;
import fusetale.circuit.Zener;
import fusetale.signal.Waveform;
import java.util.Optional;

/** Heat made in parts, mean over a cycle [W]. */
final class Dissipation {
    private final Seen seen;

    Dissipation(Seen seen) {
        this.seen = seen;
    }

    /** Heat made in a part; 0 where its current has no name. */
    double watts(Part part) {
        if (part instanceof Resistor r) {
            return watts(r.name(), r.one(), r.two());
        } else if (part instanceof Lamp l) {
            return watts(l.name(), l.one(), l.two());
        } else if (part instanceof Diode d) {
            return watts(d.name(), d.anode(), d.cathode());
        } else if (part instanceof Zener z) {
            return watts(z.name(), z.anode(), z.cathode());
        } else if (part instanceof Bridge b) {
            double sum = 0;
            for (int leg = 1; leg <= 4; leg++) {
                sum += watts(b.leg(leg));
            }
            return sum;
        } else if (part instanceof Transistor t) {
            return transistor(t.name(), t.collector(), t.base(), t.emitter());
        } else if (part instanceof Darlington d) {
            return transistor(d.name(), d.collector(), d.base(), d.emitter());
        } else if (part instanceof Mosfet m) {
            return watts(m.name(), m.drain(), m.source());
        } else if (part instanceof Thyristor t) {
            return watts(t.name(), t.anode(), t.cathode());
        } else if (part instanceof Regulator r) {
            return watts(r.name(), r.in(), r.out()) + watts(r.name() + ".ground", r.in(), r.ground());
        } else if (part instanceof Fuse f) {
            return copper(f.name(), f.clipOhms().si());
        }
        return winding(part);
    }

    private double winding(Part part) {
        if (part instanceof Coil c) {
            return copper(c.name(), c.ohms().si());
        } else if (part instanceof DualCoil c) {
            return copper(c.name(), c.powerOhms().si())
                    + copper(c.name() + ".hold", c.holdOhms().si());
        } else if (part instanceof Relay r) {
            return copper(r.name(), r.winding().ohms().si());
        } else if (part instanceof Transformer t) {
            double volts = seen.volts(
                            t.primary().nets().get(0),
                            t.primary().nets().get(t.primary().nets().size() - 1))
                    .rms();
            double share = volts / t.primary().volts().si();
            double sum = t.magnetics().coreLossWatts().si() * share * share;
            for (Transformer.Winding w : t.windings()) {
                int sections = w.nets().size() - 1;
                for (int section = 1; section <= sections; section++) {
                    String name = t.name() + "." + w.name() + (section == 1 ? "" : "." + section);
                    sum += copper(name, w.ohms().si() / sections);
                }
            }
            return sum;
        }
        return 0;
    }

    /** I²R of a named current. */
    double copper(String current, double ohms) {
        return amps(current).map(a -> a.rms() * a.rms() * ohms).orElse(0.0);
    }

    private double transistor(String name, Net collector, Net base, Net emitter) {
        return watts(name + ".collector", collector, emitter) + watts(name + ".base", base, emitter);
    }

    private double watts(String current, Net from, Net to) {
        return amps(current).map(a -> seen.volts(from, to).times(a).mean()).orElse(0.0);
    }

    private Optional<Waveform> amps(String name) {
        return seen.modelled().element(name).isPresent() ? Optional.of(seen.amps(name)) : Optional.empty();
    }
}
