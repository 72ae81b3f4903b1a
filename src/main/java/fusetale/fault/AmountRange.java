package fusetale.fault;

import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;

/**
 * What a fault's amount may be. An amount always says what there is now, never what was lost.
 *
 * @param unit its unit; {@link Unit#RATIO} for "left" and "of nominal"
 * @param usual amount where none is said, SI
 * @param low lowest that makes sense, SI
 * @param high highest that makes sense, SI
 */
public record AmountRange(Unit unit, double usual, double low, double high) {
    /** Refuses a usual amount outside the bounds. */
    public AmountRange {
        if (!(low <= usual && usual <= high)) {
            throw new IllegalArgumentException("usual amount " + usual + " not within " + low + " to " + high);
        }
    }

    /** What is left of a short. */
    static final AmountRange SHORTED = ohms(Failing.SHORT_OHMS, 1e-3, 10);

    /** What is left of an open. */
    static final AmountRange OPENED = ohms(Failing.OPEN_OHMS, 10e3, 10e9);

    /** A path that should not be there. */
    static AmountRange leak(double usual) {
        return ohms(usual, 0.1, 10e6);
    }

    /** A contact gone bad. */
    static AmountRange contact(double usual) {
        return ohms(usual, 0.01, 10e6);
    }

    /** An amount in ohms, usually {@code usual}. */
    static AmountRange ohms(double usual, double low, double high) {
        return new AmountRange(Unit.OHM, usual, low, high);
    }

    /** A share of what there should be, usually {@code usual}. */
    static AmountRange ratio(double usual, double low, double high) {
        return new AmountRange(Unit.RATIO, usual, low, high);
    }

    /** Whether an amount has this unit and lies within the bounds. */
    public boolean holds(Quantity amount) {
        return amount.unit() == unit && amount.si() >= low && amount.si() <= high;
    }
}
