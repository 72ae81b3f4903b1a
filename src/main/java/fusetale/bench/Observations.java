package fusetale.bench;

import fusetale.bench.Observation.Sight;
import fusetale.circuit.Circuit;
import fusetale.circuit.Coil;
import fusetale.circuit.Connector;
import fusetale.circuit.Controller;
import fusetale.circuit.DualCoil;
import fusetale.circuit.Electrolytic;
import fusetale.circuit.Fuse;
import fusetale.circuit.FuseLink;
import fusetale.circuit.Lamp;
import fusetale.circuit.Part;
import fusetale.circuit.Relay;
import fusetale.signal.Waveform;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * What one sees, hears and feels of a machine without a meter. A pure function of a look: {@link #of}.
 *
 * <p>With the power off there are fuses to look at, and nothing else.
 */
public final class Observations {
    /** Above this [ohm] a link has melted, however the circuit file or a supposition says so. */
    private static final double GONE_OHMS = 1e6;
    /** Above this [ohm] an arrangement has taken it out. */
    private static final double OUT_OHMS = 1e9;

    /**
     * Share of its rated power at which a filament begins to be seen: 798 K (J. W. Draper, Phil. Mag. 30, 1847) by the heat
     * balance of a filament of 2350 K that conducts 2 % of its heat: 0.98·(798/2350)⁴ + 0.02·(798 − 298)/(2350 − 298).
     */
    static final double SEEN_RATIO = 0.018;
    /** Light ∝ V^3.4 and power ∝ V^1.6 (lamp rerating: Fink and Beaty, Standard Handbook, 11e p. 22-8). */
    private static final double LIGHT_BY_POWER = 3.4 / 1.6;

    private static final double DIM_LIGHT_RATIO = 0.5;
    private static final double BRIGHT_LIGHT_RATIO = 1.5;

    /** A supply below this part of what resets the board is none (judgement). */
    private static final double DEAD_RATIO = 0.5;

    /** Ripple of this part of a rail, r.m.s., is heard from what it feeds (common practice: a few per cent). */
    private static final double HUM_RATIO = 0.05;
    /** A rail below this [V] feeds nothing. */
    private static final double RAIL_VOLTS = 1;

    private final Circuit healthy;
    private final Seen seen;
    private final Set<String> absentFuses;
    private final Map<String, Double> celsius;
    private final List<Observation> all = new ArrayList<>();

    private Observations(Circuit healthy, Seen seen, Set<String> absentFuses, Warmth warmth) {
        this.healthy = healthy;
        this.seen = seen;
        this.absentFuses = absentFuses;
        this.celsius = seen.state() == null ? Map.of() : warmth.celsius(seen);
    }

    /**
     * Everything there is to notice, fuses, lamps, coils, the controller, heat and hum, in the order of the healthy circuit's
     * parts, then its connectors.
     *
     * @param healthy the machine as drawn: what its parts are, and whether a supposition took them apart
     * @param seen a look at the machine, healthy or as supposed
     * @param absentFuses fuses that are not in their clips
     * @param warmth how warm parts get
     */
    public static List<Observation> of(Circuit healthy, Seen seen, Set<String> absentFuses, Warmth warmth) {
        Observations observations = new Observations(healthy, seen, absentFuses, warmth);
        boolean powered = seen.state() != null;
        for (Part part : healthy.parts()) {
            Part now = seen.circuit().part(part.name()).orElse(part);
            if (now instanceof Fuse f) {
                observations.fuse(f);
            }
            if (powered) {
                observations.powered(now);
                observations.heat(part.name());
            }
        }
        if (powered) {
            healthy.connectors().forEach(observations::connector);
        }
        return List.copyOf(observations.all);
    }

    /**
     * What fuses look like, in the order of the healthy circuit.
     *
     * @param now the machine as it is
     * @param absentFuses fuses that are not in their clips
     */
    public static List<Observation> fuses(Circuit now, Circuit healthy, Set<String> absentFuses) {
        List<Observation> all = new ArrayList<>();
        for (Part part : healthy.parts()) {
            if (now.part(part.name()).orElse(part) instanceof Fuse fuse) {
                all.add(new Observation(fuse.name(), look(fuse, absentFuses), ""));
            }
        }
        return all;
    }

    /**
     * What the caps of fuses say beside what their holders ask for, in the order of the healthy circuit; nothing of those that
     * are not there.
     *
     * @param now the machine as it is
     * @param absentFuses fuses that are not in their clips
     */
    public static List<Observation> ratings(Circuit now, Circuit healthy, Set<String> absentFuses) {
        List<Observation> all = new ArrayList<>();
        for (Part part : healthy.parts()) {
            if (now.part(part.name()).orElse(part) instanceof Fuse fuse && look(fuse, absentFuses) != Sight.NO_FUSE) {
                all.add(rating(fuse));
            }
        }
        return all;
    }

    /** Of the right amperes but another speed it lets through more than it should, or melts too soon, all the same. */
    private static Observation rating(Fuse fuse) {
        double holds = fuse.fitted().ratedAmps().si();
        double asked = fuse.marked().ratedAmps().si();
        if (holds != asked || fuse.fitted().speed() == fuse.marked().speed()) {
            Sight sight = holds > asked ? Sight.OVER_RATED : holds < asked ? Sight.UNDER_RATED : Sight.RIGHT_RATING;
            return new Observation(fuse.name(), sight, "");
        }
        return fuse.fitted().speed() == FuseLink.Speed.SLOW
                ? new Observation(fuse.name(), Sight.OVER_RATED, "(slow where quick is marked)")
                : new Observation(fuse.name(), Sight.UNDER_RATED, "(quick where slow is marked)");
    }

    private void add(String part, Sight sight, String detail) {
        all.add(new Observation(part, sight, detail));
    }

    private void fuse(Fuse fuse) {
        add(fuse.name(), look(fuse, absentFuses), "");
    }

    private static Sight look(Fuse fuse, Set<String> absentFuses) {
        double ohms = fuse.fitted().coldOhms().si();
        boolean out = ohms > OUT_OHMS || absentFuses.contains(fuse.name());
        return out ? Sight.NO_FUSE : ohms > GONE_OHMS ? Sight.WIRE_GONE : Sight.WIRE_WHOLE;
    }

    private void powered(Part part) {
        if (part instanceof Lamp lamp) {
            lamp(lamp);
        } else if (part instanceof Coil coil && has(coil.name())) {
            add(coil.name(), PlungerLaw.of(coil).at(seen.amps(coil.name())), "");
        } else if (part instanceof Relay relay && has(relay.name())) {
            add(relay.name(), PlungerLaw.of(relay).at(seen.amps(relay.name())), "");
        } else if (part instanceof DualCoil coil && has(coil.name())) {
            Waveform strong = seen.amps(coil.name());
            Waveform held = seen.amps(coil.name() + ".hold");
            DualCoil sound = healthy.part(coil.name())
                    .map(p -> p instanceof DualCoil d ? d : coil)
                    .orElse(coil);
            add(coil.name(), PlungerLaw.of(sound, coil, strong, held, seen.volts(coil.one(), coil.two())), "");
        } else if (part instanceof Controller controller) {
            startUp(controller);
        } else if (part instanceof Electrolytic c) {
            hum(c);
        }
    }

    private boolean has(String current) {
        return seen.modelled().element(current).isPresent();
    }

    private void lamp(Lamp lamp) {
        int drawn = healthy.part(lamp.name()).map(p -> ((Lamp) p).count()).orElse(lamp.count());
        double rated = lamp.volts().si() * lamp.amps().si() * lamp.count();
        double watts = has(lamp.name())
                ? seen.volts(lamp.one(), lamp.two())
                        .times(seen.amps(lamp.name()))
                        .mean()
                : 0;
        Sight sight = brightness(watts / rated);
        String detail = lamp.count() < drawn && sight != Sight.DARK ? "(" + lamp.count() + " of " + drawn + ")" : "";
        add(lamp.name(), sight, detail);
    }

    /** How a filament looks at so many times its rated power. */
    static Sight brightness(double powerRatio) {
        if (!(powerRatio >= SEEN_RATIO)) {
            return Sight.DARK;
        }
        double light = Math.pow(powerRatio, LIGHT_BY_POWER);
        return light < DIM_LIGHT_RATIO ? Sight.DIM : light > BRIGHT_LIGHT_RATIO ? Sight.BRIGHT : Sight.LIT;
    }

    /** The row of lamps counts the checks that pass, in order, and stops before the first that does not. */
    private void startUp(Controller controller) {
        Waveform supply = seen.volts(controller.supply(), controller.ground());
        double needed = controller.resetBelowVolts().si();
        if (supply.mean() < DEAD_RATIO * needed) {
            add(controller.name(), Sight.DEAD, "");
            return;
        }
        if (supply.lowest() < needed) {
            add(controller.name(), Sight.IN_RESET, "");
            return;
        }
        int of = controller.checks().size();
        for (int k = 0; k < of; k++) {
            Controller.StartUpCheck check = controller.checks().get(k);
            double volts = seen.meanVolts(check.net(), controller.ground());
            if (volts < check.lowestVolts().si() || volts > check.highestVolts().si()) {
                add(controller.name(), Sight.STOPS, "at " + k + " of " + of + ", before " + check.label());
                return;
            }
        }
        add(controller.name(), Sight.STARTS, of == 0 ? "" : "(" + of + " of " + of + ")");
    }

    private void hum(Electrolytic c) {
        Waveform volts = seen.volts(c.plus(), c.minus());
        double mean = volts.mean();
        double ratio = volts.alternatingRms() / Math.max(mean, Double.MIN_NORMAL);
        if (mean < RAIL_VOLTS || ratio < HUM_RATIO) {
            add(c.name(), Sight.QUIET, "");
            return;
        }
        double hertz = seen.circuit().mains().hertz().si();
        boolean oneHalf = harmonic(volts, hertz) > harmonic(volts, 2 * hertz);
        add(
                c.name(),
                Sight.HUMS,
                String.format(Locale.ROOT, "at %.0f Hz, ripple %.0f %%", oneHalf ? hertz : 2 * hertz, 100 * ratio));
    }

    /** Amplitude of one frequency in a waveform (Fourier). */
    private static double harmonic(Waveform wave, double hertz) {
        double cosine = 0;
        double sine = 0;
        for (int k = 0; k < wave.size(); k++) {
            double angle = 2 * Math.PI * hertz * wave.seconds(k);
            cosine += wave.weight(k) * wave.value(k) * Math.cos(angle);
            sine += wave.weight(k) * wave.value(k) * Math.sin(angle);
        }
        return 2 * Math.hypot(cosine, sine) / wave.length();
    }

    private void heat(String name) {
        Double surface = celsius.get(name);
        if (surface == null) {
            return;
        }
        boolean hot = surface > Warmth.BURN_CELSIUS;
        add(name, hot ? Sight.TOO_HOT : Sight.NOT_HOT, hot ? shown(surface) : "");
    }

    /** Two figures at most; past what any part survives, only that. */
    private static String shown(double celsius) {
        return celsius > 300
                ? "(above 300 °C)"
                : String.format(Locale.ROOT, "(about %.0f °C)", 5 * Math.rint(celsius / 5));
    }

    private void connector(Connector connector) {
        connector.pins().forEach(pin -> heat(connector.name() + "." + pin.label()));
    }
}
