/** What follows if nobody switches off: when, in which orders, and the machine after each step. */
@NullMarked
package fusetale.desk.aftermath;

import org.jspecify.annotations.NullMarked;
