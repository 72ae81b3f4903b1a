package fusetale.quantity;

/**
 * From one quantity to another of the same unit: {@code 110..126 V}.
 *
 * @param low lower end
 * @param high upper end, not below {@code low}
 */
public record Span(Quantity low, Quantity high) {
    /** Refuses ends of two units or in the wrong order. */
    public Span {
        if (low.unit() != high.unit() || low.si() > high.si()) {
            throw new IllegalArgumentException("no span from " + low + " to " + high);
        }
    }

    /** Whether a quantity of the same unit lies between the ends or on one. */
    public boolean contains(Quantity quantity) {
        return quantity.unit() == low.unit() && low.si() <= quantity.si() && quantity.si() <= high.si();
    }
}
