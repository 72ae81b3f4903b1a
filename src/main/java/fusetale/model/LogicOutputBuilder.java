package fusetale.model;

import fusetale.circuit.LogicOutput;
import fusetale.mna.TimedContactLaw;
import java.util.List;

/** A logic output is a resistance to its supply and one to ground; the one that is not driven is off. */
final class LogicOutputBuilder {
    /** An output stage that is off [ohm]: some tens of nanoamperes, common practice. */
    private static final double OFF_OHMS = 1e8;

    private LogicOutputBuilder() {}

    static void build(LogicOutput part, Sketch sketch) {
        String out = part.out().name();
        side(
                part,
                LogicOutput.State.HIGH,
                List.of(part.supply().name(), out),
                part.highOhms().si(),
                sketch);
        side(
                part,
                LogicOutput.State.LOW,
                List.of(out, part.ground().name()),
                part.lowOhms().si(),
                sketch);
        LogicOutput.State at =
                sketch.timed(part.name()).map(TimedOutput::working).orElse(part.state());
        sketch.alias(part.name(), side(part, at == LogicOutput.State.HIGH ? at : LogicOutput.State.LOW));
    }

    private static String side(LogicOutput part, LogicOutput.State side) {
        return part.name() + (side == LogicOutput.State.HIGH ? ".high" : ".low");
    }

    /** One of the two resistances between its {@code ends}: steady, or changing over for as long as the output works. */
    private static void side(LogicOutput part, LogicOutput.State side, List<String> ends, double ohms, Sketch sketch) {
        String name = side(part, side);
        double driven = Math.max(ohms, Sketch.BOND_OHMS);
        boolean before = part.state() == side;
        TimedOutput timed = sketch.timed(part.name()).orElse(null);
        if (timed == null || (timed.working() == side) == before || driven >= OFF_OHMS) {
            sketch.carrying(name, ends.get(0), ends.get(1), before ? driven : OFF_OHMS);
            return;
        }
        sketch.port(
                name,
                ends.get(0),
                ends.get(1),
                new TimedContactLaw(driven, OFF_OHMS, before, timed.fromSeconds(), timed.toSeconds()));
    }
}
