@NullMarked
package fusetale.seeded.report;

import org.jspecify.annotations.NullMarked;
