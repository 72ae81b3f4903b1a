package fusetale.circuit;

import fusetale.quantity.Quantity;
import fusetale.quantity.Tolerance;
import fusetale.quantity.Toleranced;
import org.jspecify.annotations.Nullable;

/**
 * A value, perhaps with a tolerance behind it: {@code 8 ohm ±10 %}.
 *
 * @param nominal the value
 * @param tolerance the tolerance, where it is said
 */
record Stated(Quantity nominal, @Nullable Tolerance tolerance) {
    /** With its own tolerance, or this one where none is said. */
    Toleranced or(Tolerance usual) {
        return new Toleranced(nominal, tolerance == null ? usual : tolerance);
    }
}
