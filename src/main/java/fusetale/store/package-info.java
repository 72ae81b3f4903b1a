/**
 * Writing to disk so that a file is either as it was or as it should be, never half. Knows nothing of circuits. Uses
 * nothing else of the project. Start at {@link fusetale.store.AtomicFile}.
 */
@NullMarked
package fusetale.store;

import org.jspecify.annotations.NullMarked;
