package fusetale.bench;

import java.util.Map;

/** Tells how warm parts get when they are left as they are. */
@FunctionalInterface
public interface Warmth {
    /** Air around the parts [°C]. */
    double AIR_CELSIUS = 25;

    /**
     * From here on [°C] a part is too hot to touch: between the burn thresholds of ISO 13732-1 for smooth metal, 65 °C at one
     * second and 55 °C at ten (from memory).
     */
    double BURN_CELSIUS = 60;

    /**
     * Surfaces once everything has settled [°C], by designator, of pins as {@code J3.4}; what nothing is known of is left out.
     *
     * @param seen a look at the machine
     */
    Map<String, Double> celsius(Seen seen);
}
