package fusetale.explore;

import fusetale.circuit.Circuit;
import fusetale.fault.AmountRange;
import fusetale.fault.Catalogue;
import fusetale.fault.FailureMode;
import fusetale.fault.Fault;
import fusetale.fault.UnfitSupposition;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * What becomes of a fault when a part fails there again. Consequences come with a usual amount, what such a part is found with
 * after its first overload; a part that was worse already does not mend by it.
 */
final class Severity {
    /** Contacts whose resistance grew, whatever it grew by. */
    private static final Set<FailureMode> CONTACTS =
            EnumSet.of(FailureMode.BURNT, FailureMode.LOOSE, FailureMode.CRACKED_JOINT, FailureMode.OPEN);

    private final Circuit healthy;

    /**
     * Of faults of a machine.
     *
     * @param healthy as built
     */
    Severity(Circuit healthy) {
        this.healthy = healthy;
    }

    /** The worse of two faults of one place that contradict each other, or of what both make of it together. */
    Fault worse(Fault there, Fault next) {
        boolean turns = next.mode() == FailureMode.SHORTED_TURNS;
        if (turns && there.mode() == FailureMode.SHORTED_TURNS) {
            return fewerTurns(there, next);
        }
        boolean sooner = turns && (there.mode() == FailureMode.SHORT || there.mode() == FailureMode.OPEN);
        return sooner || atLeastAsBad(there, next) ? there : next;
    }

    private boolean atLeastAsBad(Fault there, Fault next) {
        double was = amount(there);
        double is = amount(next);
        if (next.mode() == FailureMode.BURNT) {
            return CONTACTS.contains(there.mode()) && was >= is;
        }
        if (there.mode() != next.mode()) {
            return false;
        }
        return next.mode() == FailureMode.SHORT ? was <= is : was >= is;
    }

    /** Of the turns that were left, as many short as of a sound winding. */
    private Fault fewerTurns(Fault there, Fault next) {
        double least = range(next).map(AmountRange::lowSi).orElse(0.0);
        double left = Math.max(least, amount(there) * amount(next));
        return new Fault(next.part(), next.place(), next.mode(), new Quantity(left, Unit.RATIO));
    }

    private double amount(Fault fault) {
        Quantity said = fault.amount();
        return said != null ? said.si() : range(fault).map(AmountRange::usualSi).orElse(0.0);
    }

    private Optional<AmountRange> range(Fault fault) {
        try {
            return Optional.ofNullable(Catalogue.form(healthy, fault).amount());
        } catch (UnfitSupposition e) {
            return Optional.empty();
        }
    }
}
