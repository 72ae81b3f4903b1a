/** The first screen: boards that come with the program, and repairs. Start at {@link fusetale.desk.start.StartView}. */
@NullMarked
package fusetale.desk.start;

import org.jspecify.annotations.NullMarked;
