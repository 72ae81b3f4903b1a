package fusetale.model;

import fusetale.circuit.Mosfet;
import fusetale.circuit.MosfetModel;
import fusetale.mna.MosfetLaw;
import java.util.List;

/** A MOSFET is one law with two ports behind its drain resistance. */
final class MosfetBuilder {
    private MosfetBuilder() {}

    static void build(Mosfet part, Sketch sketch) {
        MosfetModel model = part.model();
        String drain = TransistorBuilder.behind(sketch, part, "drain", model.drainOhms());
        String gate = part.gate().name();
        String source = part.source().name();
        sketch.twoPorts(part.name() + ":channel", List.of(gate, source, drain, source), law(model));
        sketch.current(part.name(), part.name() + ".drain");
    }

    private static MosfetLaw law(MosfetModel model) {
        MosfetLaw.Channel channel = switch (model.channel()) {
            case N -> MosfetLaw.Channel.N;
            case P -> MosfetLaw.Channel.P;
        };
        double above = model.gateVolts() - model.thresholdVolts();
        return new MosfetLaw(
                        channel,
                        model.thresholdVolts(),
                        model.drainAmps() / (above * above),
                        model.earlyVolts(),
                        model.bodySaturationAmps(),
                        model.breakdownVolts())
                .withLinear(model.gateLeakageOhms(), model.gateFarads(), model.drainFarads());
    }
}
