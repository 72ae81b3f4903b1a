package fusetale.bench;

import fusetale.circuit.Part;
import java.util.OptionalDouble;

/** Tells how warm a part gets when it is left as it is. */
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
     * Surface of a part once it has settled [°C]; empty where nothing is known of it.
     *
     * @param part a part of the machine seen
     * @param seen a look at the machine
     */
    OptionalDouble celsius(Part part, Seen seen);
}
