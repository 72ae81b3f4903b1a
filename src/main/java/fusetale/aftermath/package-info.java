/**
 * What follows when nothing is held: which fuse melts when, what is taken past its rating. Uses {@code quantity}, {@code
 * signal}, {@code circuit}. Start at {@link fusetale.aftermath.FuseBand}.
 */
@NullMarked
package fusetale.aftermath;

import org.jspecify.annotations.NullMarked;
