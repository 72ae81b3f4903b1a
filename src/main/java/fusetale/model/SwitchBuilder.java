package fusetale.model;

import fusetale.circuit.Switch;

/** A switch is its contact, closed or open. */
final class SwitchBuilder {
    private SwitchBuilder() {}

    static void build(Switch part, Sketch sketch) {
        double ohms = part.closed() ? Math.max(part.contactOhms().si(), Sketch.BOND_OHMS) : Sketch.OPEN_OHMS;
        sketch.carrying(part.name(), part.one().name(), part.two().name(), ohms);
    }
}
