package fusetale.circuit;

import fusetale.quantity.Quantity;
import fusetale.quantity.Toleranced;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A wire, a board trace or a solder joint that is worth suspecting.
 *
 * @param name reference designator
 * @param one first pin's net
 * @param two second pin's net
 * @param ohms resistance
 * @param ratedAmps steady current it stands, where known
 * @param about notes
 */
public record Wire(
        String name,
        Net one,
        Net two,
        Toleranced ohms,
        @Nullable Quantity ratedAmps,
        About about) implements Part {
    /** Its copper by dimensions, or null where the file does not give them. */
    public @Nullable Conductor conductor() {
        return about.make() instanceof Make.Metal metal ? metal.conductor() : null;
    }

    @Override
    public List<Pin> pins() {
        return List.of(new Pin("one", one), new Pin("two", two));
    }

    @Override
    public Wire rewired(String pin, Net net) {
        return switch (pin) {
            case "one" -> new Wire(name, net, two, ohms, ratedAmps, about);
            case "two" -> new Wire(name, one, net, ohms, ratedAmps, about);
            default -> throw noPin(pin);
        };
    }
}
