/**
 * For each part kind its failure modes, amounts and words; applying a supposition: circuit in, circuit out. Uses {@code
 * quantity} and {@code circuit}. Start at {@link fusetale.fault.Catalogue}.
 */
@NullMarked
package fusetale.fault;

import org.jspecify.annotations.NullMarked;
