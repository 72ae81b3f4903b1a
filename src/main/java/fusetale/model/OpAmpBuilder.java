package fusetale.model;

import fusetale.circuit.OpAmp;
import fusetale.mna.Element;
import fusetale.mna.SourceShape;
import fusetale.mna.SwingLaw;

/**
 * An operational amplifier as textbooks model it in one pole (Sedra and Smith, Microelectronic Circuits, chapter on
 * operational amplifiers, from memory): a transconductance into a resistance makes the gain, a capacitance across it the
 * fall of the gain, limits across it the swing, and a follower behind the output resistance the output. Without power it is
 * its input resistance.
 */
final class OpAmpBuilder {
    /** Of the input stage [S]; ours: gain and pole do not depend on it. */
    private static final double INPUT_STAGE_SIEMENS = 1e-3;

    private OpAmpBuilder() {}

    static void build(OpAmp part, Sketch sketch) {
        String name = part.name();
        String ground = sketch.ground();
        String driven = name + ":driven";
        sketch.resistor(
                name + ":input",
                part.plus().name(),
                part.minus().name(),
                part.model().inputOhms());
        if (!sketch.powered()) {
            sketch.carrying(name, part.out().name(), ground, Sketch.OPEN_OHMS);
            return;
        }
        if (part.state() == OpAmp.State.WORKS) {
            follow(part, driven, sketch);
        } else {
            boolean high = part.state() == OpAmp.State.HIGH;
            double volts = high ? part.highestVolts() : part.lowestVolts();
            sketch.voltage(name + ":stuck", driven, ground, new SourceShape.Constant(volts));
        }
        double outputOhms = Math.max(part.model().outputOhms(), Sketch.BOND_OHMS);
        sketch.carrying(name, driven, part.out().name(), outputOhms);
    }

    private static void follow(OpAmp part, String driven, Sketch sketch) {
        String name = part.name();
        String ground = sketch.ground();
        String asked = name + ":asked";
        // from ground into the node, hence minus before plus
        sketch.add(new Element.CurrentByVoltage(
                name + ":stage",
                sketch.node(asked),
                sketch.node(ground),
                sketch.node(part.minus()),
                sketch.node(part.plus()),
                INPUT_STAGE_SIEMENS));
        sketch.resistor(name + ":gain", asked, ground, part.model().gainRatio() / INPUT_STAGE_SIEMENS);
        Double hertz = part.model().unityGainHertz();
        if (hertz != null) {
            sketch.capacitor(name + ":pole", asked, ground, INPUT_STAGE_SIEMENS / (2 * Math.PI * hertz));
        }
        sketch.port(name + ":swing", asked, ground, new SwingLaw(part.lowestVolts(), part.highestVolts()));
        sketch.add(new Element.VoltageByVoltage(
                name + ":follower",
                sketch.node(driven),
                sketch.node(ground),
                sketch.node(asked),
                sketch.node(ground),
                1));
    }
}
