package fusetale.model;

import fusetale.circuit.LogicOutput;

/** A logic output is a resistance to its supply and one to ground; the one that is not driven is off. */
final class LogicOutputBuilder {
    /** An output stage that is off [ohm]: some tens of nanoamperes, common practice. */
    private static final double OFF_OHMS = 1e8;

    private LogicOutputBuilder() {}

    static void build(LogicOutput part, Sketch sketch) {
        boolean high = part.state() == LogicOutput.State.HIGH;
        boolean low = part.state() == LogicOutput.State.LOW;
        String name = part.name();
        String out = part.out().name();
        sketch.carrying(
                name + ".high",
                part.supply().name(),
                out,
                high ? Math.max(part.highOhms().si(), Sketch.BOND_OHMS) : OFF_OHMS);
        sketch.carrying(
                name + ".low",
                out,
                part.ground().name(),
                low ? Math.max(part.lowOhms().si(), Sketch.BOND_OHMS) : OFF_OHMS);
        sketch.current(name, high ? name + ".high" : name + ".low");
    }
}
