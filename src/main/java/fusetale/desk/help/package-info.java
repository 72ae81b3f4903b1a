/** The page behind {@code ?}: every key, and the words a newcomer meets. Start at {@link fusetale.desk.help.HelpView}. */
@NullMarked
package fusetale.desk.help;

import org.jspecify.annotations.NullMarked;
