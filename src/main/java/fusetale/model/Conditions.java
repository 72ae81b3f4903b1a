package fusetale.model;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What feeds the circuit.
 *
 * @param powerOn whether the plug is in and the mains on
 * @param mainsVolts r.m.s. voltage of the mains [V], 0 or more
 * @param seriesLampWatts wattage of a lamp for the nominal mains voltage in the live conductor; null for none
 * @param timed logic outputs that leave their level at rest for a while
 */
public record Conditions(
        boolean powerOn, double mainsVolts, @Nullable Double seriesLampWatts, List<TimedOutput> timed) {
    /** Refuses voltages and wattages that are none. */
    public Conditions {
        timed = List.copyOf(timed);
        if (!(mainsVolts >= 0 && mainsVolts < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("mains of " + mainsVolts + " V");
        }
        if (seriesLampWatts != null && !(seriesLampWatts > 0 && seriesLampWatts < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a series lamp of " + seriesLampWatts + " W; it must be above 0");
        }
    }

    /** With every logic output at its level. */
    public Conditions(boolean powerOn, double mainsVolts, @Nullable Double seriesLampWatts) {
        this(powerOn, mainsVolts, seriesLampWatts, List.of());
    }

    /** The same with logic outputs that leave their level at rest for a while. */
    public Conditions with(List<TimedOutput> outputs) {
        return new Conditions(powerOn, mainsVolts, seriesLampWatts, outputs);
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
