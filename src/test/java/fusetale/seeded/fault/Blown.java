package fusetale.seeded.fault;

/** Keeps the rules. */
public record Blown(String part) {}
