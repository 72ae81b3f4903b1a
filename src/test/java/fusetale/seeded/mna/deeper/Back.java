package fusetale.seeded.mna.deeper;

import fusetale.seeded.mna.deep.There;

/** Breaks: no cycles, at any depth. */
public record Back(There there) {}
