package fusetale.circuit;

/** How the end-of-stroke switch of a {@link DualCoil} behaves. */
public enum EndOfStroke {
    /** Opens when the plunger is in. */
    FOLLOWS,
    /** Never opens: the strong winding carries its current for ever. */
    STUCK_CLOSED,
    /** Never closes: the coil is weak. */
    STUCK_OPEN
}
