package fusetale.circuit;

import fusetale.quantity.Quantity;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A type of wire or board trace, without its length.
 *
 * @param name the model's name in the part files
 * @param metre one metre of it
 * @param ratedAmps steady current it stands, where it is not {@link Conductor#ratedAmps}
 * @param sources where each figure is from
 */
public record ConductorModel(
        String name, Conductor metre, @Nullable Quantity ratedAmps, List<String> sources) {
    /** Copies the list. */
    public ConductorModel {
        sources = List.copyOf(sources);
    }
}
