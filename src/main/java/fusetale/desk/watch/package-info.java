/**
 * Notices when the circuit file being worked on, or a block it includes, changes on the disk. Start at
 * {@link fusetale.desk.watch.CircuitWatch}.
 */
@NullMarked
package fusetale.desk.watch;

import org.jspecify.annotations.NullMarked;
