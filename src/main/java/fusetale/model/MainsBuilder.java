package fusetale.model;

import fusetale.circuit.Circuit;
import fusetale.circuit.Mains;
import fusetale.mna.SourceShape;
import fusetale.quantity.Quantity;

/** The mains is a sine behind the resistance of the house wiring, its neutral bonded to earth at the panel. */
final class MainsBuilder {
    /** Name of the lamp in the live conductor. */
    static final String SERIES_LAMP = "series lamp";

    /** Name of the voltage at the wall. */
    static final String SOURCE = "mains:source";

    /** Neutral from the machine to the bond at the panel [ohm], common practice. */
    private static final double BOND_TO_EARTH_OHMS = 1;

    private MainsBuilder() {}

    static void build(Circuit circuit, Conditions conditions, Sketch sketch) {
        if (!conditions.powerOn()) {
            return;
        }
        Mains mains = circuit.mains();
        String line = Mains.LINE.name();
        String neutral = Mains.NEUTRAL.name();
        Quantity present = mains.presentVolts();
        double peak = Math.sqrt(2) * (present == null ? conditions.mainsVolts() : present.si());
        sketch.voltage(SOURCE, "mains:wall", neutral, new SourceShape.Sine(0, peak, sketch.hertz(), 0));
        if (!circuit.ground().equals(Mains.NEUTRAL)) {
            sketch.resistor("mains:bond", neutral, circuit.ground().name(), BOND_TO_EARTH_OHMS);
        }
        double sourceOhms = Math.max(mains.sourceOhms().si(), Sketch.BOND_OHMS);
        Double watts = conditions.seriesLampWatts();
        if (watts == null) {
            sketch.carrying("mains", "mains:wall", line, sourceOhms);
            return;
        }
        double volts = mains.volts().si();
        sketch.carrying("mains", "mains:wall", Modelled.SERIES_LAMP_NODE, sourceOhms);
        LampBuilder.filament(SERIES_LAMP, Modelled.SERIES_LAMP_NODE, line, volts, watts / volts, sketch);
    }
}
