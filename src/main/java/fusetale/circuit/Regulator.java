package fusetale.circuit;

import java.util.List;

/**
 * A three-terminal series regulator.
 *
 * @param name reference designator
 * @param in net of the pin of that name
 * @param out net of the pin of that name
 * @param ground net of the pin of that name
 * @param model electrical model
 * @param about notes
 */
public record Regulator(String name, Net in, Net out, Net ground, RegulatorModel model, About about) implements Part {
    @Override
    public List<Pin> pins() {
        return List.of(new Pin("in", in), new Pin("out", out), new Pin("ground", ground));
    }

    @Override
    public Regulator rewired(String pin, Net net) {
        return switch (pin) {
            case "in" -> new Regulator(name, net, out, ground, model, about);
            case "out" -> new Regulator(name, in, net, ground, model, about);
            case "ground" -> new Regulator(name, in, out, net, model, about);
            default -> throw noPin(pin);
        };
    }
}
