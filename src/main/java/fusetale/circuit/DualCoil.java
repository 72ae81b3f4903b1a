package fusetale.circuit;

import fusetale.quantity.Toleranced;
import java.util.List;

/**
 * A coil of a strong and a holding winding in series, the holding one bridged by an end-of-stroke switch until the plunger is in.
 *
 * @param name reference designator
 * @param one first pin's net
 * @param two second pin's net
 * @param powerOhms strong winding at its temperature
 * @param powerHenries its inductance
 * @param holdOhms holding winding at its temperature
 * @param holdHenries its inductance
 * @param endOfStroke how the switch behaves
 * @param pulledIn whether the plunger is in
 * @param about notes
 */
public record DualCoil(
        String name,
        Net one,
        Net two,
        Toleranced powerOhms,
        Toleranced powerHenries,
        Toleranced holdOhms,
        Toleranced holdHenries,
        EndOfStroke endOfStroke,
        boolean pulledIn,
        About about)
        implements Part {
    /** The same with another strong winding. */
    public DualCoil withPower(Toleranced ohms, Toleranced henries) {
        return new DualCoil(name, one, two, ohms, henries, holdOhms, holdHenries, endOfStroke, pulledIn, about);
    }

    /** The same with another holding winding. */
    public DualCoil withHold(Toleranced ohms, Toleranced henries) {
        return new DualCoil(name, one, two, powerOhms, powerHenries, ohms, henries, endOfStroke, pulledIn, about);
    }

    /** The same with a switch that behaves otherwise. */
    public DualCoil with(EndOfStroke other) {
        return new DualCoil(name, one, two, powerOhms, powerHenries, holdOhms, holdHenries, other, pulledIn, about);
    }

    /** The same with its plunger in. */
    public DualCoil withPlungerIn() {
        return new DualCoil(name, one, two, powerOhms, powerHenries, holdOhms, holdHenries, endOfStroke, true, about);
    }

    /** Current of the strong winding that pulls the plunger in, by the power it takes at 25 °C [A]. */
    public double pullsInFromAmps() {
        return Math.sqrt(Coil.PULLS_IN_WATTS / (powerOhms.si() * about.statedRatio()));
    }

    /** Current of the holding winding that keeps it in, by the power it takes at 25 °C [A]. */
    public double holdsFromAmps() {
        return Math.sqrt(Coil.HOLDS_WATTS / (holdOhms.si() * about.statedRatio()));
    }

    /** What its strong winding is made of. */
    public Wound powerWound() {
        return about.wound(Make.Windings.POWER, Wound.ofSolenoid());
    }

    /** What its holding winding is made of. */
    public Wound holdWound() {
        return about.wound(Make.Windings.HOLD, Wound.ofHolding());
    }

    @Override
    public List<Pin> pins() {
        return List.of(new Pin("one", one), new Pin("two", two));
    }

    @Override
    public DualCoil rewired(String pin, Net net) {
        return switch (pin) {
            case "one" ->
                new DualCoil(
                        name, net, two, powerOhms, powerHenries, holdOhms, holdHenries, endOfStroke, pulledIn, about);
            case "two" ->
                new DualCoil(
                        name, one, net, powerOhms, powerHenries, holdOhms, holdHenries, endOfStroke, pulledIn, about);
            default -> throw noPin(pin);
        };
    }
}
