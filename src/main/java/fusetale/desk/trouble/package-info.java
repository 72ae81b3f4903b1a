/** What happens when something unforeseen goes wrong. Start at {@link fusetale.desk.trouble.Guard}. */
@NullMarked
package fusetale.desk.trouble;

import org.jspecify.annotations.NullMarked;
