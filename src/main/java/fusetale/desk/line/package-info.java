/** The sentence: its pieces, the line that is typed into it, and the hand that drags an amount. */
@NullMarked
package fusetale.desk.line;

import org.jspecify.annotations.NullMarked;
