package fusetale.studies;

import fusetale.circuit.Circuit;
import fusetale.fault.AmountRange;
import fusetale.fault.Catalogue;
import fusetale.fault.Fault;
import fusetale.fault.FaultForm;
import fusetale.fault.Supposition;
import fusetale.fault.UnfitSupposition;
import fusetale.quantity.Quantity;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Suppositions to try a machine with. */
final class Cases {
    private static final int DIGITS = 3;

    private Cases() {}

    /** Nothing, and every single failure at the ends and in the middle of its amount. */
    static List<Supposition> singles(Circuit circuit) {
        List<Supposition> singles = new ArrayList<>();
        singles.add(Supposition.NOTHING);
        for (FaultForm form : Catalogue.possible(circuit)) {
            AmountRange range = form.amount();
            if (range == null) {
                singles.add(new Supposition(List.of(form.usual())));
            } else {
                double low = range.lowSi();
                double high = range.highSi();
                double[] amounts = {low, between(low, high, 1.0 / 2), high};
                for (double amount : amounts) {
                    singles.add(new Supposition(List.of(form.of(new Quantity(amount, range.unit())))));
                }
            }
        }
        return singles;
    }

    /**
     * Two failures at once, each of any form with equal chance, its amount drawn evenly on a logarithmic scale; pairs that
     * contradict each other are drawn again.
     *
     * @param seed the same seed gives the same suppositions
     */
    static List<Supposition> doubles(Circuit circuit, int count, long seed) {
        List<FaultForm> forms = Catalogue.possible(circuit);
        SplittableRandom random = new SplittableRandom(seed);
        List<Supposition> doubles = new ArrayList<>();
        while (doubles.size() < count) {
            Supposition drawn = new Supposition(List.of(fault(forms, random), fault(forms, random)));
            if (fits(circuit, drawn)) {
                doubles.add(drawn);
            }
        }
        return doubles;
    }

    private static boolean fits(Circuit circuit, Supposition supposition) {
        try {
            Catalogue.check(circuit, supposition);
            return true;
        } catch (UnfitSupposition e) {
            return false;
        }
    }

    private static Fault fault(List<FaultForm> forms, SplittableRandom random) {
        FaultForm form = forms.get(random.nextInt(forms.size()));
        double part = random.nextDouble();
        AmountRange range = form.amount();
        return range == null
                ? form.usual()
                : form.of(new Quantity(between(range.lowSi(), range.highSi(), part), range.unit()));
    }

    /** On a logarithmic scale where there is one, in three figures so that it can be typed. */
    private static double between(double low, double high, double part) {
        double value = low > 0 ? low * Math.pow(high / low, part) : low + (high - low) * part;
        double typed = new BigDecimal(value).round(new MathContext(DIGITS)).doubleValue();
        return Math.min(high, Math.max(low, typed));
    }
}
