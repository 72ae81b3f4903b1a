package fusetale.model;

import fusetale.circuit.Wire;

/** A wire is its resistance. */
final class WireBuilder {
    private WireBuilder() {}

    static void build(Wire part, Sketch sketch) {
        sketch.carrying(
                part.name(), part.one().name(), part.two().name(), part.ohms().si());
    }
}
