package fusetale.desk.line;

import fusetale.fault.AmountRange;
import fusetale.quantity.Quantity;
import java.math.BigDecimal;
import java.math.MathContext;

/**
 * Where an amount stands between the least and the most it can be: by its logarithm where the two differ by more than a factor of
 * fifty, else evenly. Amounts on it have two figures, as a hand cannot set more.
 *
 * @param range least, usual, most
 */
public record AmountScale(AmountRange range) {
    private static final double WIDE = 50;
    private static final MathContext FIGURES = new MathContext(2);

    /** Position of an amount, 0 to 1. */
    public double position(double si) {
        double low = range.lowSi();
        double high = range.highSi();
        double within = Math.max(low, Math.min(si, high));
        if (high <= low) {
            return 0;
        }
        return logarithmic() ? Math.log(within / low) / Math.log(high / low) : (within - low) / (high - low);
    }

    /** The amount at a position from 0 to 1, in two figures, within the bounds. */
    public Quantity at(double position) {
        double low = range.lowSi();
        double high = range.highSi();
        double share = Math.max(0, Math.min(position, 1));
        double si = logarithmic() ? low * Math.pow(high / low, share) : low + share * (high - low);
        double rounded = new BigDecimal(si).round(FIGURES).doubleValue();
        return new Quantity(Math.max(low, Math.min(rounded, high)), range.unit());
    }

    private boolean logarithmic() {
        return range.lowSi() > 0 && range.highSi() / range.lowSi() > WIDE;
    }
}
