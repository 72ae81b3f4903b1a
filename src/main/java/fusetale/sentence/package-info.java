/**
 * The whole state of the bench as one line: what is supposed, how the bench is set, what the meter is on. Reading it, whole or
 * one typed line at a time, writing it, speaking it, and completing what is being typed; and readings as somebody types them.
 * Uses {@code quantity}, {@code circuit}, {@code fault}, {@code bench}. Start at {@link fusetale.sentence.Sentences}.
 */
@NullMarked
package fusetale.sentence;

import org.jspecify.annotations.NullMarked;
