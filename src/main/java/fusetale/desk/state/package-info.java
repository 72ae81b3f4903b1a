/** The state of the window and everything that is asked about it; knows no scene. */
@NullMarked
package fusetale.desk.state;

import org.jspecify.annotations.NullMarked;
