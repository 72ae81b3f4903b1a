package fusetale.circuit;

import fusetale.quantity.Quantity;
import fusetale.quantity.Toleranced;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A class of solenoid coils with one winding.
 *
 * @param name the model's name in the part files
 * @param ohms winding resistance at 25 °C
 * @param henries inductance, plunger out
 * @param pullInAmps current that pulls the plunger in, where known
 * @param holdAmps current that holds it, where known
 * @param wound what its winding is made of
 * @param sources where each figure is from
 */
public record CoilModel(
        String name,
        Toleranced ohms,
        Toleranced henries,
        @Nullable Quantity pullInAmps,
        @Nullable Quantity holdAmps,
        Wound wound,
        List<String> sources) {
    /** Copies the list. */
    public CoilModel {
        sources = List.copyOf(sources);
    }
}
