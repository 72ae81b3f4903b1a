/**
 * Immutable waveforms over a cycle or a run and what a meter makes of them. Uses {@code quantity} only. Start at {@link
 * fusetale.signal.Waveform}.
 */
@NullMarked
package fusetale.signal;

import org.jspecify.annotations.NullMarked;
