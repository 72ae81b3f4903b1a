package fusetale.circuit;

import fusetale.quantity.Quantity;
import fusetale.quantity.Toleranced;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A solenoid coil with one winding.
 *
 * @param name reference designator
 * @param one first pin's net
 * @param two second pin's net
 * @param ohms winding resistance at its temperature
 * @param henries inductance, plunger out
 * @param pullInAmps current that pulls the plunger in, where known
 * @param holdAmps current that holds it, where known
 * @param about notes
 */
public record Coil(
        String name,
        Net one,
        Net two,
        Toleranced ohms,
        Toleranced henries,
        @Nullable Quantity pullInAmps,
        @Nullable Quantity holdAmps,
        About about)
        implements Part {
    /** What its winding is made of. */
    public Wound wound() {
        return about.wound(Make.Windings.ALONE, Wound.ofSolenoid());
    }

    @Override
    public List<Pin> pins() {
        return List.of(new Pin("one", one), new Pin("two", two));
    }

    @Override
    public Coil rewired(String pin, Net net) {
        return switch (pin) {
            case "one" -> new Coil(name, net, two, ohms, henries, pullInAmps, holdAmps, about);
            case "two" -> new Coil(name, one, net, ohms, henries, pullInAmps, holdAmps, about);
            default -> throw noPin(pin);
        };
    }
}
