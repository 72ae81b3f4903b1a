@NullMarked
package fusetale.seeded.circuit;

import org.jspecify.annotations.NullMarked;
