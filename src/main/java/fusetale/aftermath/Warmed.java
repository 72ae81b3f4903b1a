package fusetale.aftermath;

import fusetale.circuit.Circuit;
import fusetale.circuit.Coil;
import fusetale.circuit.Copper;
import fusetale.circuit.DualCoil;
import fusetale.circuit.Part;
import fusetale.circuit.Relay;
import fusetale.circuit.Transformer;
import fusetale.circuit.Transformer.Winding;
import fusetale.quantity.Toleranced;
import java.util.Set;

/** A circuit with some of its windings hot: their resistance follows the temperature of their copper. */
final class Warmed {
    private final Set<String> hot;
    private final double ratio;

    private Warmed(Set<String> hot, double celsius) {
        this.hot = hot;
        this.ratio = Copper.ratio(States.COLD_CELSIUS, celsius);
    }

    /**
     * The circuit with windings at a temperature [°C].
     *
     * @param hot which, by the names of their bodies
     */
    static Circuit of(Circuit circuit, Set<String> hot, double celsius) {
        Warmed warmed = new Warmed(hot, celsius);
        Circuit result = circuit;
        for (Part part : circuit.parts()) {
            result = result.with(warmed.part(part));
        }
        return result;
    }

    private Part part(Part part) {
        if (part instanceof Transformer t) {
            return new Transformer(
                    t.name(),
                    winding(t, t.primary()),
                    t.secondaries().stream().map(w -> winding(t, w)).toList(),
                    t.magnetics(),
                    t.about());
        }
        if (part instanceof Coil c && hot.contains(c.name())) {
            return new Coil(
                    c.name(),
                    c.one(),
                    c.two(),
                    c.ohms().times(ratio),
                    c.henries(),
                    c.pullInAmps(),
                    c.holdAmps(),
                    c.about());
        }
        if (part instanceof DualCoil c) {
            return c.withPower(ohms(c.name() + ".power", c.powerOhms()), c.powerHenries())
                    .withHold(ohms(c.name() + ".hold", c.holdOhms()), c.holdHenries());
        }
        if (part instanceof Relay r) {
            Relay.Winding w = r.winding();
            return r.with(new Relay.Winding(
                    ohms(r.name() + ".coil", w.ohms()),
                    w.henries(),
                    w.pullInAmps(),
                    w.dropOutAmps(),
                    w.operateSeconds()));
        }
        return part;
    }

    private Winding winding(Transformer t, Winding w) {
        return new Winding(w.name(), w.nets(), w.volts(), ohms(t.name() + "." + w.name(), w.ohms()), w.ratedAmps());
    }

    private Toleranced ohms(String name, Toleranced stated) {
        return hot.contains(name) ? stated.times(ratio) : stated;
    }
}
