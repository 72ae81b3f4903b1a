package fusetale.fault;

import fusetale.circuit.Circuit;

/** All failure modes of all part kinds, and how to apply them. */
public final class Catalogue {
    private Catalogue() {}

    /**
     * The circuit as supposed.
     *
     * @throws UnfitSupposition where a fault names no part, a mode the part does not have, an amount out of bounds, or
     *     contradicts another
     */
    public static Circuit apply(Circuit healthy, Supposition supposition) throws UnfitSupposition {
        if (supposition.faults().isEmpty()) {
            return healthy;
        }
        throw new UnfitSupposition("not yet: " + supposition);
    }
}
