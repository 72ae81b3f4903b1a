package fusetale.model;

import fusetale.circuit.Coil;

/** A coil is its winding resistance in series with its inductance. */
final class CoilBuilder {
    private CoilBuilder() {}

    static void build(Coil part, Sketch sketch) {
        String inside = part.name() + ":inside";
        sketch.carrying(part.name(), part.one().name(), inside, part.ohms().si());
        sketch.inductor(
                part.name() + ":turns",
                inside,
                part.two().name(),
                part.henries().si());
    }
}
