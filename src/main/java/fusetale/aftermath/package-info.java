/**
 * What follows when nothing is held: which fuse melts when, what is taken past its rating, what burns, in which order. Uses
 * {@code quantity}, {@code signal}, {@code circuit}, {@code fault}, {@code mna}, {@code model} and {@code bench}. Start at
 * {@link fusetale.aftermath.Aftermath}; {@link fusetale.aftermath.FuseBand} stands by itself.
 */
@NullMarked
package fusetale.aftermath;

import org.jspecify.annotations.NullMarked;
