package fusetale.explore;

import fusetale.aftermath.Stress;
import fusetale.aftermath.Stresses;
import fusetale.aftermath.Temperatures;
import fusetale.bench.Seen;
import fusetale.circuit.Bridge;
import fusetale.circuit.Capacitor;
import fusetale.circuit.Circuit;
import fusetale.circuit.Connector;
import fusetale.circuit.Darlington;
import fusetale.circuit.Diode;
import fusetale.circuit.Electrolytic;
import fusetale.circuit.Fuse;
import fusetale.circuit.Lamp;
import fusetale.circuit.Mosfet;
import fusetale.circuit.Net;
import fusetale.circuit.Part;
import fusetale.circuit.Regulator;
import fusetale.circuit.Resistor;
import fusetale.circuit.Thyristor;
import fusetale.circuit.Transformer;
import fusetale.circuit.Transformer.Winding;
import fusetale.circuit.Transistor;
import fusetale.circuit.Wire;
import fusetale.signal.Waveform;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Holds every part of a machine that was looked at against its ratings. */
final class Strains {
    private static final Words WORDS = Words.of(Strains.class);
    private static final double ROUNDED = 1e6;
    /** A part past this multiple of its rating is taken as lost within ten minutes where nothing melts before. */
    private static final double LOST_BEYOND = 2;

    private final Seen seen;
    private final List<Stress> rows = new ArrayList<>();

    private Strains(Seen seen) {
        this.seen = seen;
    }

    /**
     * All figures that have a rating, the furthest past it first.
     *
     * @param healthy as drawn and arranged
     */
    static List<Stress> of(Seen seen, Circuit healthy) {
        Strains strains = new Strains(seen);
        seen.circuit().parts().forEach(strains::part);
        seen.circuit().connectors().forEach(strains::connector);
        Temperatures.of(seen, healthy).forEach(t -> strains.rows.add(named(t)));
        // what differs by rounding of the solver only, as the two pins of one winding, stays in the order of the file
        return strains.rows.stream()
                .sorted(Comparator.comparingDouble((Stress s) -> Math.rint(s.ratio() * ROUNDED))
                        .reversed())
                .toList();
    }

    private void part(Part part) {
        if (part instanceof Transformer t) {
            t.windings().forEach(w -> winding(t, w));
        } else if (part instanceof Fuse f) {
            amps(f.name()).ifPresent(a -> rows.addAll(Stresses.fuse(f, a)));
        } else if (part instanceof Diode d) {
            diode(d);
        } else if (part instanceof Bridge b) {
            for (int leg = 1; leg <= 4; leg++) {
                diode(b.leg(leg));
            }
        } else if (part instanceof Resistor r) {
            rows.addAll(Stresses.resistor(r, volts(r.one(), r.two())));
        } else if (part instanceof Transistor t) {
            Waveform volts = volts(t.collector(), t.emitter());
            amps(t.name())
                    .ifPresent(
                            a -> rows.addAll(Stresses.driver(t.name(), t.model().ratings(), a, volts)));
            double watts = transistorWatts(t.name(), t.collector(), t.base(), t.emitter());
            rows.addAll(Stresses.dissipation(t.name(), t.model().ratings(), Waveform.steady(watts)));
        } else if (part instanceof Darlington d) {
            Waveform volts = volts(d.collector(), d.emitter());
            amps(d.name())
                    .ifPresent(
                            a -> rows.addAll(Stresses.driver(d.name(), d.model().ratings(), a, volts)));
            double watts = transistorWatts(d.name(), d.collector(), d.base(), d.emitter());
            rows.addAll(Stresses.dissipation(d.name(), d.model().ratings(), Waveform.steady(watts)));
        } else if (part instanceof Mosfet m) {
            Waveform volts = volts(m.drain(), m.source());
            amps(m.name())
                    .ifPresent(a ->
                            rows.addAll(Stresses.channel(m.name(), m.model().ratings(), a, volts)));
            double watts = watts(m.name(), m.drain(), m.source());
            rows.addAll(Stresses.dissipation(m.name(), m.model().ratings(), Waveform.steady(watts)));
        } else if (part instanceof Thyristor t) {
            amps(t.name()).ifPresent(a -> rows.addAll(Stresses.thyristor(t, a, volts(t.anode(), t.cathode()))));
        } else if (part instanceof Regulator r) {
            rows.addAll(Stresses.input(r.name(), r.model().ratings(), volts(r.in(), r.ground())));
            double watts = watts(r.name(), r.in(), r.out()) + watts(r.name() + ".ground", r.in(), r.ground());
            rows.addAll(Stresses.dissipation(r.name(), r.model().ratings(), Waveform.steady(watts)));
        } else if (part instanceof Capacitor c) {
            rows.addAll(Stresses.capacitor(c, volts(c.one(), c.two())));
        } else if (part instanceof Electrolytic c) {
            rows.addAll(Stresses.electrolytic(c, volts(c.plus(), c.minus())));
        } else if (part instanceof Wire w) {
            amps(w.name()).ifPresent(a -> rows.addAll(Stresses.wire(w, a)));
        } else if (part instanceof Lamp l) {
            rows.addAll(Stresses.lamp(l, volts(l.one(), l.two())));
        }
    }

    /** A tapped winding is as hot as its hottest section. */
    private void winding(Transformer transformer, Winding winding) {
        String first = transformer.name() + "." + winding.name();
        List<Stress> sections = new ArrayList<>();
        for (int section = 1; section < winding.nets().size(); section++) {
            amps(section == 1 ? first : first + "." + section)
                    .ifPresent(a -> sections.addAll(Stresses.winding(transformer.name(), winding, a)));
        }
        sections.stream()
                .max(Comparator.comparingDouble(Stress::ratio))
                .map(Strains::named)
                .ifPresent(rows::add);
    }

    /** Turns that a supposition shorts stand in the circuit as a winding of their own, {@code sol~shorted}. */
    private static Stress named(Stress s) {
        String place = s.place().replace("~shorted", WORDS.say("shorted-turns"));
        return new Stress(s.part(), place, s.strain(), s.value(), s.limit());
    }

    private void diode(Diode diode) {
        amps(diode.name()).ifPresent(a -> rows.addAll(Stresses.diode(diode, a, volts(diode.anode(), diode.cathode()))));
    }

    private void connector(Connector connector) {
        for (Connector.Contact contact : connector.pins()) {
            amps(connector.name() + "." + contact.label())
                    .ifPresent(a -> rows.addAll(Stresses.contact(connector, contact.label(), a)));
        }
    }

    private double transistorWatts(String name, Net collector, Net base, Net emitter) {
        return watts(name + ".collector", collector, emitter) + watts(name + ".base", base, emitter);
    }

    /** Mean of a current [A] times the voltage [V] it falls through; 0 where the current has no name. */
    private double watts(String current, Net from, Net to) {
        return amps(current).map(a -> volts(from, to).times(a).mean()).orElse(0.0);
    }

    private Waveform volts(Net from, Net to) {
        return seen.volts(from, to);
    }

    private Optional<Waveform> amps(String name) {
        return seen.modelled().element(name).isPresent() ? Optional.of(seen.amps(name)) : Optional.empty();
    }

    /**
     * Whether a part is lost, at a first look: far past its rating, and further than as built.
     *
     * @param overAsBuilt what is past its rating with nothing wrong
     */
    static boolean isLost(Stress stress, List<Stress> overAsBuilt) {
        double asBuilt = overAsBuilt.stream()
                .filter(s -> s.part().equals(stress.part())
                        && s.place().equals(stress.place())
                        && s.strain() == stress.strain())
                .mapToDouble(Stress::ratio)
                .findFirst()
                .orElse(0);
        return stress.ratio() > LOST_BEYOND && stress.ratio() > 1.2 * asBuilt;
    }
}
