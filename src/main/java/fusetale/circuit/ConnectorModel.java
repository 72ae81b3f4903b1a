package fusetale.circuit;

import fusetale.quantity.Quantity;
import fusetale.quantity.Toleranced;
import java.util.List;

/**
 * A class of connectors.
 *
 * @param name the model's name in the part files
 * @param ohms resistance of one contact, crimp and all
 * @param amps what each contact stands, at a rise of 30 K
 * @param sources where each figure is from
 */
public record ConnectorModel(String name, Toleranced ohms, Quantity amps, List<String> sources) {
    /** Copies the list. */
    public ConnectorModel {
        sources = List.copyOf(sources);
    }
}
