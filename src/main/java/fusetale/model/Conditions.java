package fusetale.model;

import org.jspecify.annotations.Nullable;

/**
 * What feeds the circuit.
 *
 * @param powerOn whether the plug is in and the mains on
 * @param mainsVolts r.m.s. voltage of the mains [V], 0 or more
 * @param seriesLampWatts wattage of a lamp for the nominal mains voltage in the live conductor; null for none
 */
public record Conditions(
        boolean powerOn, double mainsVolts, @Nullable Double seriesLampWatts) {
    /** Refuses voltages and wattages that are none. */
    public Conditions {
        if (!(mainsVolts >= 0 && mainsVolts < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("mains of " + mainsVolts + " V");
        }
        if (seriesLampWatts != null && !(seriesLampWatts > 0 && seriesLampWatts < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a series lamp of " + seriesLampWatts + " W; it must be above 0");
        }
    }

    /** Plug in. */
    public static Conditions mains(double volts) {
        return new Conditions(true, volts, null);
    }

    /** Plug out. */
    public static Conditions unplugged() {
        return new Conditions(false, 0, null);
    }
}
