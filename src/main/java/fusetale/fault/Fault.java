package fusetale.fault;

import fusetale.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * One part that failed in one way.
 *
 * @param part designator of a part or a connector
 * @param place what of it: {@code leg1} of a bridge, {@code ce} of a transistor, {@code sol} of a transformer, pin
 *     {@code 4} of a connector; empty where the whole part is meant
 * @param mode how
 * @param amount what there is now (40 % left, 2 ohm, × 1.5 of nominal, 25 A); null for the mode's default
 */
public record Fault(
        String part,
        String place,
        FailureMode mode,
        @Nullable Quantity amount) {
    /** {@code BR201.leg1} or {@code F201}. */
    public String target() {
        return place.isEmpty() ? part : part + "." + place;
    }
}
