package fusetale.circuit;

import fusetale.quantity.Quantity;
import fusetale.quantity.Tolerance;
import java.util.List;

/**
 * A class of capacitors without polarity.
 *
 * @param name the model's name in the part files
 * @param tolerance how far the capacitance may stray
 * @param volts voltage it stands
 * @param sources where each figure is from
 */
public record CapacitorModel(String name, Tolerance tolerance, Quantity volts, List<String> sources) {
    /** Copies the list. */
    public CapacitorModel {
        sources = List.copyOf(sources);
    }
}
