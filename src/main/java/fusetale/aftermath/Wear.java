package fusetale.aftermath;

import fusetale.fault.Fault;
import org.jspecify.annotations.Nullable;

/**
 * What happens to a part after some time at its present load, other than by warming up: a fuse, a lamp, a capacitor at too
 * many volts, a battery.
 *
 * @param part designator
 * @param place what of it; empty for the whole part
 * @param harm what happens
 * @param consequence what the part is from then on; null where it stays what it was
 * @param within how long it takes
 * @param source where the times are from
 */
public record Wear(
        String part, String place, Harm harm, @Nullable Fault consequence, Melting within, String source) {
    /** {@code F201}, or {@code Q205.ce}. */
    String target() {
        return place.isEmpty() ? part : part + "." + place;
    }

    /** Whether two are the same process at two loads. */
    boolean sameAs(Wear other) {
        return part.equals(other.part) && place.equals(other.place) && harm == other.harm;
    }
}
