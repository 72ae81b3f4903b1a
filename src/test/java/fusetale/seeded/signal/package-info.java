@NullMarked
package fusetale.seeded.signal;

import org.jspecify.annotations.NullMarked;
