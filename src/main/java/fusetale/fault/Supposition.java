package fusetale.fault;

import java.util.List;

/**
 * Faults and swaps that hold together. Parts are swapped first, and then fail: a swapped part may be shorted.
 *
 * @param faults in the order supposed
 * @param swaps in the order supposed
 */
public record Supposition(List<Fault> faults, List<Swap> swaps) {
    /** Nothing is wrong, nothing is swapped. */
    public static final Supposition NOTHING = new Supposition(List.of());

    /** Copies the lists. */
    public Supposition {
        faults = List.copyOf(faults);
        swaps = List.copyOf(swaps);
    }

    /** Faults alone. */
    public Supposition(List<Fault> faults) {
        this(faults, List.of());
    }

    /** Whether it leaves the machine as built. */
    public boolean isNothing() {
        return faults.isEmpty() && swaps.isEmpty();
    }
}
