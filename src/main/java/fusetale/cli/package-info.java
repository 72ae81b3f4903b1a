/**
 * The commands: parse, ask {@code explore}, print as text, CSV or JSON. Uses everything above it but {@code mna} and {@code
 * model}; no JavaFX. Start at {@link fusetale.cli.Main}.
 */
@NullMarked
package fusetale.cli;

import org.jspecify.annotations.NullMarked;
