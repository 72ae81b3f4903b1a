package fusetale.circuit;

import fusetale.quantity.Quantity;
import java.util.List;

/**
 * A battery for the memory.
 *
 * @param name reference designator
 * @param plus first pin's net
 * @param minus second pin's net
 * @param volts open-circuit voltage at its charge
 * @param seriesOhms internal resistance
 * @param about notes
 */
public record Battery(String name, Net plus, Net minus, Quantity volts, Quantity seriesOhms, About about)
        implements Part {
    @Override
    public List<Pin> pins() {
        return List.of(new Pin("plus", plus), new Pin("minus", minus));
    }

    @Override
    public Battery rewired(String pin, Net net) {
        return switch (pin) {
            case "plus" -> new Battery(name, net, minus, volts, seriesOhms, about);
            case "minus" -> new Battery(name, plus, net, volts, seriesOhms, about);
            default -> throw noPin(pin);
        };
    }
}
