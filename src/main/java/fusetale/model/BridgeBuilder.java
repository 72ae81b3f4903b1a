package fusetale.model;

import fusetale.circuit.Bridge;

/** A bridge is four diodes, its legs. */
final class BridgeBuilder {
    private BridgeBuilder() {}

    static void build(Bridge part, Sketch sketch) {
        for (int leg = 1; leg <= 4; leg++) {
            DiodeBuilder.build(part.leg(leg), sketch);
        }
    }
}
