package fusetale.seeded.signal;

/** Keeps the rules. */
public record Wave(double volts) {}
