/** The place where one says what was read, sees what explains it, and is told what to measure next. */
@NullMarked
package fusetale.desk.match;

import org.jspecify.annotations.NullMarked;
