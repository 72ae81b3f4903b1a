package fusetale.circuit;

import java.util.List;

/**
 * A thyristor (silicon-controlled rectifier).
 *
 * @param name reference designator
 * @param anode net of the pin of that name
 * @param gate net of the pin of that name
 * @param cathode net of the pin of that name
 * @param model electrical model
 * @param about notes
 */
public record Thyristor(String name, Net anode, Net gate, Net cathode, ThyristorModel model, About about)
        implements Part {
    @Override
    public List<Pin> pins() {
        return List.of(new Pin("anode", anode), new Pin("gate", gate), new Pin("cathode", cathode));
    }

    @Override
    public Thyristor rewired(String pin, Net net) {
        return switch (pin) {
            case "anode" -> new Thyristor(name, net, gate, cathode, model, about);
            case "gate" -> new Thyristor(name, anode, net, cathode, model, about);
            case "cathode" -> new Thyristor(name, anode, gate, net, model, about);
            default -> throw noPin(pin);
        };
    }
}
