package fusetale.explore;

import fusetale.aftermath.Conduction;
import fusetale.aftermath.FuseEndurance;
import fusetale.aftermath.JunctionTemperature;
import fusetale.aftermath.SafeCurrent;
import fusetale.aftermath.Surge;
import fusetale.bench.Seen;
import fusetale.circuit.Bridge;
import fusetale.circuit.Capacitor;
import fusetale.circuit.Circuit;
import fusetale.circuit.Darlington;
import fusetale.circuit.Diode;
import fusetale.circuit.DiodeModel;
import fusetale.circuit.Electrolytic;
import fusetale.circuit.Fuse;
import fusetale.circuit.Mosfet;
import fusetale.circuit.Mounting;
import fusetale.circuit.Net;
import fusetale.circuit.Part;
import fusetale.circuit.Ratings;
import fusetale.circuit.Regulator;
import fusetale.circuit.Resistor;
import fusetale.circuit.Thyristor;
import fusetale.circuit.Transistor;
import fusetale.circuit.Zener;
import fusetale.explore.SwapChange.Band;
import fusetale.signal.Waveform;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The figures of one part on one side, as built or as supposed: currents from the periodic state, surges from the runs after
 * switching on.
 */
final class SwapSide {
    private static final double NONE = Double.POSITIVE_INFINITY;

    /** Less than this share of its rating tells nothing of the shape that a rectifier's current has at work. */
    private static final double IDLE_RATIO = 0.005;

    /** R.m.s. over mean of a leg above which a capacitor takes its current in pulses: half a sine has π/2. */
    private static final double PULSES = 1.7;

    /** Data sheets of bridges: derate by 20 % before a capacitor. */
    private static final double CAPACITIVE_RATIO = 0.8;

    private final Seen seen;
    private final Circuit drawn;
    private final Map<String, Surge> surges;
    private final Map<SwapFigure, Figure> figures = new LinkedHashMap<>();
    private boolean idle;

    /**
     * A side.
     *
     * @param seen the look at it
     * @param drawn the circuit with its swaps made and nothing wrong, for parts that a fault took to pieces
     * @param surges worst of each current after switching on
     */
    SwapSide(Seen seen, Circuit drawn, Map<String, Surge> surges) {
        this.seen = seen;
        this.drawn = drawn;
        this.surges = Map.copyOf(surges);
    }

    /**
     * A figure and what the part stands.
     *
     * @param band the figure, in its unit
     * @param rating rating in the same unit; infinite where not known
     */
    record Figure(Band band, double rating) {
        /** A voltage less than this above the other one is the same: steps and rounding. */
        private static final double SAME_RATIO = 1.002;

        /** From here to the same figure elsewhere, where that is higher. */
        Figure upTo(Figure other) {
            return other.band.high() > SAME_RATIO * band.high()
                    ? new Figure(new Band(band.low(), other.band.high()), rating)
                    : this;
        }
    }

    /** Names of the currents of a part whose surges count. */
    static List<String> surging(Part part) {
        if (part instanceof Bridge b) {
            return List.of(
                    b.leg(1).name(), b.leg(2).name(), b.leg(3).name(), b.leg(4).name());
        }
        return part instanceof Diode || part instanceof Fuse ? List.of(part.name()) : List.of();
    }

    /** Whether a rectifier carried too little to know its current's shape: half sines were taken. */
    boolean wasIdle() {
        return idle;
    }

    /** The figures of a part of this name, in the order of {@link SwapFigure}; empty where it stands there no more. */
    Map<SwapFigure, Figure> of(String name) {
        figures.clear();
        part(name).ifPresent(this::figures);
        return new LinkedHashMap<>(figures);
    }

    /** As it stands on the bench, or as drawn where a fault took it to pieces. */
    private Optional<Part> part(String name) {
        return seen.circuit().part(name).or(() -> drawn.part(name));
    }

    /**
     * The same with its voltages from what they are here to what they are on another side.
     *
     * @param other the same machine at the highest mains; empty where it was not looked at
     */
    Map<SwapFigure, Figure> of(String name, Optional<SwapSide> other) {
        Map<SwapFigure, Figure> all = of(name);
        other.ifPresent(there -> there.of(name).forEach((figure, higher) -> {
            if (figure.voltage()) {
                all.computeIfPresent(figure, (f, here) -> here.upTo(higher));
            }
        }));
        return all;
    }

    private void figures(Part part) {
        if (part instanceof Bridge b) {
            List<Diode> legs = new ArrayList<>();
            for (int n = 1; n <= 4; n++) {
                Diode leg = b.leg(n);
                legs.add(part(leg.name())
                        .map(p -> p instanceof Diode d ? d : leg)
                        .orElse(leg));
            }
            rectifier(part, b.model(), legs);
        } else if (part instanceof Diode d) {
            rectifier(part, d.model(), List.of(d));
        } else if (part instanceof Zener z) {
            amps(z.name()).ifPresent(a -> junction(part, z.model().ratings(), watts(a, z.anode(), z.cathode())));
        } else if (part instanceof Transistor t) {
            driver(t.name(), t.model().ratings(), seen.volts(t.collector(), t.emitter()));
            junction(part, t.model().ratings(), watts(t.name(), t.collector(), t.base(), t.emitter()));
        } else if (part instanceof Darlington d) {
            driver(d.name(), d.model().ratings(), seen.volts(d.collector(), d.emitter()));
            junction(part, d.model().ratings(), watts(d.name(), d.collector(), d.base(), d.emitter()));
        } else if (part instanceof Mosfet m) {
            channel(m.name(), m.model().ratings(), seen.volts(m.drain(), m.source()));
            amps(m.name()).ifPresent(a -> junction(part, m.model().ratings(), watts(a, m.drain(), m.source())));
        } else if (part instanceof Thyristor t) {
            driver(t.name(), t.model().ratings(), seen.volts(t.anode(), t.cathode()));
            amps(t.name()).ifPresent(a -> junction(part, t.model().ratings(), watts(a, t.anode(), t.cathode())));
        } else if (part instanceof Regulator r) {
            regulator(r);
        } else if (part instanceof Electrolytic c) {
            Waveform volts = seen.volts(c.plus(), c.minus());
            capacitor(c.name(), volts, volts.highest(), c.ratedVolts().si());
        } else if (part instanceof Capacitor c) {
            Waveform volts = seen.volts(c.one(), c.two());
            // it has no plus: either way round is as much
            capacitor(
                    c.name(),
                    volts,
                    Math.max(volts.highest(), -volts.lowest()),
                    c.ratedVolts().si());
        } else if (part instanceof Resistor r) {
            double volts = seen.volts(r.one(), r.two()).rms();
            put(
                    SwapFigure.DISSIPATION,
                    volts * volts / r.ohms().si(),
                    r.ratedWatts().si());
        } else if (part instanceof Fuse f) {
            fuse(f);
        }
    }

    private void rectifier(Part part, DiodeModel model, List<Diode> legs) {
        List<Waveform> currents = new ArrayList<>();
        double watts = 0;
        double hottest = 0;
        double output = 0;
        double reverse = 0;
        Surge surge = new Surge(0, 0);
        for (Diode leg : legs) {
            Waveform amps = amps(leg.name()).orElse(null);
            if (amps == null) {
                return;
            }
            currents.add(amps);
            double heat = watts(amps, leg.anode(), leg.cathode());
            watts += heat;
            hottest = Math.max(hottest, heat);
            reverse = Math.max(reverse, -seen.volts(leg.anode(), leg.cathode()).lowest());
            surge = surge.or(surges.getOrDefault(leg.name(), surge));
        }
        for (Waveform amps : currents.subList(0, Math.max(1, legs.size() / 2))) {
            output += amps.mean();
        }
        Ratings ratings = model.ratings();
        if (legs.size() > 1) {
            put(SwapFigure.DC_OUTPUT, output, ratings.averageAmps());
        }
        Conduction most = busiest(currents);
        put(SwapFigure.MEAN_CURRENT, most.meanAmps(), legs.size() > 1 ? NONE : ratings.averageAmps());
        put(SwapFigure.RMS_CURRENT, most.rmsAmps(), NONE);
        put(SwapFigure.PEAK_CURRENT, most.peakAmps(), NONE);
        put(SwapFigure.CONDUCTION_ANGLE, most.degrees(), NONE);
        if (surges.containsKey(legs.get(0).name())) {
            put(SwapFigure.SURGE_CURRENT, surge.peakAmps(), ratings.surgeAmps());
            put(SwapFigure.SURGE_HEAT, surge.ampsSquaredSeconds(), ratings.pulseAmpsSquaredSeconds());
        }
        put(SwapFigure.REVERSE_VOLTAGE, reverse, ratings.inverseVolts());
        heat(part, ratings, hottest, watts);
        safe(part, model, currents, output);
    }

    private static Conduction busiest(List<Waveform> currents) {
        Conduction most = Conduction.of(currents.get(0));
        for (Waveform amps : currents) {
            Conduction leg = Conduction.of(amps);
            most = leg.rmsAmps() > most.rmsAmps() ? leg : most;
        }
        return most;
    }

    private void safe(Part part, DiodeModel model, List<Waveform> currents, double output) {
        Ratings ratings = model.ratings();
        boolean bridge = currents.size() > 1;
        boolean known = output > IDLE_RATIO * Math.min(ratings.averageAmps(), 1e3);
        List<Waveform> legs = known
                ? currents
                : bridge
                        ? List.of(
                                SafeCurrent.halfSine(false),
                                SafeCurrent.halfSine(true),
                                SafeCurrent.halfSine(true),
                                SafeCurrent.halfSine(false))
                        : List.of(SafeCurrent.halfSine(false));
        double present = known ? output : bridge ? 2 / Math.PI : 1 / Math.PI;
        idle |= !known;
        double derated = known && busiest(currents).formFactor() > PULSES ? CAPACITIVE_RATIO : 1;
        SafeCurrent safe = SafeCurrent.of(
                amps -> SafeCurrent.rectifier(legs, amps / present, model),
                ratings.thermal(),
                Mounting.of(part.about()),
                derated * ratings.averageAmps());
        figures.put(SwapFigure.SAFE_CURRENT, new Figure(new Band(safe.lowAmps(), safe.highAmps()), NONE));
    }

    private void regulator(Regulator r) {
        Waveform amps = amps(r.name()).orElse(null);
        if (amps == null) {
            return;
        }
        Ratings ratings = r.model().ratings();
        double own = amps(r.name() + ".ground")
                .map(a -> watts(a, r.in(), r.ground()))
                .orElse(0.0);
        double dropped = seen.meanVolts(r.in(), r.out());
        put(SwapFigure.DC_OUTPUT, amps.mean(), ratings.averageAmps());
        Waveform input = seen.volts(r.in(), r.ground());
        put(SwapFigure.INPUT_VOLTAGE, Math.max(input.highest(), -input.lowest()), ratings.inverseVolts());
        junction(r, ratings, watts(amps, r.in(), r.out()) + own);
        SafeCurrent safe = SafeCurrent.of(
                load -> new SafeCurrent.Heat(own + load * dropped, own + load * dropped),
                ratings.thermal(),
                Mounting.of(r.about()),
                ratings.averageAmps());
        figures.put(SwapFigure.SAFE_CURRENT, new Figure(new Band(safe.lowAmps(), safe.highAmps()), NONE));
    }

    /** What switches by junctions: the steady current of its data sheet is a mean. */
    private void driver(String name, Ratings ratings, Waveform volts) {
        switching(name, ratings, volts, ratings.averageAmps(), NONE);
    }

    /** A MOSFET's channel is a resistance: the steady current of its data sheet is what heats it. */
    private void channel(String name, Ratings ratings, Waveform volts) {
        switching(name, ratings, volts, NONE, ratings.averageAmps());
    }

    /** Magnitudes, for what a PNP or P-channel part carries and blocks counts downwards. */
    private void switching(String name, Ratings ratings, Waveform volts, double meanAmps, double rmsAmps) {
        Waveform amps = amps(name).orElse(null);
        if (amps == null) {
            return;
        }
        put(SwapFigure.MEAN_CURRENT, Math.abs(amps.mean()), meanAmps);
        put(SwapFigure.RMS_CURRENT, amps.rms(), rmsAmps);
        put(SwapFigure.PEAK_CURRENT, Math.max(amps.highest(), -amps.lowest()), ratings.surgeAmps());
        put(SwapFigure.HIGHEST_VOLTAGE, Math.max(volts.highest(), -volts.lowest()), ratings.inverseVolts());
    }

    /** A part with one junction, or one that counts as one. */
    private void junction(Part part, Ratings ratings, double watts) {
        heat(part, ratings, watts, watts);
    }

    private void heat(Part part, Ratings ratings, double junctionWatts, double watts) {
        put(SwapFigure.DISSIPATION, watts, ratings.watts());
        JunctionTemperature.Range range =
                JunctionTemperature.of(junctionWatts, watts, ratings.thermal(), Mounting.of(part.about()));
        figures.put(
                SwapFigure.JUNCTION_TEMPERATURE,
                new Figure(
                        new Band(range.lowCelsius(), range.highCelsius()),
                        ratings.thermal().highestCelsius()));
    }

    private void capacitor(String name, Waveform volts, double highestVolts, double ratedVolts) {
        put(SwapFigure.RIPPLE, volts.peakToPeak(), NONE);
        amps(name).ifPresent(a -> put(SwapFigure.RIPPLE_CURRENT, a.rms(), NONE));
        put(SwapFigure.HIGHEST_VOLTAGE, highestVolts, ratedVolts);
    }

    private void fuse(Fuse f) {
        double rated = f.fitted().ratedAmps().si();
        amps(f.name()).ifPresent(a -> put(SwapFigure.RMS_CURRENT, a.rms(), rated));
        Surge surge = surges.get(f.name());
        if (surge != null) {
            double halfCycle = 0.5 / drawn.mains().hertz().si();
            put(SwapFigure.SURGE_CURRENT, surge.peakAmps(), NONE);
            put(
                    SwapFigure.SURGE_HEAT,
                    surge.ampsSquaredSeconds(),
                    FuseEndurance.ampsSquaredSeconds(f.fitted(), halfCycle));
        }
    }

    private double watts(String name, Net collector, Net base, Net emitter) {
        double atCollector =
                amps(name + ".collector").map(a -> watts(a, collector, emitter)).orElse(0.0);
        return atCollector
                + amps(name + ".base").map(a -> watts(a, base, emitter)).orElse(0.0);
    }

    private double watts(Waveform amps, Net from, Net to) {
        return seen.volts(from, to).times(amps).mean();
    }

    private void put(SwapFigure figure, double value, double rating) {
        figures.put(figure, new Figure(Band.at(value), rating));
    }

    private Optional<Waveform> amps(String name) {
        return seen.modelled().element(name).isPresent() ? Optional.of(seen.amps(name)) : Optional.empty();
    }
}
