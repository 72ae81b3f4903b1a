@NullMarked
package fusetale.seeded.fault;

import org.jspecify.annotations.NullMarked;
