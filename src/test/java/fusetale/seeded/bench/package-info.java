@NullMarked
package fusetale.seeded.bench;

import org.jspecify.annotations.NullMarked;
