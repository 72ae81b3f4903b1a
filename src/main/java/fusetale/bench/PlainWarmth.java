package fusetale.bench;

import fusetale.circuit.Bridge;
import fusetale.circuit.Coil;
import fusetale.circuit.Darlington;
import fusetale.circuit.Diode;
import fusetale.circuit.DualCoil;
import fusetale.circuit.Fuse;
import fusetale.circuit.Mosfet;
import fusetale.circuit.Part;
import fusetale.circuit.Ratings;
import fusetale.circuit.Regulator;
import fusetale.circuit.Relay;
import fusetale.circuit.Resistor;
import fusetale.circuit.Thyristor;
import fusetale.circuit.Transformer;
import fusetale.circuit.Transistor;
import fusetale.circuit.Zener;
import fusetale.quantity.Quantity;
import java.util.OptionalDouble;

/**
 * The simplest law of heat: air plus power times one thermal resistance a part, from its ratings.
 *
 * <p>Resistors follow their derating lines: film is at 155 °C and wirewound (from 3 W on) at 275 °C when it carries its rating
 * in air of 70 °C. Semiconductors: thermal resistance from junction to air; a tenth of that on the chassis (judgement). A
 * transformer rises by 65 K at its ratings (class A insulation, 105 °C in air of 40 °C). Coils of the size of a fist's thumb
 * 8 K/W, relays 45 K/W, fuse clips 40 K/W (judgement).
 */
final class PlainWarmth implements Warmth {
    private static final double RATED_AIR_CELSIUS = 70;
    private static final double FILM_CELSIUS = 155;
    private static final double WIREWOUND_CELSIUS = 275;
    private static final double WIREWOUND_FROM_WATTS = 3;
    private static final double ON_CHASSIS_RATIO = 0.1;
    private static final double TRANSFORMER_RISE_KELVIN = 65;
    private static final double COIL_KELVIN_PER_WATT = 8;
    private static final double RELAY_KELVIN_PER_WATT = 45;
    private static final double CLIPS_KELVIN_PER_WATT = 40;

    @Override
    public OptionalDouble celsius(Part part, Seen seen) {
        double kelvinPerWatt = kelvinPerWatt(part);
        return kelvinPerWatt < Double.POSITIVE_INFINITY
                ? OptionalDouble.of(AIR_CELSIUS + kelvinPerWatt * new Dissipation(seen).watts(part))
                : OptionalDouble.empty();
    }

    /** Thermal resistance from a part's surface to air; infinite where it is not known. */
    private static double kelvinPerWatt(Part part) {
        if (part instanceof Resistor r) {
            double watts = r.ratedWatts().si();
            double hottest = watts < WIREWOUND_FROM_WATTS ? FILM_CELSIUS : WIREWOUND_CELSIUS;
            return (hottest - RATED_AIR_CELSIUS) / watts;
        } else if (part instanceof Diode d) {
            return junction(d, d.model().ratings());
        } else if (part instanceof Zener z) {
            return junction(z, z.model().ratings());
        } else if (part instanceof Bridge b) {
            return junction(b, b.model().ratings());
        } else if (part instanceof Transistor t) {
            return junction(t, t.model().ratings());
        } else if (part instanceof Darlington d) {
            return junction(d, d.model().ratings());
        } else if (part instanceof Mosfet m) {
            return junction(m, m.model().ratings());
        } else if (part instanceof Thyristor t) {
            return junction(t, t.model().ratings());
        } else if (part instanceof Regulator r) {
            return junction(r, r.model().ratings());
        } else if (part instanceof Coil || part instanceof DualCoil) {
            return COIL_KELVIN_PER_WATT;
        } else if (part instanceof Relay) {
            return RELAY_KELVIN_PER_WATT;
        } else if (part instanceof Fuse) {
            return CLIPS_KELVIN_PER_WATT;
        } else if (part instanceof Transformer t) {
            return TRANSFORMER_RISE_KELVIN / ratedWatts(t);
        }
        return Double.POSITIVE_INFINITY;
    }

    private static double junction(Part part, Ratings ratings) {
        boolean onChassis = part.about().mounting().equals("on chassis");
        return ratings.junctionToAirKelvinPerWatt() * (onChassis ? ON_CHASSIS_RATIO : 1);
    }

    /** Heat of a transformer at its ratings; not a number where one winding's is not known. */
    private static double ratedWatts(Transformer t) {
        double watts = t.magnetics().coreLossWatts().si();
        for (Transformer.Winding w : t.windings()) {
            Quantity amps = w.ratedAmps();
            watts +=
                    amps == null ? Double.NaN : amps.si() * amps.si() * w.ohms().si();
        }
        return watts;
    }
}
