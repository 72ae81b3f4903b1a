package fusetale.model;

import fusetale.circuit.Connector;

/** A connector is one resistance a contact. */
final class ConnectorBuilder {
    private ConnectorBuilder() {}

    static void build(Connector connector, Sketch sketch) {
        for (Connector.Contact pin : connector.pins()) {
            sketch.carrying(
                    connector.name() + "." + pin.label(),
                    pin.board().name(),
                    pin.harness().name(),
                    Math.max(pin.ohms().si(), Sketch.BOND_OHMS));
        }
    }
}
