package fusetale.circuit;

import fusetale.quantity.Quantity;
import fusetale.quantity.Toleranced;
import java.util.List;

/**
 * A resistor.
 *
 * @param name reference designator
 * @param one first pin's net
 * @param two second pin's net
 * @param ohms resistance
 * @param ratedWatts power it stands at 70 °C
 * @param about notes
 */
public record Resistor(String name, Net one, Net two, Toleranced ohms, Quantity ratedWatts, About about)
        implements Part {
    /** What it is made of. */
    public ResistorStyle style() {
        return about.make() instanceof Make.Body body ? body.style() : ResistorStyle.usual(ratedWatts.si());
    }

    @Override
    public List<Pin> pins() {
        return List.of(new Pin("one", one), new Pin("two", two));
    }

    @Override
    public Resistor rewired(String pin, Net net) {
        return switch (pin) {
            case "one" -> new Resistor(name, net, two, ohms, ratedWatts, about);
            case "two" -> new Resistor(name, one, net, ohms, ratedWatts, about);
            default -> throw noPin(pin);
        };
    }
}
