package fusetale.model;

import fusetale.circuit.Zener;

/** A zener diode is a diode that breaks down at its zener voltage. */
final class ZenerBuilder {
    private ZenerBuilder() {}

    static void build(Zener part, Sketch sketch) {
        DiodeBuilder.junction(
                part.name(),
                part.anode().name(),
                part.cathode().name(),
                part.model().withBreakdownVolts(part.volts().si()),
                sketch);
    }
}
