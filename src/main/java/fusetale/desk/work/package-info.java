/** Work off the window's thread: the newest question wins, and what is shown is never older than what was shown before. */
@NullMarked
package fusetale.desk.work;

import org.jspecify.annotations.NullMarked;
