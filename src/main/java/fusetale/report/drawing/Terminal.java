package fusetale.report.drawing;

import org.jspecify.annotations.Nullable;

/**
 * A place that a net must reach.
 *
 * @param node in the maze
 * @param side where its lead points; null for a test point that a file places
 * @param section number of the section it lies in; -1 for none
 */
record Terminal(int node, @Nullable Side side, int section) {}
