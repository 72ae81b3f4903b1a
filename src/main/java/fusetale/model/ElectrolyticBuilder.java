package fusetale.model;

import fusetale.circuit.Electrolytic;

/** An electrolytic capacitor is a capacitance with its leakage across it, behind its series resistance (ESR). */
final class ElectrolyticBuilder {
    private ElectrolyticBuilder() {}

    static void build(Electrolytic part, Sketch sketch) {
        String plate = part.name() + ":plate";
        String minus = part.minus().name();
        double seriesOhms = Math.max(part.seriesOhms().si(), Sketch.BOND_OHMS);
        sketch.carrying(part.name(), part.plus().name(), plate, seriesOhms);
        sketch.capacitor(part.name() + ":plates", plate, minus, part.farads().si());
        sketch.resistor(
                part.name() + ":leakage", plate, minus, part.leakageOhms().si());
    }
}
