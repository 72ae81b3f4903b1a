package fusetale.model;

import fusetale.circuit.Part;
import fusetale.circuit.Transistor;
import fusetale.circuit.TransistorModel;
import fusetale.mna.BipolarLaw;
import java.util.List;

/** A transistor is two junctions inside three bulk resistances. */
final class TransistorBuilder {
    private TransistorBuilder() {}

    static void build(Transistor part, Sketch sketch) {
        String name = part.name();
        TransistorModel model = part.model();
        String collector = behind(sketch, part, "collector", model.collectorOhms());
        String base = behind(sketch, part, "base", model.baseOhms());
        String emitter = behind(sketch, part, "emitter", model.emitterOhms());
        sketch.twoPorts(name + ":junctions", List.of(base, emitter, base, collector), law(model));
        sketch.current(name, name + ".collector");
    }

    /** The node behind a pin's bulk resistance, or behind a bond's where none is stated. */
    static String behind(Sketch sketch, Part part, String pin, double ohms) {
        String inner = part.name() + ":" + pin;
        sketch.carrying(part.name() + "." + pin, part.net(pin).name(), inner, Math.max(ohms, Sketch.BOND_OHMS));
        return inner;
    }

    static BipolarLaw law(TransistorModel model) {
        return BipolarLaw.of(
                switch (model.polarity()) {
                    case NPN -> BipolarLaw.Polarity.NPN;
                    case PNP -> BipolarLaw.Polarity.PNP;
                },
                model.saturationAmps(),
                model.forwardGainRatio(),
                model.reverseGainRatio(),
                model.earlyVolts(),
                0, // at mains frequency 100 pF carry some μA; a state for each would cost more than it tells
                model.breakdownVolts());
    }
}
