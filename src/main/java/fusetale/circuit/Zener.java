package fusetale.circuit;

import fusetale.quantity.Toleranced;
import java.util.List;

/**
 * A zener diode.
 *
 * @param name reference designator
 * @param anode first pin's net
 * @param cathode second pin's net
 * @param model its electrical model; its breakdown is replaced by {@code volts}
 * @param volts zener voltage at the model's test current
 * @param about notes
 */
public record Zener(String name, Net anode, Net cathode, DiodeModel model, Toleranced volts, About about)
        implements Part {
    @Override
    public List<Pin> pins() {
        return List.of(new Pin("anode", anode), new Pin("cathode", cathode));
    }

    @Override
    public Zener rewired(String pin, Net net) {
        return switch (pin) {
            case "anode" -> new Zener(name, net, cathode, model, volts, about);
            case "cathode" -> new Zener(name, anode, net, model, volts, about);
            default -> throw noPin(pin);
        };
    }
}
