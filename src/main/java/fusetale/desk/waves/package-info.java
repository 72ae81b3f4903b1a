/** Waveforms: three small ones in a row, and a large one with a cursor. */
@NullMarked
package fusetale.desk.waves;

import org.jspecify.annotations.NullMarked;
