package fusetale.model;

import fusetale.circuit.Darlington;
import fusetale.circuit.DarlingtonModel;
import fusetale.mna.DarlingtonLaw;
import fusetale.mna.Element;
import java.util.List;

/**
 * A Darlington is two transistors with common collectors, the emitter of the first on the base of the second, a diode
 * across the output and a resistor from base to emitter of each. Of its inner bulk resistances the base of the first and
 * collector and emitter of the second are modelled; those in between carry base current of the second only.
 */
final class DarlingtonBuilder {
    private DarlingtonBuilder() {}

    static void build(Darlington part, Sketch sketch) {
        String name = part.name();
        DarlingtonModel model = part.model();
        String middle = name + ":middle";
        String collector = TransistorBuilder.behind(
                sketch, part, "collector", model.second().collectorOhms());
        String base =
                TransistorBuilder.behind(sketch, part, "base", model.first().baseOhms());
        String emitter =
                TransistorBuilder.behind(sketch, part, "emitter", model.second().emitterOhms());
        sketch.resistor(name + ":first shunt", base, middle, model.firstShuntOhms());
        sketch.resistor(name + ":second shunt", middle, emitter, model.secondShuntOhms());
        DarlingtonLaw law = new DarlingtonLaw(
                TransistorBuilder.law(model.first()),
                TransistorBuilder.law(model.second()),
                model.across().saturationAmps(),
                model.across().idealityRatio());
        sketch.add(new Element.Ported(
                name + ":junctions",
                List.of(sketch.ends(base, middle), sketch.ends(middle, emitter), sketch.ends(middle, collector)),
                law));
        sketch.current(name, name + ".collector");
    }
}
