package fusetale.seeded.circuit;

import fusetale.seeded.fault.Blown;

/** Breaks: a circuit knows no faults. */
public record Upward(Blown fault) {}
