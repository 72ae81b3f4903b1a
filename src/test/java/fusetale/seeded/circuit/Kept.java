package fusetale.seeded.circuit;

/** Keeps the rules: a unit at the end of the name. */
public record Kept(double coldOhms, double gainRatio) {}
