/**
 * Networks of elements and ports and how they are solved: operating point, transient, periodic state. The home of EJML.
 * Uses {@code signal} only and knows nothing of parts. Start at {@link fusetale.mna.Network} and {@link
 * fusetale.mna.Solver}.
 */
@NullMarked
package fusetale.mna;

import org.jspecify.annotations.NullMarked;
