package fusetale.quantity;

/** A number in a unit, held in SI. */
public record Quantity(double si, Unit unit) {}
