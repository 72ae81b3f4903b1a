package fusetale.model;

import fusetale.circuit.Resistor;

/** A resistor is a resistor. */
final class ResistorBuilder {
    private ResistorBuilder() {}

    static void build(Resistor part, Sketch sketch) {
        sketch.carrying(
                part.name(), part.one().name(), part.two().name(), part.ohms().si());
    }
}
