package fusetale.circuit;

import fusetale.quantity.Toleranced;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A fuse in its clips.
 *
 * @param name reference designator
 * @param one first pin's net
 * @param two second pin's net
 * @param marked what the schematic and the marking ask for
 * @param fitted what sits in the clips
 * @param clipOhms both clips together
 * @param about notes
 */
public record Fuse(String name, Net one, Net two, FuseLink marked, FuseLink fitted, Toleranced clipOhms, About about)
        implements Part {
    /** Its clips or holder, or null where the file does not name one. */
    public @Nullable ClipModel holder() {
        return about.make() instanceof Make.Clips clips ? clips.model() : null;
    }

    @Override
    public List<Pin> pins() {
        return List.of(new Pin("one", one), new Pin("two", two));
    }

    @Override
    public Fuse rewired(String pin, Net net) {
        return switch (pin) {
            case "one" -> new Fuse(name, net, two, marked, fitted, clipOhms, about);
            case "two" -> new Fuse(name, one, net, marked, fitted, clipOhms, about);
            default -> throw noPin(pin);
        };
    }
}
