@NullMarked
package fusetale.seeded.cli;

import org.jspecify.annotations.NullMarked;
