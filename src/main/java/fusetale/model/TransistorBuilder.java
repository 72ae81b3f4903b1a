package fusetale.model;

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
        String collector = name + ":collector";
        String base = name + ":base";
        String emitter = name + ":emitter";
        sketch.carrying(name + ".collector", part.collector().name(), collector, bulk(model.collectorOhms()));
        sketch.carrying(name + ".base", part.base().name(), base, bulk(model.baseOhms()));
        sketch.carrying(name + ".emitter", part.emitter().name(), emitter, bulk(model.emitterOhms()));
        sketch.twoPorts(name + ":junctions", List.of(base, emitter, base, collector), law(model));
        sketch.current(name, name + ".collector");
    }

    /** A bulk resistance, a bond's where none is stated. */
    static double bulk(double ohms) {
        return Math.max(ohms, Sketch.BOND_OHMS);
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
