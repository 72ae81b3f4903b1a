/**
 * For each part kind, and the mains, its failure modes, amounts, priors and words, in one class and one stretch of the
 * package's {@code words.properties} each; applying a supposition: circuit in, circuit out. Uses {@code
 * quantity} and {@code circuit}. Start at {@link fusetale.fault.Catalogue}.
 */
@NullMarked
package fusetale.fault;

import org.jspecify.annotations.NullMarked;
