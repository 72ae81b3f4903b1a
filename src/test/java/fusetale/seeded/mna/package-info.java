@NullMarked
package fusetale.seeded.mna;

import org.jspecify.annotations.NullMarked;
