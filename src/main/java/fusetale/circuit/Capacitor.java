package fusetale.circuit;

import fusetale.quantity.Quantity;
import fusetale.quantity.Toleranced;
import java.util.List;

/**
 * A capacitor without polarity (film, ceramic).
 *
 * @param name reference designator
 * @param one first pin's net
 * @param two second pin's net
 * @param farads capacitance
 * @param ratedVolts voltage it stands
 * @param about notes
 */
public record Capacitor(String name, Net one, Net two, Toleranced farads, Quantity ratedVolts, About about)
        implements Part {
    @Override
    public List<Pin> pins() {
        return List.of(new Pin("one", one), new Pin("two", two));
    }

    @Override
    public Capacitor rewired(String pin, Net net) {
        return switch (pin) {
            case "one" -> new Capacitor(name, net, two, farads, ratedVolts, about);
            case "two" -> new Capacitor(name, one, net, farads, ratedVolts, about);
            default -> throw noPin(pin);
        };
    }
}
