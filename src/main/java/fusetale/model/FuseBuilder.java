package fusetale.model;

import fusetale.circuit.Fuse;

/** A fuse is the cold resistance of the link that is fitted and the resistance of its clips. */
final class FuseBuilder {
    private FuseBuilder() {}

    static void build(Fuse part, Sketch sketch) {
        double ohms = part.fitted().coldOhms().si() + part.clipOhms().si();
        sketch.carrying(part.name(), part.one().name(), part.two().name(), ohms);
    }
}
