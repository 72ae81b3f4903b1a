package fusetale.fault;

import fusetale.circuit.Mains;
import fusetale.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * One way in which one part of a circuit can fail.
 *
 * @param part designator of the part or connector
 * @param place what of it, as in {@link Fault#place()}; empty for the whole part
 * @param placeWords the place as a sentence says it: {@code leg 1}, {@code C to E}; empty for the whole part
 * @param mode how it fails
 * @param phrase how a sentence says it
 * @param amount bounds of the amount; null where the mode takes none
 * @param prior how often it happens, and where that is from
 * @param telling what to tell of it
 */
public record FaultForm(
        String part,
        String place,
        String placeWords,
        FailureMode mode,
        Phrase phrase,
        @Nullable AmountRange amount,
        Prior prior,
        Telling telling) {
    /** This fault with its usual amount, left unsaid. */
    public Fault usual() {
        return new Fault(part, place, mode, null);
    }

    /** This fault with an amount; not checked against the bounds. */
    public Fault of(Quantity quantity) {
        return new Fault(part, place, mode, quantity);
    }

    /** Whether {@code fault} is of this form, whatever its amount. */
    public boolean covers(Fault fault) {
        return fault.part().equals(part) && fault.place().equals(place) && fault.mode() == mode;
    }

    /** Relative weight, failures in 10⁶ hours of a machine of that age; only ratios mean something. */
    public double priorRatio() {
        return prior.ratio();
    }

    /** The part as a sentence names it: its designator, or {@code the mains}. */
    public String named() {
        return part.equals(Mains.NAME) ? "the " + part : part;
    }

    /** {@code BR201.leg1} or {@code F201}. */
    public String target() {
        return usual().target();
    }
}
