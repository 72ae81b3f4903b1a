package fusetale.match;

import fusetale.fault.AmountRange;
import fusetale.fault.Fault;
import fusetale.fault.Supposition;
import fusetale.quantity.Quantity;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What may be wrong: faults, one of which may have an amount that is not known.
 *
 * @param usual with every amount left at its usual
 * @param varied place of the fault whose amount varies; -1 for none
 * @param range what it may be; null for none
 * @param weight how often it happens, against the others
 * @param repair what would have to be changed
 */
record Hypothesis(Supposition usual, int varied, @Nullable AmountRange range, double weight, Repair repair) {
    /** The supposition with its amount at a share of the way from the least to the most, on a log scale. */
    Supposition at(double share) {
        AmountRange of = range;
        if (of == null || varied < 0) {
            return usual;
        }
        double si = least(of) * Math.pow(most(of) / least(of), share);
        List<Fault> faults = new ArrayList<>(usual.faults());
        Fault fault = faults.get(varied);
        faults.set(varied, new Fault(fault.part(), fault.place(), fault.mode(), new Quantity(rounded(si), of.unit())));
        return new Supposition(faults);
    }

    /** Whether its amount varies. */
    boolean varies() {
        return range != null;
    }

    /** Three figures are enough to say. */
    private static double rounded(double si) {
        double scale = Math.pow(10, 2 - Math.floor(Math.log10(si)));
        return Math.rint(si * scale) / scale;
    }

    /** A share left over runs from a quarter of the usual to twice it, an amount in ohms a decade either way. */
    private static double least(AmountRange of) {
        boolean ratio = of.unit() == fusetale.quantity.Unit.RATIO;
        return Math.max(of.lowSi(), of.usualSi() / (ratio ? 4 : 10));
    }

    private static double most(AmountRange of) {
        boolean ratio = of.unit() == fusetale.quantity.Unit.RATIO;
        return Math.min(of.highSi(), of.usualSi() * (ratio ? 2 : 10));
    }
}
