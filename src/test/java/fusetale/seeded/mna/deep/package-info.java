@NullMarked
package fusetale.seeded.mna.deep;

import org.jspecify.annotations.NullMarked;
