/**
 * Files of the program's own: where they are on each system, preferences, repairs, what was opened last, and writing so that a
 * file is either as it was or as it should be, never half. Texts in, texts out: knows nothing of circuits. Uses nothing else of
 * the project. Start at {@link fusetale.store.Store} and {@link fusetale.store.AtomicFile}.
 */
@NullMarked
package fusetale.store;

import org.jspecify.annotations.NullMarked;
