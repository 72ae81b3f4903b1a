package fusetale.match;

import fusetale.bench.Arrangement;
import fusetale.bench.Check;
import fusetale.circuit.Circuit;
import fusetale.circuit.Fuse;
import fusetale.circuit.Lamp;
import fusetale.circuit.Part;
import fusetale.circuit.TestPoint;
import fusetale.explore.Words;
import fusetale.quantity.Notation;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** Minutes that things take at the bench (judgement), from how the bench is set now. */
final class Costs {
    /** Above this a hand stays away (IEC 61140: 60 V d.c., from memory). */
    static final double TOUCH_VOLTS = 60;

    private static final double READING = 0.5;
    private static final double LOOKING = 0.3;
    private static final double EVERY_TIME = 0.3;
    private static final double BEHIND_THE_DOOR = 1;
    private static final double UNDER_THE_TABLE = 2;
    private static final double INSIDE = 0.5;
    private static final double SWITCHING = 1;
    private static final double POWER = 1;
    private static final double FUSE = 0.3;
    private static final double CONNECTOR = 0.5;
    private static final double LEAD = 4;
    private static final double COMMAND = 1;
    private static final double LAMP = 2;
    private static final double SOLDERED = 10;

    private static final Words WORDS = Words.of(Costs.class);

    private final Circuit circuit;
    private final Arrangement now;

    Costs(Circuit circuit, Arrangement now) {
        this.circuit = circuit;
        this.now = now;
    }

    double minutes(Ask ask) {
        return EVERY_TIME + changing(ask.arrangement()) + (ask instanceof Ask.Metered m ? metered(m.check()) : LOOKING);
    }

    private double metered(Check check) {
        return READING + Math.max(access(check.from()), access(check.to()));
    }

    private double access(String point) {
        return circuit.point(point)
                .map(TestPoint::access)
                .map(a -> switch (a) {
                    case BENCH_TOP -> 0.0;
                    case BEHIND_THE_DOOR -> BEHIND_THE_DOOR;
                    case UNDER_THE_TABLE -> UNDER_THE_TABLE;
                })
                .orElse(circuit.ground().name().equals(point) ? 0.0 : INSIDE);
    }

    private double changing(Arrangement to) {
        double minutes = 0;
        if (to.powerOn() != now.powerOn()) {
            minutes += SWITCHING;
        } else if (pullsThePlug(to)) {
            minutes += 2 * SWITCHING;
        }
        minutes += to.powerOn() ? POWER : 0;
        minutes += FUSE * differing(to.pulledFuses(), now.pulledFuses());
        minutes += CONNECTOR * differing(to.unplugged(), now.unplugged());
        minutes += LEAD * differing(to.liftedPins(), now.liftedPins());
        minutes += COMMAND * differing(to.heldOn(), now.heldOn());
        if (to.seriesLampWatts() != null && otherLamp(to)) {
            minutes += LAMP;
        }
        return minutes;
    }

    /** Whether the power is on now and must go off, be it for a moment: nothing goes in or out under power. */
    private boolean pullsThePlug(Arrangement to) {
        boolean rebuilt = otherLamp(to)
                || differing(to.pulledFuses(), now.pulledFuses()) > 0
                || differing(to.unplugged(), now.unplugged()) > 0
                || differing(to.liftedPins(), now.liftedPins()) > 0;
        return now.powerOn() && (!to.powerOn() || rebuilt);
    }

    /** With the power off it does not matter what lies in the mains lead. */
    private boolean otherLamp(Arrangement to) {
        return to.powerOn() && !Objects.equals(to.seriesLampWatts(), now.seriesLampWatts());
    }

    private static long differing(List<String> to, List<String> from) {
        return to.stream().filter(x -> !from.contains(x)).count()
                + from.stream().filter(x -> !to.contains(x)).count();
    }

    /** What to do to the bench before, in words. */
    List<String> deeds(Arrangement to) {
        List<String> deeds = new ArrayList<>();
        if (pullsThePlug(to)) {
            deeds.add(WORDS.say("deed.power-off"));
        }
        Double watts = to.seriesLampWatts();
        if (watts != null && otherLamp(to)) {
            deeds.add(WORDS.say(
                    "deed.series-lamp",
                    Notation.format(new Quantity(watts, Unit.WATT)).replace(" W", "")));
        } else if (otherLamp(to)) {
            deeds.add(WORDS.say("deed.no-lamp"));
        } else if (isBehindLamp(to) && !isBehindLamp(now)) {
            deeds.add(WORDS.say("deed.good-fuses"));
        }
        if (isBehindLamp(now) && !isBehindLamp(to)) {
            deeds.add(WORDS.say("deed.own-fuses"));
        }
        missing(now.liftedPins(), to.liftedPins(), "deed.solder", deeds);
        missing(now.unplugged(), to.unplugged(), "deed.plug", deeds);
        missing(now.pulledFuses(), to.pulledFuses(), "deed.put-back", deeds);
        missing(to.pulledFuses(), now.pulledFuses(), "deed.pull", deeds);
        missing(to.unplugged(), now.unplugged(), "deed.unplug", deeds);
        missing(to.liftedPins(), now.liftedPins(), "deed.lift", deeds);
        if (to.powerOn() && (!now.powerOn() || pullsThePlug(to))) {
            deeds.add(WORDS.say("deed.power-on"));
        }
        missing(to.heldOn(), now.heldOn(), "deed.hold", deeds);
        return deeds;
    }

    /** There good fuses stand in for those that were found, {@link Dictionary#freshFuses}. */
    private static boolean isBehindLamp(Arrangement bench) {
        return bench.powerOn() && bench.seriesLampWatts() != null;
    }

    private static void missing(List<String> to, List<String> from, String key, List<String> deeds) {
        List<String> more = to.stream().filter(x -> !from.contains(x)).toList();
        if (!more.isEmpty()) {
            deeds.add(WORDS.say(key, String.join(", ", more)));
        }
    }

    /** Minutes to change what a repair asks for. */
    double replacing(Repair repair) {
        double minutes = 0;
        for (String name : repair.parts()) {
            Part part = circuit.part(name).orElse(null);
            minutes += part instanceof Fuse ? FUSE : part instanceof Lamp ? 1 : part == null ? CONNECTOR : SOLDERED;
        }
        return minutes;
    }

    /** {@code 4 minutes}, {@code 1 minute}, which is the least. */
    static String said(double minutes) {
        long whole = Math.max(1, Math.round(minutes));
        return whole == 1 ? WORDS.say("minute") : WORDS.say("minutes", whole);
    }
}
