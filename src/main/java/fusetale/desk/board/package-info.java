/** The paper: drawing, cord, tags, and the strings between them. */
@NullMarked
package fusetale.desk.board;

import org.jspecify.annotations.NullMarked;
