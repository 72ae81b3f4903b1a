package fusetale.quantity;

/**
 * A number in a unit, held in SI.
 *
 * @param si the value in the SI unit of {@code unit}; finite
 * @param unit its unit
 */
public record Quantity(double si, Unit unit) {
    /** Refuses numbers that are not finite. */
    public Quantity {
        if (!Double.isFinite(si)) {
            throw new IllegalArgumentException("not a finite number: " + si + " " + unit.symbol());
        }
    }
}
