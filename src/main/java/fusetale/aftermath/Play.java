package fusetale.aftermath;

import fusetale.aftermath.ThermalNetwork.Warmth;
import fusetale.circuit.Copper;
import fusetale.fault.FailureMode;
import fusetale.fault.Fault;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Plays one drawn machine forward from the moment of switching on, everything as cool as the air. Between two changes of the
 * machine its loads are those of its periodic state; each body warms up by its thermal network; what wears adds up the share of
 * its time that has gone by (Miner's rule, which for a fuse is its melting integral); copper that warms up takes more or less
 * heat by that power of its resistance which joins its heats cold and hot. Steps grow with the time since the last change.
 */
final class Play {
    private static final double FIRST_STEP_SECONDS = 0.5e-3;
    private static final double STEP_RATIO = 0.04;
    private static final int MOST_CHANGES = 12;

    private static final double LOG_HOT = Math.log(Copper.ratio(States.COLD_CELSIUS, Board.HOT_CELSIUS));

    /** How much more heat than either of its two loads copper may take between or beyond them. */
    private static final double ROOM = 1.3;

    private final States states;
    private final double horizonSeconds;
    private final Draw draw;
    private final double ambientCelsius;
    private final List<DrawnBody> bodies = new ArrayList<>();
    private final Map<String, Worn> worn = new HashMap<>();
    private final List<Fault> happened = new ArrayList<>();
    private final List<Happening> happenings = new ArrayList<>();

    Play(States states, Draw draw, Aftermath.Settings settings) {
        this.states = states;
        this.draw = draw;
        this.horizonSeconds = settings.horizonSeconds();
        this.ambientCelsius = draw.between("air", settings.leastAirCelsius(), settings.mostAirCelsius());
        Map<String, Integer> firsts = new HashMap<>();
        for (Body body : states.bodies()) {
            int index = bodies.size();
            Integer before = firsts.putIfAbsent(body.part(), index);
            bodies.add(new DrawnBody(body, index, before == null ? index : before, draw, ambientCelsius));
        }
    }

    /**
     * Something that happened to this machine.
     *
     * @param what it is, without the range over machines
     * @param seconds when
     */
    record Happening(Event what, double seconds) {}

    /**
     * How it went.
     *
     * @param happenings in order
     * @param end how it ended
     */
    record Course(List<Happening> happenings, Story.End end) {}

    /** How far one process has come: 1 is when it happens. */
    private static final class Worn {
        private double ratio;
        private boolean happened;
    }

    /**
     * Something that will happen within a step.
     *
     * @param share after which share of the step
     * @param what it is
     * @param mark tells what it comes from that it has happened
     */
    private record Coming(double share, Event what, Runnable mark) {}

    Course course() {
        double seconds = 0;
        while (seconds < horizonSeconds) {
            if (happened.size() > MOST_CHANGES) {
                return new Course(happenings, Story.End.CUT_OFF);
            }
            Optional<States.State> state = states.after(happened);
            if (state.isEmpty()) {
                return new Course(happenings, Story.End.UNKNOWN);
            }
            seconds = untilAChange(state.get(), seconds);
        }
        return new Course(happenings, Story.End.RESTS);
    }

    /** Lets time go by in one state until something changes the machine, or to the end; gives when. */
    private double untilAChange(States.State state, double start) {
        List<DrawnBody> live = live(state);
        List<Wearing> processes = processes(state);
        double seconds = start;
        Optional<Coming> change = Optional.empty();
        while (seconds < horizonSeconds && change.isEmpty()) {
            double grown = Math.max(FIRST_STEP_SECONDS, STEP_RATIO * (seconds - start));
            double step = Math.min(grown, horizonSeconds - seconds);
            Heats heats = heats(state);
            List<Warmth> later = warmed(live, heats, step);
            List<Ripe> ripe = ripe(processes, heats.hotRatio);
            change = tell(coming(live, later, ripe, step), seconds, step);
            double share = change.map(Coming::share).orElse(1.0);
            if (share < 1) {
                later = warmed(live, heats, share * step);
            }
            for (int k = 0; k < live.size(); k++) {
                live.get(k).warmth = later.get(k);
            }
            for (Ripe each : ripe) {
                each.worn().ratio += share * step / each.seconds();
            }
            seconds += share * step;
        }
        Heats heats = heats(state);
        Set<DrawnBody> stepped = new HashSet<>(live);
        for (DrawnBody body : bodies) {
            if (!stepped.contains(body)) {
                body.warmth = heats.after(body, seconds - start);
            }
        }
        return seconds;
    }

    /**
     * The bodies that may come to a limit in a state, with all of their parts. What cannot is taken to the end of the state in one
     * step, which for constant heats is exact.
     */
    private List<DrawnBody> live(States.State state) {
        double[] all = new double[bodies.size()];
        for (DrawnBody body : bodies) {
            all[body.first] += Math.max(state.cold(body), state.hot(body));
        }
        Set<Integer> live = new HashSet<>();
        for (DrawnBody body : bodies) {
            double own = Math.max(state.cold(body), state.hot(body));
            double shared = all[body.first] + state.outer(body);
            double most = Math.max(body.network.settledKelvin(own, shared), body.warmth.riseKelvin());
            if (body.limits.stream().anyMatch(l -> !l.passed && l.kelvin < most * ROOM)) {
                live.add(body.first);
            }
        }
        return bodies.stream().filter(b -> live.contains(b.first)).toList();
    }

    /** Everything that comes within a step, soonest first. */
    private List<Coming> coming(List<DrawnBody> live, List<Warmth> later, List<Ripe> ripe, double step) {
        List<Coming> coming = new ArrayList<>();
        for (int k = 0; k < live.size(); k++) {
            DrawnBody body = live.get(k);
            if (lostWith(body.body)) {
                continue;
            }
            double before = body.warmth.riseKelvin();
            double after = later.get(k).riseKelvin();
            for (DrawnBody.DrawnLimit limit : body.limits) {
                if (!limit.passed && after >= limit.kelvin) {
                    double share = after > before ? (limit.kelvin - before) / (after - before) : 0;
                    Event event = event(body.body, limit.limit);
                    coming.add(new Coming(Math.max(0, share), event, () -> limit.passed = true));
                }
            }
        }
        for (Ripe each : ripe) {
            double left = (1 - each.worn().ratio) * each.seconds();
            if (left <= step) {
                coming.add(new Coming(Math.max(0, left / step), event(each.wear()), () -> each.worn().happened = true));
            }
        }
        coming.sort(Comparator.comparingDouble(Coming::share)
                .thenComparing(c -> c.what().target() + c.what().harm()));
        return coming;
    }

    /** A transformer with shorted turns is lost: which of its other secondaries goes next is of no interest. */
    private boolean lostWith(Body body) {
        return body.nature() == Body.Nature.WINDING
                && !body.place().equals(Bodies.PRIMARY)
                && happened.stream()
                        .anyMatch(f -> f.part().equals(body.part())
                                && f.mode() == FailureMode.SHORTED_TURNS
                                && !f.place().equals(body.place()));
    }

    /** Writes down what comes, up to and with the first that changes the machine, which it gives. */
    private Optional<Coming> tell(List<Coming> coming, double seconds, double step) {
        for (Coming each : coming) {
            each.mark().run();
            happenings.add(new Happening(each.what(), seconds + each.share() * step));
            Fault consequence = each.what().consequence();
            if (consequence != null) {
                happened.add(consequence);
                return Optional.of(each);
            }
        }
        return Optional.empty();
    }

    /**
     * Heats of one step: of each body; of all bodies of a part, at the place of its first [W]; and how far copper is on its way from
     * cold to hot in the logarithm of its resistance, weighted by its heat.
     */
    private static final class Heats {
        private final double[] own;
        private final double[] all;
        private final double hotRatio;

        Heats(double[] own, double[] all, double hotRatio) {
            this.own = own;
            this.all = all;
            this.hotRatio = hotRatio;
        }

        Warmth after(DrawnBody body, double seconds) {
            return body.network.after(body.warmth, seconds, own[body.index], all[body.first]);
        }
    }

    private Heats heats(States.State state) {
        double[] own = new double[bodies.size()];
        double[] all = new double[bodies.size()];
        double weight = 0;
        double weighted = 0;
        for (DrawnBody body : bodies) {
            double cold = state.cold(body);
            double watts = cold;
            if (cold > 0 && body.body.nature().copper()) {
                double ratio = hotRatio(ambientCelsius + body.warmth.riseKelvin());
                watts = between(cold, state.hot(body), ratio);
                weight += cold;
                weighted += cold * ratio;
            }
            own[body.index] = watts;
            all[body.first] += watts + (body.index == body.first ? state.outer(body) : 0);
        }
        return new Heats(own, all, weight > 0 ? weighted / weight : 0);
    }

    /** 0 cold, 1 hot, even in the logarithm of the resistance of copper. */
    private static double hotRatio(double celsius) {
        return Math.log(Copper.ratio(States.COLD_CELSIUS, Math.max(States.COLD_CELSIUS, celsius))) / LOG_HOT;
    }

    /** On the power of the resistance that joins both: exact for a winding at constant volts, and for one at constant amperes. */
    private static double between(double cold, double hot, double ratio) {
        return cold > 0 && hot > 0 ? cold * Math.pow(hot / cold, ratio) : cold;
    }

    private static List<Warmth> warmed(List<DrawnBody> live, Heats heats, double step) {
        List<Warmth> later = new ArrayList<>(live.size());
        for (DrawnBody body : live) {
            later.add(heats.after(body, step));
        }
        return later;
    }

    /**
     * A process and the time it takes on this machine at this load.
     *
     * @param wear the process
     * @param worn how far it has come
     * @param seconds from nothing to the end [s]
     */
    private record Ripe(Wear wear, Worn worn, double seconds) {}

    /**
     * A process in one state of this machine.
     *
     * @param wear the process
     * @param worn how far it has come
     * @param logCold logarithm of the time it takes cold [s]
     * @param logHot the same hot
     */
    private record Wearing(Wear wear, Worn worn, double logCold, double logHot) {}

    private List<Wearing> processes(States.State state) {
        List<Wearing> processes = new ArrayList<>();
        for (States.Pair pair : state.wears()) {
            String key = pair.cold().target() + " " + pair.cold().harm();
            double even = draw.even(key);
            processes.add(new Wearing(
                    pair.cold(),
                    worn.computeIfAbsent(key, k -> new Worn()),
                    Math.log(pair.cold().within().at(even)),
                    Math.log(pair.hot().within().at(even))));
        }
        return processes;
    }

    private static List<Ripe> ripe(List<Wearing> processes, double hotRatio) {
        List<Ripe> ripe = new ArrayList<>(processes.size());
        for (Wearing each : processes) {
            if (!each.worn().happened) {
                double log = each.logCold() + hotRatio * (each.logHot() - each.logCold());
                ripe.add(new Ripe(each.wear(), each.worn(), Math.exp(log)));
            }
        }
        return ripe;
    }

    private static Event event(Wear w) {
        return new Event(w.part(), w.place(), w.harm(), w.consequence(), 0, 0, 0, 1, 0, w.source());
    }

    private static Event event(Body b, Limit l) {
        return new Event(b.part(), b.place(), l.harm(), l.consequence(), 0, 0, 0, 1, 0, l.source());
    }
}
