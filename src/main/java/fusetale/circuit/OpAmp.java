package fusetale.circuit;

import fusetale.quantity.Quantity;
import java.util.List;

/**
 * An operational amplifier. Its supply is not wired: it is said by two rails, and is there while the machine is switched on.
 *
 * @param name reference designator
 * @param plus net of the non-inverting input
 * @param minus net of the inverting input
 * @param out net of the output
 * @param lowRail its negative supply against ground
 * @param highRail its positive supply against ground
 * @param state whether its output follows its inputs
 * @param model electrical model
 * @param about notes
 */
public record OpAmp(
        String name,
        Net plus,
        Net minus,
        Net out,
        Quantity lowRail,
        Quantity highRail,
        State state,
        OpAmpModel model,
        About about)
        implements Part {
    /** What its output does. */
    public enum State {
        /** Follows the inputs. */
        WORKS,
        /** Stands as high as it can. */
        HIGH,
        /** Stands as low as it can. */
        LOW
    }

    /** The highest its output gets [V]. */
    public double highestVolts() {
        return highRail.si() - model.headroomVolts();
    }

    /** The lowest its output gets [V]. */
    public double lowestVolts() {
        return lowRail.si() + model.headroomVolts();
    }

    /** The same with another model. */
    public OpAmp with(OpAmpModel other) {
        return new OpAmp(name, plus, minus, out, lowRail, highRail, state, other, about);
    }

    /** The same with its output in another state. */
    public OpAmp with(State other) {
        return new OpAmp(name, plus, minus, out, lowRail, highRail, other, model, about);
    }

    /** The same with other notes. */
    public OpAmp with(About other) {
        return new OpAmp(name, plus, minus, out, lowRail, highRail, state, model, other);
    }

    @Override
    public List<Pin> pins() {
        return List.of(new Pin("plus", plus), new Pin("minus", minus), new Pin("out", out));
    }

    @Override
    public OpAmp rewired(String pin, Net net) {
        return switch (pin) {
            case "plus" -> new OpAmp(name, net, minus, out, lowRail, highRail, state, model, about);
            case "minus" -> new OpAmp(name, plus, net, out, lowRail, highRail, state, model, about);
            case "out" -> new OpAmp(name, plus, minus, net, lowRail, highRail, state, model, about);
            default -> throw noPin(pin);
        };
    }
}
