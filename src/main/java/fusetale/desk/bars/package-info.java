/** All test points in one function of the meter, each beside what healthy machines show. */
@NullMarked
package fusetale.desk.bars;

import org.jspecify.annotations.NullMarked;
