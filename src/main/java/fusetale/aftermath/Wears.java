package fusetale.aftermath;

import fusetale.bench.Seen;
import fusetale.circuit.Battery;
import fusetale.circuit.Bridge;
import fusetale.circuit.Conductor;
import fusetale.circuit.Diode;
import fusetale.circuit.Electrolytic;
import fusetale.circuit.Fuse;
import fusetale.circuit.FuseLink;
import fusetale.circuit.Lamp;
import fusetale.circuit.Part;
import fusetale.circuit.Wire;
import fusetale.fault.Catalogue;
import fusetale.fault.FailureMode;
import fusetale.fault.Fault;
import fusetale.fault.Supposition;
import fusetale.signal.Waveform;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What runs against time in a machine that was looked at, other than by warming up. */
final class Wears {
    /** From here on [Ω] a link is open already. */
    private static final double OPEN_OHMS = 1e6;

    private static final double HOUR = 3600;

    /** Life at rated voltage [h] of lamps, from bright mains ones to miniature ones run for long life (trade lists). */
    private static final double LEAST_LIFE_HOURS = 100;

    private static final double MOST_LIFE_HOURS = 5000;

    /** Life goes with voltage to the −12 to −16 (Fink and Beaty, Standard Handbook for Electrical Engineers, 22-8). */
    private static final double LEAST_LIFE_EXPONENT = 12;

    private static final double MOST_LIFE_EXPONENT = 16;

    /** More than mains in its range and a tolerance may bring. */
    private static final double LAMP_OVER_RATIO = 1.2;

    /** Electrolytics stand a surge of 1.15 times their rating for half a minute (IEC 60384-4, from memory). */
    private static final double SURGE_RATIO = 1.15;

    private static final double FAR_OVER_RATIO = 1.5;

    /** The same standard allows 1.5 V the wrong way round for a short time. */
    private static final double REVERSE_VOLTS = 1.5;

    /** Heat of a leak [W] at which a can of some centimetres comes to boil within minutes, and within hours (judgement). */
    private static final double BOILING_WATTS = 5;

    private static final double WARMING_WATTS = 1;

    private static final String VENT_SOURCE =
            "electrolytics stand 1.15 times their rating for 30 s and 1.5 V reverse (IEC 60384-4, from memory); times"
                    + " beyond, and 1 to 5 W of leak, by judgement";

    /** Memory packs held from 0.06 Ah (button cells) to 2.5 Ah (three cells of the usual round size) (trade lists). */
    private static final double LEAST_AMPERE_HOURS = 0.06;

    private static final double MOST_AMPERE_HOURS = 2.5;

    /** A current below this empties or fills nothing within a day [A]. */
    private static final double IDLE_AMPS = 1e-3;

    /** A charge the machine was built to give does no harm, up to this multiple of it. */
    private static final double MORE_THAN_MEANT = 1.5;

    private final Seen seen;
    private final Seen asBuilt;
    private final Supposition supposed;
    private final List<Wear> wears = new ArrayList<>();

    private Wears(Seen seen, Seen asBuilt, Supposition supposed) {
        this.seen = seen;
        this.asBuilt = asBuilt;
        this.supposed = supposed;
    }

    /**
     * Every process that will end at these loads.
     *
     * @param asBuilt the machine with nothing supposed, for what a battery is meant to be charged with
     * @param supposed what is wrong with it
     */
    static List<Wear> of(Seen seen, Seen asBuilt, Supposition supposed) {
        Wears wears = new Wears(seen, asBuilt, supposed);
        seen.circuit().parts().forEach(wears::part);
        return wears.wears;
    }

    private void part(Part part) {
        if (part instanceof Fuse p) {
            fuse(p);
        } else if (part instanceof Lamp p) {
            lamp(p);
        } else if (part instanceof Electrolytic p) {
            electrolytic(p);
        } else if (part instanceof Battery p) {
            battery(p);
        } else if (part instanceof Wire p) {
            wire(p);
        } else if (part instanceof Diode p) {
            surge(p);
        } else if (part instanceof Bridge p) {
            for (int n = 1; n <= 4; n++) {
                surge(p.leg(n));
            }
        }
    }

    private void fuse(Fuse f) {
        FuseLink link = f.fitted();
        if (link.coldOhms().si() >= OPEN_OHMS) {
            return;
        }
        double amps = amps(seen, f.name()).map(Waveform::rms).orElse(0.0);
        String source = link.standard() == FuseLink.Standard.IEC_60127
                ? "gates of IEC 60127-2"
                : "gates of UL/CSA 248-14, shortest times by makers' melting I²t";
        add(f.name(), "", Harm.FUSE_MELTS, FailureMode.BLOWN, FuseBand.of(link).melting(amps), source);
    }

    /** Onderdonk's time where it is short enough for no heat to be lost; a few times as long where some is (judgement). */
    private void wire(Wire w) {
        Conductor copper = w.conductor();
        if (copper == null) {
            return;
        }
        double amps = amps(seen, w.name()).map(Waveform::rms).orElse(0.0);
        double seconds = Onderdonk.seconds(copper.squareMillimetres(), amps, Stress.AIR_CELSIUS);
        if (seconds < Onderdonk.GOOD_TO_SECONDS) {
            add(
                    w.name(),
                    "",
                    Harm.WIRE_MELTS,
                    FailureMode.OPEN,
                    new Melting(seconds, 3 * seconds),
                    "Onderdonk's equation, and three times that for heat that is lost");
        }
    }

    private void lamp(Lamp l) {
        double ratio = seen.volts(l.one(), l.two()).rms() / l.volts().si();
        if (ratio > LAMP_OVER_RATIO) {
            double least = LEAST_LIFE_HOURS * HOUR * Math.pow(ratio, -MOST_LIFE_EXPONENT);
            double most = MOST_LIFE_HOURS * HOUR * Math.pow(ratio, -LEAST_LIFE_EXPONENT);
            add(
                    l.name(),
                    "",
                    Harm.LAMP_BURNS_OUT,
                    FailureMode.OPEN,
                    new Melting(least, most),
                    "life by voltage to the −12 to −16 (Standard Handbook for Electrical Engineers)");
        }
    }

    private void electrolytic(Electrolytic c) {
        Waveform volts = seen.volts(c.plus(), c.minus());
        boolean turned =
                supposed.faults().stream().anyMatch(f -> f.part().equals(c.name()) && f.mode() == FailureMode.REVERSED);
        double forward = turned ? -volts.lowest() : volts.highest();
        double reverse = turned ? volts.mean() : -volts.mean();
        double ratio = forward / c.ratedVolts().si();
        double watts = volts.rms() * volts.rms() * (1 / c.leakageOhms().si() + leaksSiemens(c));
        if (ratio > FAR_OVER_RATIO || reverse > 2 * REVERSE_VOLTS || watts > BOILING_WATTS) {
            add(c.name(), "", Harm.VENTS, null, new Melting(2, 600), VENT_SOURCE);
        } else if (ratio > SURGE_RATIO || reverse > REVERSE_VOLTS || watts > WARMING_WATTS) {
            add(c.name(), "", Harm.VENTS, null, new Melting(30, 10 * HOUR), VENT_SOURCE);
        }
    }

    /** Of what leads through it by fault, shorted or leaky [S]. */
    private double leaksSiemens(Electrolytic c) {
        return seen.circuit().parts().stream()
                .filter(Wire.class::isInstance)
                .map(Wire.class::cast)
                .filter(w -> Catalogue.bridged(w).filter(c.name()::equals).isPresent())
                .mapToDouble(w -> 1 / w.ohms().si())
                .sum();
    }

    /** Current out of plus empties it, current into it fills it; the same the other way round where it is reversed. */
    private void battery(Battery b) {
        double out = -amps(seen, b.name()).map(Waveform::mean).orElse(0.0);
        double meant = -amps(asBuilt, b.name()).map(Waveform::mean).orElse(0.0);
        boolean asMeant = out * meant > 0 && Math.abs(out) < MORE_THAN_MEANT * Math.abs(meant);
        if (Math.abs(out) < IDLE_AMPS || asMeant) {
            return;
        }
        double soonest = LEAST_AMPERE_HOURS * HOUR / Math.abs(out);
        double latest = MOST_AMPERE_HOURS * HOUR / Math.abs(out);
        if (out > 0) {
            add(b.name(), "", Harm.BATTERY_EMPTIES, null, new Melting(soonest, latest), "0.06 to 2.5 Ah (trade lists)");
        } else {
            // found at any charge; nickel-cadmium stands a tenth of its capacity for hours beyond full, others nothing
            add(
                    b.name(),
                    "",
                    Harm.BATTERY_OVERCHARGED,
                    null,
                    new Melting(0.1 * soonest, 1.6 * latest),
                    "0.06 to 2.5 Ah found at any charge, 1.6 times that being charged in (trade lists)");
        }
    }

    /**
     * More I²t in one cycle than a junction is rated for: lost within some cycles. The rating is for one pulse from a junction
     * as warm as it may be; a part stands up to three times as much (judgement).
     */
    private void surge(Diode d) {
        double rated = d.model().ratings().pulseAmpsSquaredSeconds();
        Optional<Waveform> amps = amps(seen, d.name());
        if (amps.isEmpty() || !Double.isFinite(rated)) {
            return;
        }
        double rms = amps.get().rms();
        double cycle = amps.get().length();
        double ratio = rms * rms * cycle / rated;
        if (ratio > 1) {
            int dot = d.name().indexOf('.');
            add(
                    dot < 0 ? d.name() : d.name().substring(0, dot),
                    dot < 0 ? "" : d.name().substring(dot + 1),
                    Harm.SURGE,
                    FailureMode.SHORT,
                    new Melting(cycle / 2, ratio > 3 ? 3 * cycle : 60 * cycle),
                    "I²t of one half-cycle of its data sheet, and three times that (judgement)");
        }
    }

    private void add(String part, String place, Harm harm, @Nullable FailureMode mode, Melting within, String source) {
        Fault consequence = mode == null ? null : new Fault(part, place, mode, null);
        wears.add(new Wear(part, place, harm, consequence, within, source));
    }

    private static Optional<Waveform> amps(Seen seen, String name) {
        return seen.modelled().element(name).isPresent() ? Optional.of(seen.amps(name)) : Optional.empty();
    }
}
