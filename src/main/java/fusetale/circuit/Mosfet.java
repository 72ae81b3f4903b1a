package fusetale.circuit;

import java.util.List;

/**
 * A field-effect transistor with an insulated gate.
 *
 * @param name reference designator
 * @param drain net of the pin of that name
 * @param gate net of the pin of that name
 * @param source net of the pin of that name
 * @param model channel and electrical model
 * @param about notes
 */
public record Mosfet(String name, Net drain, Net gate, Net source, MosfetModel model, About about) implements Part {
    @Override
    public List<Pin> pins() {
        return List.of(new Pin("drain", drain), new Pin("gate", gate), new Pin("source", source));
    }

    @Override
    public Mosfet rewired(String pin, Net net) {
        return switch (pin) {
            case "drain" -> new Mosfet(name, net, gate, source, model, about);
            case "gate" -> new Mosfet(name, drain, net, source, model, about);
            case "source" -> new Mosfet(name, drain, gate, net, model, about);
            default -> throw noPin(pin);
        };
    }
}
