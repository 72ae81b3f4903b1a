package fusetale.fault;

import fusetale.circuit.About;
import fusetale.circuit.Bridge;
import fusetale.circuit.Capacitor;
import fusetale.circuit.Circuit;
import fusetale.circuit.Darlington;
import fusetale.circuit.Diode;
import fusetale.circuit.Electrolytic;
import fusetale.circuit.Fuse;
import fusetale.circuit.FuseLink;
import fusetale.circuit.Mosfet;
import fusetale.circuit.OpAmp;
import fusetale.circuit.Part;
import fusetale.circuit.PartLibrary;
import fusetale.circuit.Regulator;
import fusetale.circuit.Resistor;
import fusetale.circuit.Thyristor;
import fusetale.circuit.Transistor;
import fusetale.circuit.Zener;
import fusetale.quantity.Quantity;
import fusetale.quantity.Toleranced;
import fusetale.quantity.Unit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Fits other parts into a circuit. Name, pins, nets and tolerance stay. What a swap does not say stays too, but follows the
 * value: the ESR of another electrolytic by the same loss factor, its leakage as a resistance by the makers' common limit
 * 3·√(C·V) µA.
 */
final class Swapping {
    private static final PartLibrary LIBRARY = PartLibrary.shipped();

    private Swapping() {}

    /** The circuit with every swap made whose part stands in it. */
    static Circuit done(Circuit circuit, List<Swap> swaps) {
        Circuit swapped = circuit;
        for (Swap swap : swaps) {
            Optional<Part> part = swapped.part(swap.part());
            if (part.isPresent()) {
                swapped = swapped.with(fitted(part.get(), swap.fitting()));
            }
        }
        return swapped;
    }

    private static Part fitted(Part part, Fitting fitting) {
        if (fitting instanceof Fitting.Model model) {
            return remade(part, model.name(), part.about());
        } else if (fitting instanceof Fitting.Mounted mounted) {
            About a = part.about();
            return remade(part, null, new About(a.note(), mounted.mounting().words(), a.line(), a.make()));
        } else if (fitting instanceof Fitting.Value value) {
            return valued(part, value);
        } else if (fitting instanceof Fitting.Link link && part instanceof Fuse fuse) {
            return linked(fuse, link);
        }
        throw new IllegalStateException(fitting + " was not checked against " + part);
    }

    /** @param name of the model; null for the one it has */
    private static Part remade(Part part, @Nullable String name, About about) {
        if (part instanceof Bridge p) {
            return new Bridge(
                    p.name(), p.ac1(), p.ac2(), p.plus(), p.minus(), model(LIBRARY.bridges(), name, p.model()), about);
        } else if (part instanceof Diode p) {
            return new Diode(p.name(), p.anode(), p.cathode(), model(LIBRARY.diodes(), name, p.model()), about);
        } else if (part instanceof Zener p) {
            var model = model(LIBRARY.zeners(), name, p.model());
            Toleranced volts = name == null
                    ? p.volts()
                    : new Toleranced(
                            new Quantity(model.breakdownVolts(), Unit.VOLT),
                            p.volts().tolerance());
            return new Zener(p.name(), p.anode(), p.cathode(), model, volts, about);
        } else if (part instanceof Transistor p) {
            var model = model(LIBRARY.transistors(), name, p.model());
            return new Transistor(p.name(), p.collector(), p.base(), p.emitter(), model, about);
        } else if (part instanceof Darlington p) {
            var model = model(LIBRARY.darlingtons(), name, p.model());
            return new Darlington(p.name(), p.collector(), p.base(), p.emitter(), model, about);
        } else if (part instanceof Mosfet p) {
            return new Mosfet(
                    p.name(), p.drain(), p.gate(), p.source(), model(LIBRARY.mosfets(), name, p.model()), about);
        } else if (part instanceof Thyristor p) {
            var model = model(LIBRARY.thyristors(), name, p.model());
            return new Thyristor(p.name(), p.anode(), p.gate(), p.cathode(), model, about);
        } else if (part instanceof Regulator p) {
            return new Regulator(
                    p.name(), p.in(), p.out(), p.ground(), model(LIBRARY.regulators(), name, p.model()), about);
        }
        return amplifier(part, name, about);
    }

    private static Part amplifier(Part part, @Nullable String name, About about) {
        if (part instanceof OpAmp p) {
            return p.with(model(LIBRARY.opAmps(), name, p.model())).with(about);
        }
        throw new IllegalStateException(part + " has no model");
    }

    private static <M> M model(Map<String, M> models, @Nullable String name, M present) {
        if (name == null) {
            return present;
        }
        M model = models.get(name);
        if (model == null) {
            throw new IllegalStateException("no model " + name);
        }
        return model;
    }

    private static Part valued(Part part, Fitting.Value v) {
        Quantity rating = v.rating();
        if (part instanceof Resistor r) {
            Quantity watts = rating == null ? r.ratedWatts() : rating;
            return new Resistor(
                    r.name(),
                    r.one(),
                    r.two(),
                    new Toleranced(v.value(), r.ohms().tolerance()),
                    watts,
                    r.about());
        } else if (part instanceof Capacitor c) {
            Quantity volts = rating == null ? c.ratedVolts() : rating;
            return new Capacitor(
                    c.name(),
                    c.one(),
                    c.two(),
                    new Toleranced(v.value(), c.farads().tolerance()),
                    volts,
                    c.about());
        } else if (part instanceof Electrolytic c) {
            Quantity volts = rating == null ? c.ratedVolts() : rating;
            double times = v.value().si() / c.farads().si();
            double leakage = Math.sqrt(volts.si() / c.ratedVolts().si() / times);
            return new Electrolytic(
                    c.name(),
                    c.plus(),
                    c.minus(),
                    new Toleranced(v.value(), c.farads().tolerance()),
                    volts,
                    new Quantity(c.seriesOhms().si() / times, Unit.OHM),
                    new Quantity(c.leakageOhms().si() * leakage, Unit.OHM),
                    c.about());
        }
        throw new IllegalStateException(part + " has no value");
    }

    private static Fuse linked(Fuse f, Fitting.Link said) {
        FuseLink now = f.fitted();
        FuseLink.Speed speed = said.speed();
        FuseLink.Standard standard = said.standard();
        FuseLink unmeasured = new FuseLink(
                said.amps(),
                speed == null ? now.speed() : speed,
                standard == null ? now.standard() : standard,
                now.size(),
                now.coldOhms());
        // a fuse that an arrangement took out of its clips stays out
        FuseLink fitted = Failing.apart(now.coldOhms().si())
                ? unmeasured
                : new FuseLink(
                        unmeasured.ratedAmps(),
                        unmeasured.speed(),
                        unmeasured.standard(),
                        unmeasured.size(),
                        new Quantity(LinkResistance.ohms(unmeasured, now), Unit.OHM));
        return new Fuse(f.name(), f.one(), f.two(), f.marked(), fitted, f.clipOhms(), f.about());
    }
}
