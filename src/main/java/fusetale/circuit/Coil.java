package fusetale.circuit;

import fusetale.quantity.Quantity;
import fusetale.quantity.Toleranced;
import fusetale.quantity.Unit;
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
    /**
     * Power in a sound winding at 25 °C [W] from which a plunger goes in, and from which it stays in, where no currents are
     * stated: judgement, from coils whose currents are, 2 A and 0.8 A through 7 ohm.
     */
    public static final double PULLS_IN_WATTS = 30;

    /** See {@link #PULLS_IN_WATTS}. */
    public static final double HOLDS_WATTS = 4;

    /** Current that pulls the plunger in, as stated, or else by the power it takes, in proportion to the other one [A]. */
    public double pullsInFromAmps() {
        if (pullInAmps != null) {
            return pullInAmps.si();
        }
        return holdAmps == null
                ? Math.sqrt(PULLS_IN_WATTS / statedOhms())
                : holdAmps.si() * Math.sqrt(PULLS_IN_WATTS / HOLDS_WATTS);
    }

    /** Current that keeps it in, likewise [A]: never more than pulls it in. */
    public double holdsFromAmps() {
        return holdAmps == null ? pullsInFromAmps() * Math.sqrt(HOLDS_WATTS / PULLS_IN_WATTS) : holdAmps.si();
    }

    /** The plunger asks for ampere turns, which heat does not change; resistance tells the turns at 25 °C alone [Ω]. */
    private double statedOhms() {
        return ohms.si() * about.statedRatio();
    }

    /**
     * The same plunger in another winding. It asks for the ampere turns it asked for.
     *
     * @param turnsRatio of the turns it has now to those it had
     */
    public Coil rewound(Toleranced otherOhms, Toleranced otherHenries, double turnsRatio) {
        return new Coil(
                name,
                one,
                two,
                otherOhms,
                otherHenries,
                new Quantity(pullsInFromAmps() / turnsRatio, Unit.AMPERE),
                new Quantity(holdsFromAmps() / turnsRatio, Unit.AMPERE),
                about);
    }

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
