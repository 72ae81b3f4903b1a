/** The cord with tags: what the meter would say at every test point, strung over the drawing. */
@NullMarked
package fusetale.desk.tags;

import org.jspecify.annotations.NullMarked;
