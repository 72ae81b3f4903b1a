/**
 * SI units, bench notation, tolerances and preferred values. Uses nothing else of the project. Start at {@link
 * fusetale.quantity.Notation}.
 */
@NullMarked
package fusetale.quantity;

import org.jspecify.annotations.NullMarked;
