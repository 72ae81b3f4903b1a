package fusetale.circuit;

import fusetale.quantity.Quantity;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A logic output that drives something: a source of two levels behind resistances, or off.
 *
 * @param name reference designator
 * @param out net of the pin of that name
 * @param supply net of the pin of that name
 * @param ground net of the pin of that name
 * @param highOhms resistance from the supply when high
 * @param lowOhms resistance to ground when low
 * @param state level at rest
 * @param commands the coil or lamp that this output switches on when it leaves its state at rest, where it does
 * @param about notes
 */
public record LogicOutput(
        String name,
        Net out,
        Net supply,
        Net ground,
        Quantity highOhms,
        Quantity lowOhms,
        State state,
        @Nullable String commands,
        About about)
        implements Part {
    /** What the output does. */
    public enum State {
        /** Pulled up to the supply. */
        HIGH,
        /** Pulled down to ground. */
        LOW,
        /** Neither. */
        OFF
    }

    @Override
    public List<Pin> pins() {
        return List.of(new Pin("out", out), new Pin("supply", supply), new Pin("ground", ground));
    }

    @Override
    public LogicOutput rewired(String pin, Net net) {
        return switch (pin) {
            case "out" -> new LogicOutput(name, net, supply, ground, highOhms, lowOhms, state, commands, about);
            case "supply" -> new LogicOutput(name, out, net, ground, highOhms, lowOhms, state, commands, about);
            case "ground" -> new LogicOutput(name, out, supply, net, highOhms, lowOhms, state, commands, about);
            default -> throw noPin(pin);
        };
    }
}
