/** What leaves the window: files and the clipboard. Start at {@link fusetale.desk.export.ExportView}. */
@NullMarked
package fusetale.desk.export;

import org.jspecify.annotations.NullMarked;
