/** Where the program begins: a window or a command. */
@NullMarked
package fusetale.start;

import org.jspecify.annotations.NullMarked;
