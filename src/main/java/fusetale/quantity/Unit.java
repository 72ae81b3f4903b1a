package fusetale.quantity;

/** Units. */
public enum Unit {
    /** V. */
    VOLT
}
