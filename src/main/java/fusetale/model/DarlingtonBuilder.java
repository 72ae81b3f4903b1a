package fusetale.model;

import fusetale.circuit.Darlington;
import fusetale.circuit.DarlingtonModel;
import fusetale.circuit.TransistorModel;
import java.util.List;

/**
 * A Darlington is two transistors with common collectors, the emitter of the first on the base of the second, a resistor
 * from base to emitter of each and a diode across the output.
 */
final class DarlingtonBuilder {
    private DarlingtonBuilder() {}

    static void build(Darlington part, Sketch sketch) {
        String name = part.name();
        DarlingtonModel model = part.model();
        String collector = part.collector().name();
        String base = part.base().name();
        String emitter = part.emitter().name();
        String middle = name + ":middle";
        TransistorBuilder.bipolar(name + ".first", model.first(), List.of(collector, base, middle), sketch);
        TransistorBuilder.bipolar(name + ".second", model.second(), List.of(collector, middle, emitter), sketch);
        sketch.resistor(name + ":first shunt", base, middle, model.firstShuntOhms());
        sketch.resistor(name + ":second shunt", middle, emitter, model.secondShuntOhms());
        boolean npn = model.second().polarity() == TransistorModel.Polarity.NPN;
        DiodeBuilder.junction(
                name + ".across", npn ? emitter : collector, npn ? collector : emitter, model.across(), sketch);
        sketch.current(name, name + ".second.collector");
        sketch.current(name + ".collector", name + ".second.collector");
        sketch.current(name + ".base", name + ".first.base");
        sketch.current(name + ".emitter", name + ".second.emitter");
    }
}
