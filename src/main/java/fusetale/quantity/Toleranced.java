package fusetale.quantity;

/**
 * A nominal value with the stray it may have.
 *
 * @param nominal what is printed on the part
 * @param tolerance how far it may stray
 */
public record Toleranced(Quantity nominal, Tolerance tolerance) {
    /** Nominal value in SI. */
    public double si() {
        return nominal.si();
    }

    /** The same part with its nominal value multiplied by {@code factor}. */
    public Toleranced times(double factor) {
        return new Toleranced(new Quantity(nominal.si() * factor, nominal.unit()), tolerance);
    }
}
