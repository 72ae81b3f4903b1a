package fusetale.model;

import fusetale.circuit.Diode;
import fusetale.circuit.DiodeModel;
import fusetale.mna.JunctionLaw;

/** A diode is its series resistance and a junction. */
final class DiodeBuilder {
    /** Of what breakdown is stated for, at least so much is the junction's (judgement). */
    private static final double LEAST_INSIDE_RATIO = 0.1;

    private DiodeBuilder() {}

    static void build(Diode part, Sketch sketch) {
        junction(part.name(), part.anode().name(), part.cathode().name(), part.model(), sketch);
    }

    /** A junction behind its series resistance, which carries the current called {@code name}. */
    static void junction(String name, String anode, String cathode, DiodeModel model, Sketch sketch) {
        String inside = name + ":inside";
        double seriesOhms = Math.max(model.seriesOhms(), Sketch.BOND_OHMS);
        sketch.carrying(name, anode, inside, seriesOhms);
        sketch.port(name + ":junction", inside, cathode, law(model, seriesOhms));
    }

    /**
     * The junction alone: what breakdown is stated for includes the series resistance, which is outside. Of a voltage that drifted
     * to next to nothing some is left to the junction.
     */
    private static JunctionLaw law(DiodeModel model, double seriesOhms) {
        double ohms = Math.max(model.breakdownOhms() - seriesOhms, LEAST_INSIDE_RATIO * model.breakdownOhms());
        double stated = model.breakdownVolts();
        double volts = Math.max(stated - model.breakdownAmps() * seriesOhms, LEAST_INSIDE_RATIO * stated);
        return JunctionLaw.of(model.saturationAmps(), model.idealityRatio())
                .withBreakdown(volts, model.breakdownAmps(), ohms)
                .withLinear(model.junctionFarads(), 1 / model.leakageOhms());
    }
}
