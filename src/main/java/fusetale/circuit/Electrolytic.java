package fusetale.circuit;

import fusetale.quantity.Quantity;
import fusetale.quantity.Toleranced;
import java.util.List;

/**
 * An electrolytic capacitor.
 *
 * @param name reference designator
 * @param plus first pin's net
 * @param minus second pin's net
 * @param farads capacitance
 * @param ratedVolts voltage it stands
 * @param seriesOhms equivalent series resistance (ESR)
 * @param leakageOhms resistance of its leakage at rated voltage
 * @param about notes
 */
public record Electrolytic(
        String name,
        Net plus,
        Net minus,
        Toleranced farads,
        Quantity ratedVolts,
        Quantity seriesOhms,
        Quantity leakageOhms,
        About about)
        implements Part {
    @Override
    public List<Pin> pins() {
        return List.of(new Pin("plus", plus), new Pin("minus", minus));
    }

    @Override
    public Electrolytic rewired(String pin, Net net) {
        return switch (pin) {
            case "plus" -> new Electrolytic(name, net, minus, farads, ratedVolts, seriesOhms, leakageOhms, about);
            case "minus" -> new Electrolytic(name, plus, net, farads, ratedVolts, seriesOhms, leakageOhms, about);
            default -> throw noPin(pin);
        };
    }
}
