package fusetale.fault;

import fusetale.circuit.Bridge;
import fusetale.circuit.Capacitor;
import fusetale.circuit.Circuit;
import fusetale.circuit.Darlington;
import fusetale.circuit.Diode;
import fusetale.circuit.Electrolytic;
import fusetale.circuit.Fuse;
import fusetale.circuit.Mosfet;
import fusetale.circuit.Mounting;
import fusetale.circuit.OpAmp;
import fusetale.circuit.Part;
import fusetale.circuit.PartLibrary;
import fusetale.circuit.Regulator;
import fusetale.circuit.Resistor;
import fusetale.circuit.Thyristor;
import fusetale.circuit.Transistor;
import fusetale.circuit.Zener;
import fusetale.quantity.Unit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What may be fitted in place of one part.
 *
 * @param part its designator
 * @param models names of the part models of its kind, in the order of their files; empty where it has none
 * @param mounted whether it can be mounted otherwise
 * @param value unit of the value it is sold by; null for none
 * @param rating unit of the rating printed beside that value; null for none
 * @param link whether it holds a fuse link
 */
public record Replacements(
        String part,
        List<String> models,
        boolean mounted,
        @Nullable Unit value,
        @Nullable Unit rating,
        boolean link) {
    /** Copies the list. */
    public Replacements {
        models = List.copyOf(models);
    }

    /** What may be fitted in place of a part; empty where there is no such part, or nothing may. */
    public static Optional<Replacements> of(Circuit circuit, String part) {
        return circuit.part(part).map(Replacements::of).filter(r -> !r.none());
    }

    private static Replacements of(Part part) {
        String name = part.name();
        for (Family family : Family.ALL) {
            if (family.kind().isInstance(part)) {
                return new Replacements(name, List.copyOf(family.models()), true, null, null, false);
            }
        }
        if (part instanceof Capacitor || part instanceof Electrolytic) {
            return new Replacements(name, List.of(), false, Unit.FARAD, Unit.VOLT, false);
        }
        if (part instanceof Resistor) {
            return new Replacements(name, List.of(), false, Unit.OHM, Unit.WATT, false);
        }
        return new Replacements(name, List.of(), false, null, null, part instanceof Fuse);
    }

    /** Whether nothing may be fitted. */
    public boolean none() {
        return models.isEmpty() && !mounted && value == null && !link;
    }

    /** The model of a name, capitals ignored. */
    public Optional<String> model(String name) {
        return models.stream().filter(m -> m.equalsIgnoreCase(name)).findFirst();
    }

    /** What can be written behind the part's name, for messages. */
    public List<String> words() {
        List<String> words = new ArrayList<>(models);
        if (mounted) {
            Arrays.stream(Mounting.values()).map(Replacements::compact).forEach(words::add);
        }
        if (value == Unit.FARAD) {
            words.add("a value such as 10000uF or 10000uF:63V");
        } else if (value == Unit.OHM) {
            words.add("a value such as 4k7 or 4k7:5W");
        }
        if (link) {
            words.add("another link such as 5A:quick or 5A:slow:IEC");
        }
        return words;
    }

    /** A mounting as in {@code BR201=on-chassis}. */
    public static String compact(Mounting mounting) {
        return mounting.words().replace(' ', '-');
    }

    /** What kind of part a model of this name is: {@code diode}; empty where there is no such model. */
    public static Optional<String> kindOfModel(String name) {
        return Family.ALL.stream()
                .filter(f -> f.models().stream().anyMatch(m -> m.equalsIgnoreCase(name)))
                .map(Family::word)
                .findFirst();
    }

    /** What kind of part this is where it has models: {@code bridge}; empty elsewhere. */
    public static Optional<String> kindOfPart(Circuit circuit, String part) {
        return circuit.part(part)
                .flatMap(p -> Family.ALL.stream()
                        .filter(f -> f.kind().isInstance(p))
                        .map(Family::word)
                        .findFirst());
    }

    /** A kind of part that is told by the name of its model. */
    private record Family(Class<? extends Part> kind, String word, Collection<String> models) {
        private static final PartLibrary LIBRARY = PartLibrary.shipped();

        static final List<Family> ALL = List.of(
                new Family(Bridge.class, "bridge", LIBRARY.bridges().keySet()),
                new Family(Diode.class, "diode", LIBRARY.diodes().keySet()),
                new Family(Zener.class, "zener", LIBRARY.zeners().keySet()),
                new Family(Transistor.class, "transistor", LIBRARY.transistors().keySet()),
                new Family(Darlington.class, "darlington", LIBRARY.darlingtons().keySet()),
                new Family(Mosfet.class, "mosfet", LIBRARY.mosfets().keySet()),
                new Family(Thyristor.class, "thyristor", LIBRARY.thyristors().keySet()),
                new Family(Regulator.class, "regulator", LIBRARY.regulators().keySet()),
                new Family(OpAmp.class, "op-amp", LIBRARY.opAmps().keySet()));
    }
}
