package fusetale.circuit;

import fusetale.quantity.Quantity;
import fusetale.quantity.Toleranced;
import java.util.List;

/**
 * A type of lamp.
 *
 * @param name the model's name in the part files
 * @param volts rated voltage
 * @param amps current at rated voltage
 * @param coldOhms resistance at 25 °C, as a meter shows it
 * @param sources where each figure is from
 */
public record LampModel(String name, Quantity volts, Toleranced amps, double coldOhms, List<String> sources) {
    /** Copies the list. */
    public LampModel {
        sources = List.copyOf(sources);
    }
}
