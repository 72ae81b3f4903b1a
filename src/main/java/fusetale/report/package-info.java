/**
 * What a person gets to see outside the window: tables, CSV, charts and pictures. Uses everything above it but {@code mna}
 * and {@code model}; no JavaFX. Start at {@link fusetale.report.Tables} and {@link fusetale.report.SupposePicture}.
 */
@NullMarked
package fusetale.report;

import org.jspecify.annotations.NullMarked;
