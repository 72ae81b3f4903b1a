package fusetale.model;

import fusetale.circuit.Lamp;
import fusetale.mna.FilamentLaw;

/** A lamp is a filament; several in parallel are one of their common current. */
final class LampBuilder {
    /** Filament at rated voltage [K], common practice: miniature lamps 2200 to 2500, mains lamps 2400 to 2700. */
    private static final double MINIATURE_KELVIN = 2350;

    private static final double MAINS_KELVIN = 2600;
    /** From this rated voltage [V] on a lamp counts as one for the mains. */
    private static final double MAINS_FROM_VOLTS = 60;
    /** Time constant at rated voltage [s], common practice: 50 to 100 ms. */
    private static final double CONSTANT_SECONDS = 0.07;

    private LampBuilder() {}

    static void build(Lamp part, Sketch sketch) {
        filament(
                part.name(),
                part.one().name(),
                part.two().name(),
                part.volts().si(),
                part.amps().si() * part.count(),
                sketch);
    }

    static void filament(String name, String one, String two, double volts, double amps, Sketch sketch) {
        double kelvin = volts < MAINS_FROM_VOLTS ? MINIATURE_KELVIN : MAINS_KELVIN;
        sketch.port(name, one, two, FilamentLaw.rated(volts, amps, kelvin, CONSTANT_SECONDS));
    }
}
