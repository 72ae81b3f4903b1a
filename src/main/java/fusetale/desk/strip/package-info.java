/** How far each reading moved: rows, their scale, and the view of them. */
@NullMarked
package fusetale.desk.strip;

import org.jspecify.annotations.NullMarked;
