/**
 * Arrangements, meters, readings and the spread of a healthy machine. Uses {@code quantity}, {@code signal}, {@code
 * circuit}, {@code fault}, {@code mna}, {@code model}. Start at {@link fusetale.bench.Bench}.
 */
@NullMarked
package fusetale.bench;

import org.jspecify.annotations.NullMarked;
