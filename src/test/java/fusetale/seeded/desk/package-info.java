/** Seeded violations of the rules for the window. */
@NullMarked
package fusetale.seeded.desk;

import org.jspecify.annotations.NullMarked;
