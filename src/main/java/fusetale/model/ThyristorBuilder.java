package fusetale.model;

import fusetale.circuit.Thyristor;
import fusetale.circuit.ThyristorModel;
import fusetale.mna.ThyristorLaw;
import java.util.List;

/**
 * A thyristor is one law with two ports, and across it a resistor and a capacitor too small to load anything: step control
 * looks at capacitors, and so lays short steps around the instant of firing.
 */
final class ThyristorBuilder {
    /** 10 Mohm and 10 pF: a tenth of a millisecond, an input of a meter at most. */
    private static final double WATCH_OHMS = 10e6;

    private static final double WATCH_FARADS = 10e-12;

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
        String watch = part.name() + ":watch";
        sketch.resistor(watch + " ohms", anode, watch, WATCH_OHMS);
        sketch.capacitor(watch + " farads", watch, cathode, WATCH_FARADS);
        sketch.current(part.name(), part.name() + ":junctions.1");
        sketch.current(part.name() + ".gate", part.name() + ":junctions.0");
    }
}
