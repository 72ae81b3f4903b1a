package fusetale.circuit;

/** How the contact of a {@link Relay} behaves. */
public enum Armature {
    /** Follows the coil. */
    FOLLOWS,
    /** Contact closed for ever. */
    WELDED,
    /** Contact open for ever. */
    STUCK_OPEN
}
