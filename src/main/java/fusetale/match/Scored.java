package fusetale.match;

/**
 * An ask with what it would tell.
 *
 * @param lumped what it would show, repairs that show the same there taken together
 * @param bits what it would tell
 */
record Scored(Ask ask, Foresight lumped, double bits) {}
