/** The bench sheet before it is printed. Start at {@link fusetale.desk.sheet.SheetView}. */
@NullMarked
package fusetale.desk.sheet;

import org.jspecify.annotations.NullMarked;
