package fusetale.circuit;

import java.util.List;

/**
 * A rectifier or signal diode.
 *
 * @param name reference designator
 * @param anode first pin's net
 * @param cathode second pin's net
 * @param model its electrical model
 * @param about notes
 */
public record Diode(String name, Net anode, Net cathode, DiodeModel model, About about) implements Part {
    @Override
    public List<Pin> pins() {
        return List.of(new Pin("anode", anode), new Pin("cathode", cathode));
    }

    @Override
    public Diode rewired(String pin, Net net) {
        return switch (pin) {
            case "anode" -> new Diode(name, net, cathode, model, about);
            case "cathode" -> new Diode(name, anode, net, model, about);
            default -> throw noPin(pin);
        };
    }
}
