@NullMarked
package fusetale.seeded.cellar;

import org.jspecify.annotations.NullMarked;
