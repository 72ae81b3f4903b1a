package fusetale.fault;

import java.util.List;

/**
 * Faults that hold together.
 *
 * @param faults in the order supposed; empty for a healthy machine
 */
public record Supposition(List<Fault> faults) {
    /** Nothing is wrong. */
    public static final Supposition NOTHING = new Supposition(List.of());

    /** Copies the list. */
    public Supposition {
        faults = List.copyOf(faults);
    }
}
