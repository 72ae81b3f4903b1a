package fusetale.seeded.unmarked;

/** Breaks: every package is null-marked. */
public record Nulls(String text) {}
