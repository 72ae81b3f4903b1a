package fusetale.circuit;

import fusetale.quantity.Quantity;
import java.util.List;

/**
 * A hand-operated or interlock switch.
 *
 * @param name reference designator
 * @param one first pin's net
 * @param two second pin's net
 * @param closed whether it conducts
 * @param contactOhms resistance when closed
 * @param about notes
 */
public record Switch(String name, Net one, Net two, boolean closed, Quantity contactOhms, About about) implements Part {
    @Override
    public List<Pin> pins() {
        return List.of(new Pin("one", one), new Pin("two", two));
    }

    @Override
    public Switch rewired(String pin, Net net) {
        return switch (pin) {
            case "one" -> new Switch(name, net, two, closed, contactOhms, about);
            case "two" -> new Switch(name, one, net, closed, contactOhms, about);
            default -> throw noPin(pin);
        };
    }
}
