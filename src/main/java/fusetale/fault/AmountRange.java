package fusetale.fault;

import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;

/**
 * What a fault's amount may be. An amount always says what there is now, never what was lost.
 *
 * @param unit its unit; {@link Unit#RATIO} for "left" and "of nominal"
 * @param usualSi amount where none is said, SI
 * @param lowSi lowest that makes sense, SI
 * @param highSi highest that makes sense, SI
 */
public record AmountRange(Unit unit, double usualSi, double lowSi, double highSi) {
    /** Refuses a usual amount outside the bounds. */
    public AmountRange {
        if (!(lowSi <= usualSi && usualSi <= highSi)) {
            throw new IllegalArgumentException("usual amount " + usualSi + " not within " + lowSi + " to " + highSi);
        }
    }

    /** What is left of a short. */
    static final AmountRange SHORTED = ohms(Failing.SHORT_OHMS, 1e-3, 10);

    /** What is left of an open. */
    static final AmountRange OPENED = ohms(Failing.OPEN_OHMS, 10e3, 10e9);

    /** A path that should not be there. */
    static AmountRange leak(double usualSi) {
        return ohms(usualSi, 0.1, 10e6);
    }

    /** A contact gone bad. */
    static AmountRange contact(double usualSi) {
        return ohms(usualSi, 0.01, 10e6);
    }

    /** A winding of so many ohms [Ω] with a joint gone bad: what it measures now, usually ten times as much. */
    static AmountRange partlyOpen(double soundSi) {
        return ohms(10 * soundSi, soundSi, Math.max(10e6, 100 * soundSi));
    }

    /** An amount in ohms, usually {@code usualSi}. */
    static AmountRange ohms(double usualSi, double lowSi, double highSi) {
        return new AmountRange(Unit.OHM, usualSi, lowSi, highSi);
    }

    /** A share of what there should be, usually {@code usualSi}. */
    static AmountRange ratio(double usualSi, double lowSi, double highSi) {
        return new AmountRange(Unit.RATIO, usualSi, lowSi, highSi);
    }

    /** Whether an amount has this unit and lies within the bounds. */
    public boolean holds(Quantity amount) {
        return amount.unit() == unit && amount.si() >= lowSi && amount.si() <= highSi;
    }
}
