/**
 * The one service that commands and window call: a question in, an outcome with its doubts out. Uses everything above it
 * but {@code store}. Start at {@link fusetale.explore.Explorer}.
 */
@NullMarked
package fusetale.explore;

import org.jspecify.annotations.NullMarked;
