package fusetale.circuit;

import fusetale.quantity.Quantity;
import fusetale.quantity.Toleranced;
import java.util.List;

/**
 * A class of fuse clips and holders.
 *
 * @param name the model's name in the part files
 * @param ohms both clips together, bright and tight
 * @param tarnishedOhms both together, tarnished
 * @param acceptedWatts power of a link that the holder stands (IEC 60127-6)
 * @param sources where each figure is from
 */
public record ClipModel(
        String name, Toleranced ohms, Quantity tarnishedOhms, Quantity acceptedWatts, List<String> sources) {
    /** Copies the list. */
    public ClipModel {
        sources = List.copyOf(sources);
    }
}
