package fusetale.model;

import fusetale.circuit.Regulator;
import fusetale.circuit.RegulatorModel;
import fusetale.mna.RegulatorLaw;
import java.util.List;

/** A regulator is one law with two ports. */
final class RegulatorBuilder {
    private RegulatorBuilder() {}

    static void build(Regulator part, Sketch sketch) {
        RegulatorModel model = part.model();
        RegulatorLaw law = new RegulatorLaw(
                model.outputVolts(),
                Math.max(model.outputOhms(), Sketch.BOND_OHMS),
                model.dropoutVolts(),
                model.quiescentAmps(),
                model.limitAmps(),
                model.rippleRejectionRatio());
        String in = part.in().name();
        String out = part.out().name();
        sketch.twoPorts(part.name(), List.of(in, out, out, part.ground().name()), law);
        sketch.current(part.name(), part.name() + ".0");
        sketch.current(part.name() + ".ground", part.name() + ".1");
    }
}
