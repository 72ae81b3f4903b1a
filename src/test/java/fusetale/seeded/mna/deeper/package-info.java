@NullMarked
package fusetale.seeded.mna.deeper;

import org.jspecify.annotations.NullMarked;
