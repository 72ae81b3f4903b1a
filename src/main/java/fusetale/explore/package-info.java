/**
 * The one service that commands and window call: a question in, an outcome with its doubts out. Start at {@link fusetale.explore.Doubt}.
 */
@NullMarked
package fusetale.explore;

import org.jspecify.annotations.NullMarked;
