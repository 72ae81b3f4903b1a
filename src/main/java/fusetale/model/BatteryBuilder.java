package fusetale.model;

import fusetale.circuit.Battery;
import fusetale.mna.SourceShape;

/** A battery is its open-circuit voltage behind its internal resistance. */
final class BatteryBuilder {
    private BatteryBuilder() {}

    static void build(Battery part, Sketch sketch) {
        String cells = part.name() + ":cells";
        double seriesOhms = Math.max(part.seriesOhms().si(), Sketch.BOND_OHMS);
        sketch.carrying(part.name(), part.plus().name(), cells, seriesOhms);
        sketch.voltage(
                part.name() + ":charge",
                cells,
                part.minus().name(),
                new SourceShape.Constant(part.volts().si()));
    }
}
