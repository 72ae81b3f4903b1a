/** The window: views, view-models and what they work with. It asks {@code explore}; it computes nothing of its own. */
@NullMarked
package fusetale.desk;

import org.jspecify.annotations.NullMarked;
