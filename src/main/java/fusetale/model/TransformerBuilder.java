package fusetale.model;

import fusetale.circuit.Net;
import fusetale.circuit.Transformer;
import fusetale.mna.Element;
import java.util.ArrayList;
import java.util.List;

/**
 * A transformer is one core with a coupled inductor for each section of each winding: L(i,j) = n(i)·n(j)·Lm, with the
 * leakage of each section added on the diagonal, so that the matrix is positive definite whatever the turns. Turns are
 * counted with the primary as 1 and follow the no-load voltages, rated voltage × (1 + regulation). The magnetising
 * inductance is Lm = V/(ω·Im), the leakage of a winding its share of its rated impedance, x·V/(ω·I); iron loss is a
 * resistance V²/P across the primary inside its winding resistance. Textbook equivalent circuit (M.I.T. staff, Magnetic
 * Circuits and Transformers, 1943, ch. XII). Taps divide turns, resistance and leakage of a winding evenly.
 */
final class TransformerBuilder {
    /** Where the file says nothing, a winding leaks at least so much of its rated impedance. */
    private static final double LEAST_LEAKAGE_RATIO = 1e-3;
    /** A core that needs less than this part of the rated current to magnetise it behaves no better. */
    private static final double LEAST_MAGNETISING_RATIO = 1e-3;

    private final Transformer part;
    private final Sketch sketch;
    private final List<Element.Ends> ends = new ArrayList<>();
    private final List<Double> turns = new ArrayList<>();
    private final List<Double> leakageHenries = new ArrayList<>();

    private TransformerBuilder(Transformer part, Sketch sketch) {
        this.part = part;
        this.sketch = sketch;
    }

    static void build(Transformer part, Sketch sketch) {
        new TransformerBuilder(part, sketch).build();
    }

    private void build() {
        double primaryVolts = part.primary().volts().si();
        double omega = 2 * Math.PI * sketch.hertz();
        for (Transformer.Winding winding : part.windings()) {
            boolean primary = winding.equals(part.primary());
            double emf = winding.volts().si()
                    * (primary ? 1 : 1 + part.magnetics().regulation().si());
            sections(winding, emf / primaryVolts, omega);
        }
        double ratedAmps = ratedAmps(part.primary());
        double magnetisingAmps = Math.max(part.magnetics().magnetisingAmps().si(), LEAST_MAGNETISING_RATIO * ratedAmps);
        double magnetisingHenries = primaryVolts / (omega * magnetisingAmps);
        List<List<Double>> henries = new ArrayList<>();
        for (int i = 0; i < turns.size(); i++) {
            List<Double> row = new ArrayList<>();
            for (int j = 0; j < turns.size(); j++) {
                row.add(turns.get(i) * turns.get(j) * magnetisingHenries + (i == j ? leakageHenries.get(i) : 0));
            }
            henries.add(row);
        }
        sketch.add(new Element.CoupledInductors(part.name() + ":core", ends, henries));
        double watts = part.magnetics().coreLossWatts().si();
        if (watts > 0) {
            double share = turns.get(0);
            String inside = inside(part.primary(), 0);
            String end = part.primary().nets().get(1).name();
            sketch.resistor(part.name() + ":iron", inside, end, share * share * primaryVolts * primaryVolts / watts);
        }
    }

    private void sections(Transformer.Winding winding, double windingTurns, double omega) {
        List<Net> nets = winding.nets();
        int count = nets.size() - 1;
        double ratio = Math.max(part.magnetics().leakage().si(), LEAST_LEAKAGE_RATIO);
        double leakage = ratio * winding.volts().si() / ratedAmps(winding) / omega;
        for (int k = 0; k < count; k++) {
            String name = part.name() + "." + winding.name() + (count == 1 ? "" : "." + (k + 1));
            String inside = inside(winding, k);
            double ohms = Math.max(winding.ohms().si() / count, Sketch.BOND_OHMS);
            sketch.carrying(name, nets.get(k).name(), inside, ohms);
            if (k == 0) {
                sketch.current(part.name() + "." + winding.name(), name);
            }
            ends.add(sketch.ends(inside, nets.get(k + 1).name()));
            turns.add(windingTurns / count);
            leakageHenries.add(leakage / count);
        }
    }

    private String inside(Transformer.Winding winding, int section) {
        return part.name() + "." + winding.name() + ":inside " + (section + 1);
    }

    /**
     * What a winding is rated for: as stated; else, of a secondary, the current at which its own resistance drops half of
     * the regulation, and of the primary what all secondaries take together.
     */
    private double ratedAmps(Transformer.Winding winding) {
        if (winding.ratedAmps() != null) {
            return winding.ratedAmps().si();
        }
        double volts = winding.volts().si();
        if (!winding.equals(part.primary())) {
            double regulation = Math.max(part.magnetics().regulation().si(), 0.01);
            return regulation * volts / (2 * Math.max(winding.ohms().si(), Sketch.BOND_OHMS));
        }
        double watts = 0;
        for (Transformer.Winding secondary : part.secondaries()) {
            watts += secondary.volts().si() * ratedAmps(secondary);
        }
        return watts > 0 ? watts / volts : 1;
    }
}
