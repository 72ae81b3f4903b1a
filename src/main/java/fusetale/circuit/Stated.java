package fusetale.circuit;

import fusetale.quantity.Quantity;
import fusetale.quantity.Tolerance;
import org.jspecify.annotations.Nullable;

/**
 * A value, perhaps with a tolerance behind it: {@code 8 ohm ±10 %}.
 *
 * @param nominal the value
 * @param tolerance the tolerance, where it is said
 */
record Stated(Quantity nominal, @Nullable Tolerance tolerance) {}
