package fusetale.seeded.mna.deep;

import fusetale.seeded.mna.deeper.Back;

/** Breaks: no cycles, at any depth. */
public record There(Back back) {}
