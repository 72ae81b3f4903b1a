/** The page of preferences. Start at {@link fusetale.desk.preferences.PreferencesView}. */
@NullMarked
package fusetale.desk.preferences;

import org.jspecify.annotations.NullMarked;
