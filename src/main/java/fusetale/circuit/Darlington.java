package fusetale.circuit;

import java.util.List;

/**
 * A Darlington transistor with its internal base-emitter resistors.
 *
 * @param name reference designator
 * @param collector net of the pin of that name
 * @param base net of the pin of that name
 * @param emitter net of the pin of that name
 * @param model polarity and electrical model
 * @param about notes
 */
public record Darlington(String name, Net collector, Net base, Net emitter, DarlingtonModel model, About about)
        implements Part {
    @Override
    public List<Pin> pins() {
        return List.of(new Pin("collector", collector), new Pin("base", base), new Pin("emitter", emitter));
    }

    @Override
    public Darlington rewired(String pin, Net net) {
        return switch (pin) {
            case "collector" -> new Darlington(name, net, base, emitter, model, about);
            case "base" -> new Darlington(name, collector, net, emitter, model, about);
            case "emitter" -> new Darlington(name, collector, base, net, model, about);
            default -> throw noPin(pin);
        };
    }
}
