package fusetale.aftermath;

import fusetale.aftermath.ThermalNetwork.Warmth;
import fusetale.fault.Fault;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Plays one drawn machine forward from the moment of switching on, everything as cool as the air. Between two changes of the
 * machine its loads are those of its periodic state; each body warms up by its thermal network; what wears adds up the share of
 * its time that has gone by (Miner's rule, which for a fuse is its melting integral); copper that warms up takes more or less
 * heat on the straight line between its loads cold and hot. Steps grow with the time since the last change.
 */
final class Play {
    private static final double FIRST_STEP_SECONDS = 0.5e-3;
    private static final double STEP_RATIO = 0.04;
    private static final int MOST_CHANGES = 12;

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
        for (Body body : states.bodies()) {
            bodies.add(new DrawnBody(body, draw, ambientCelsius));
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
        double seconds = start;
        while (seconds < horizonSeconds) {
            double grown = Math.max(FIRST_STEP_SECONDS, STEP_RATIO * (seconds - start));
            double step = Math.min(grown, horizonSeconds - seconds);
            Heats heats = heats(state);
            List<Warmth> later = warmed(heats, step);
            List<Ripe> ripe = ripe(state, heats.hotRatio());
            Optional<Coming> change = tell(coming(later, ripe, step), seconds, step);
            double share = change.map(Coming::share).orElse(1.0);
            if (share < 1) {
                later = warmed(heats, share * step);
            }
            for (int k = 0; k < bodies.size(); k++) {
                bodies.get(k).warmth = later.get(k);
            }
            for (Ripe each : ripe) {
                each.worn().ratio += share * step / each.seconds();
            }
            seconds += share * step;
            if (change.isPresent()) {
                return seconds;
            }
        }
        return seconds;
    }

    /** Everything that comes within a step, soonest first. */
    private List<Coming> coming(List<Warmth> later, List<Ripe> ripe, double step) {
        List<Coming> coming = new ArrayList<>();
        for (int k = 0; k < bodies.size(); k++) {
            DrawnBody body = bodies.get(k);
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
                coming.add(new Coming(
                        Math.max(0, left / step), event(each.wear()), () -> each.worn().happened = true));
            }
        }
        coming.sort(Comparator.comparingDouble(Coming::share)
                .thenComparing(c -> c.what().target() + c.what().harm()));
        return coming;
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
     * Heats of one step.
     *
     * @param ownWatts of each body [W]
     * @param allWatts of all that share its outer stages [W]
     * @param hotRatio how far copper is on its way from cold to hot, weighted by its heat
     */
    private record Heats(double[] ownWatts, double[] allWatts, double hotRatio) {}

    private Heats heats(States.State state) {
        int count = bodies.size();
        double[] own = new double[count];
        double weight = 0;
        double weighted = 0;
        Map<String, Double> sums = new HashMap<>(state.cold().outerWatts());
        for (int k = 0; k < count; k++) {
            Body body = bodies.get(k).body;
            double cold = state.cold().watts(body);
            double ratio = 0;
            if (body.nature().copper()) {
                double celsius = ambientCelsius + bodies.get(k).warmth.riseKelvin();
                ratio = Math.max(0, (celsius - States.COLD_CELSIUS) / (Board.HOT_CELSIUS - States.COLD_CELSIUS));
                weight += cold;
                weighted += cold * ratio;
            }
            own[k] = Math.max(0, cold + ratio * (state.hot().watts(body) - cold));
            sums.merge(body.part(), own[k], Double::sum);
        }
        double[] all = new double[count];
        for (int k = 0; k < count; k++) {
            all[k] = sums.getOrDefault(bodies.get(k).body.part(), 0.0);
        }
        return new Heats(own, all, weight > 0 ? Math.min(1, weighted / weight) : 0);
    }

    private List<Warmth> warmed(Heats heats, double step) {
        List<Warmth> later = new ArrayList<>(bodies.size());
        for (int k = 0; k < bodies.size(); k++) {
            DrawnBody body = bodies.get(k);
            later.add(body.network.after(body.warmth, step, heats.ownWatts()[k], heats.allWatts()[k]));
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

    private List<Ripe> ripe(States.State state, double hotRatio) {
        List<Ripe> ripe = new ArrayList<>();
        for (States.Pair pair : state.wears()) {
            String key = pair.cold().target() + " " + pair.cold().harm();
            Worn how = worn.computeIfAbsent(key, k -> new Worn());
            if (!how.happened) {
                double even = draw.even(key);
                double cold = Math.log(pair.cold().within().at(even));
                double hot = Math.log(pair.hot().within().at(even));
                ripe.add(new Ripe(pair.cold(), how, Math.exp(cold + hotRatio * (hot - cold))));
            }
        }
        return ripe;
    }

    private static Event event(Wear w) {
        return new Event(w.part(), w.place(), w.harm(), w.consequence(), 0, 0, 0, 1, w.source());
    }

    private static Event event(Body b, Limit l) {
        return new Event(b.part(), b.place(), l.harm(), l.consequence(), 0, 0, 0, 1, l.source());
    }
}
