package fusetale.model;

import fusetale.circuit.Controller;
import fusetale.mna.DrawLaw;

/** A controller is the current it draws. */
final class ControllerBuilder {
    private ControllerBuilder() {}

    static void build(Controller part, Sketch sketch) {
        DrawLaw law = new DrawLaw(part.ratedVolts().si(), part.ratedAmps().si());
        sketch.port(part.name(), part.supply().name(), part.ground().name(), law);
    }
}
