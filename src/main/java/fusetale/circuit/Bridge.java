package fusetale.circuit;

import java.util.List;

/**
 * Four rectifier legs in one package. Leg 1: first a.c. pin to plus; leg 2: second a.c. pin to plus; leg 3: minus to first
 * a.c. pin; leg 4: minus to second a.c. pin.
 *
 * @param name reference designator
 * @param ac1 first a.c. pin's net
 * @param ac2 second a.c. pin's net
 * @param plus positive pin's net
 * @param minus negative pin's net
 * @param model each leg's electrical model
 * @param about notes and mounting
 */
public record Bridge(String name, Net ac1, Net ac2, Net plus, Net minus, DiodeModel model, About about)
        implements Part {
    @Override
    public List<Pin> pins() {
        return List.of(new Pin("ac1", ac1), new Pin("ac2", ac2), new Pin("plus", plus), new Pin("minus", minus));
    }

    /** The leg's two nets as a diode of its own, named {@code BR201.leg1}; legs count from 1. */
    public Diode leg(int number) {
        String legName = name + ".leg" + number;
        return switch (number) {
            case 1 -> new Diode(legName, ac1, plus, model, about);
            case 2 -> new Diode(legName, ac2, plus, model, about);
            case 3 -> new Diode(legName, minus, ac1, model, about);
            case 4 -> new Diode(legName, minus, ac2, model, about);
            default -> throw new IllegalArgumentException(name + " has legs 1 to 4, not " + number);
        };
    }

    @Override
    public Bridge rewired(String pin, Net net) {
        return switch (pin) {
            case "ac1" -> new Bridge(name, net, ac2, plus, minus, model, about);
            case "ac2" -> new Bridge(name, ac1, net, plus, minus, model, about);
            case "plus" -> new Bridge(name, ac1, ac2, net, minus, model, about);
            case "minus" -> new Bridge(name, ac1, ac2, plus, net, model, about);
            default -> throw noPin(pin);
        };
    }
}
