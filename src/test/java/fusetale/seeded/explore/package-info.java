/** Stands for the service that solves. */
@NullMarked
package fusetale.seeded.explore;

import org.jspecify.annotations.NullMarked;
