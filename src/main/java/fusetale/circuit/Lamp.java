package fusetale.circuit;

import fusetale.quantity.Quantity;
import fusetale.quantity.Toleranced;
import java.util.List;

/**
 * One lamp, or several alike in parallel.
 *
 * @param name reference designator
 * @param one first pin's net
 * @param two second pin's net
 * @param volts rated voltage
 * @param amps current of one lamp at rated voltage
 * @param count how many lamps stand in parallel, 1 or more
 * @param about notes
 */
public record Lamp(String name, Net one, Net two, Quantity volts, Toleranced amps, int count, About about)
        implements Part {
    @Override
    public List<Pin> pins() {
        return List.of(new Pin("one", one), new Pin("two", two));
    }

    @Override
    public Lamp rewired(String pin, Net net) {
        return switch (pin) {
            case "one" -> new Lamp(name, net, two, volts, amps, count, about);
            case "two" -> new Lamp(name, one, net, volts, amps, count, about);
            default -> throw noPin(pin);
        };
    }
}
