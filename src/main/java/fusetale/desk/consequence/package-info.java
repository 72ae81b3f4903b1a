/** The line under the sentence: the danger first, then what follows, then what a reading would not clear. */
@NullMarked
package fusetale.desk.consequence;

import org.jspecify.annotations.NullMarked;
