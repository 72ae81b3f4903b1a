package fusetale.model;

import fusetale.circuit.Capacitor;

/** A film or ceramic capacitor is a capacitance with the insulation of its dielectric. */
final class CapacitorBuilder {
    /** Insulation resistance [ohm] of a film capacitor, common practice. */
    private static final double INSULATION_OHMS = 1e11;

    private CapacitorBuilder() {}

    static void build(Capacitor part, Sketch sketch) {
        String one = part.one().name();
        String two = part.two().name();
        sketch.capacitor(part.name(), one, two, part.farads().si());
        sketch.resistor(part.name() + ":insulation", one, two, INSULATION_OHMS);
        sketch.current(part.name(), part.name());
    }
}
