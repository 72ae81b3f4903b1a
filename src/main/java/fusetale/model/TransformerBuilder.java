package fusetale.model;

import fusetale.circuit.Transformer;
import fusetale.mna.Element;

/**
 * A transformer is a magnetising inductance with the iron loss beside it, and for each section of each winding an ideal
 * transformer behind the section's resistance and leakage inductance: the textbook equivalent circuit (M.I.T. staff,
 * Magnetic Circuits and Transformers, 1943, ch. XII), for any number of windings.
 *
 * <p>Turns are counted with the primary as 1 and follow the no-load voltages, rated voltage × (1 + regulation). The
 * magnetising inductance is Lm = V/(ω·Im), the iron loss V²/P, both at an inner node {@code T1:core} whose voltage is the
 * e.m.f. of the primary; each section repeats that voltage times its turns and feeds its current times its turns back.
 * The leakage of a winding is its share of its rated impedance, x·V/(ω·I). Across it lies {@link #DAMPING_RATIO} times its
 * reactance: eddy currents in copper and core keep a real winding from ringing with the capacitance of a diode that turns
 * off, at no cost at mains frequency. Taps divide turns, resistance and leakage of a winding evenly.
 */
final class TransformerBuilder {
    /** Where the file says nothing, a winding leaks at least so much of its rated impedance. */
    private static final double LEAST_LEAKAGE_RATIO = 1e-3;
    /** A core that needs less than this part of the rated current to magnetise it behaves no better. */
    private static final double LEAST_MAGNETISING_RATIO = 1e-3;
    /** Resistance across a leakage inductance over its reactance at mains frequency; common practice in surge studies. */
    private static final double DAMPING_RATIO = 100;

    private final Transformer part;
    private final Sketch sketch;
    private final double omega;
    private final String core;
    private final String ground;

    private TransformerBuilder(Transformer part, Sketch sketch) {
        this.part = part;
        this.sketch = sketch;
        this.omega = 2 * Math.PI * sketch.ratedHertz();
        this.core = part.name() + ":core";
        this.ground = sketch.ground();
    }

    static void build(Transformer part, Sketch sketch) {
        new TransformerBuilder(part, sketch).build();
    }

    private void build() {
        double primaryVolts = part.primary().volts().si();
        for (Transformer.Winding winding : part.windings()) {
            boolean primary = winding.equals(part.primary());
            double emf = winding.volts().si()
                    * (primary ? 1 : 1 + part.magnetics().regulation().si());
            for (int k = 0; k < winding.nets().size() - 1; k++) {
                section(winding, k, emf / primaryVolts);
            }
            if (winding.nets().size() > 2) {
                sketch.current(name(winding), section(winding, 0));
            }
        }
        double magnetisingAmps = Math.max(
                part.magnetics().magnetisingAmps().si(), LEAST_MAGNETISING_RATIO * part.ratedAmps(part.primary()));
        sketch.inductor(core + " magnetising", core, ground, primaryVolts / (omega * magnetisingAmps));
        double watts = part.magnetics().coreLossWatts().si();
        if (watts > 0) {
            sketch.resistor(core + " loss", core, ground, primaryVolts * primaryVolts / watts);
        }
    }

    private void section(Transformer.Winding winding, int k, double windingTurns) {
        int count = winding.nets().size() - 1;
        String section = section(winding, k);
        String start = winding.nets().get(k).name();
        String end = winding.nets().get(k + 1).name();
        String copper = section + ":copper";
        String emf = section + ":emf";
        double ohms = Math.max(winding.ohms().si() / count, Sketch.BOND_OHMS);
        double turns = windingTurns / count;
        double ratio = Math.max(part.magnetics().leakage().si(), LEAST_LEAKAGE_RATIO);
        double reactance = ratio * winding.volts().si() / part.ratedAmps(winding) / count;
        sketch.carrying(section, start, copper, ohms);
        sketch.inductor(section + ":leakage", copper, emf, reactance / omega);
        sketch.resistor(section + ":eddies", copper, emf, DAMPING_RATIO * reactance);
        sketch.add(new Element.VoltageByVoltage(
                section + ":turns", sketch.node(emf), sketch.node(end), sketch.node(core), sketch.node(ground), turns));
        // the section's current, seen as the drop across its resistance, magnetises the core
        sketch.add(new Element.CurrentByVoltage(
                section + ":ampere turns",
                sketch.node(ground),
                sketch.node(core),
                sketch.node(start),
                sketch.node(copper),
                turns / ohms));
    }

    private String name(Transformer.Winding winding) {
        return part.name() + "." + winding.name();
    }

    /** The winding's own name where it is not tapped, {@code T1.sol.2} for its second section where it is. */
    private String section(Transformer.Winding winding, int k) {
        return winding.nets().size() == 2 ? name(winding) : name(winding) + "." + (k + 1);
    }
}
