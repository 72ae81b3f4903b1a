package fusetale.model;

import fusetale.circuit.Thyristor;
import fusetale.circuit.ThyristorModel;
import fusetale.mna.ThyristorLaw;
import java.util.List;

/** A thyristor is one law with two ports. */
final class ThyristorBuilder {
    private ThyristorBuilder() {}

    static void build(Thyristor part, Sketch sketch) {
        ThyristorModel model = part.model();
        ThyristorLaw law = new ThyristorLaw(
                new ThyristorLaw.Gate(model.triggerAmps(), model.triggerVolts(), model.gateOhms()),
                new ThyristorLaw.Main(
                        model.latchingAmps(),
                        model.holdingAmps(),
                        model.thresholdVolts(),
                        model.slopeOhms(),
                        model.leakageOhms(),
                        model.farads(),
                        model.breakdownVolts()),
                model.turnOffSeconds());
        String gate = part.gate().name();
        String anode = part.anode().name();
        String cathode = part.cathode().name();
        sketch.twoPorts(part.name() + ":junctions", List.of(gate, cathode, anode, cathode), law);
        sketch.current(part.name(), part.name() + ":junctions.1");
        sketch.current(part.name() + ".gate", part.name() + ":junctions.0");
    }
}
