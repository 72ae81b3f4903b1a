package fusetale.desk.bars;

import fusetale.bench.Reading;
import fusetale.circuit.Circuit;
import fusetale.explore.Compared;
import fusetale.explore.Words;
import fusetale.report.Figures;
import fusetale.report.Pairs;

/**
 * One test point beside what healthy machines show, as shares of the healthy reading: 1 is as healthy, whatever it is in volts
 * or ohms, so that a rail of 5 V and one of 190 V stand on one scale.
 *
 * @param point {@code TP2}
 * @param reading as built and as supposed
 */
public record BarRow(String point, Compared reading) {
    private static final Words WORDS = Words.of(BarRow.class);

    /** The row of one reading of a circuit. */
    public static BarRow of(Circuit circuit, Compared reading) {
        return new BarRow(Pairs.name(circuit, reading.check()), reading);
    }

    /** Whether a healthy machine reads nothing here, within the meter's accuracy: no share of that says anything. */
    public boolean healthyReadsNothing() {
        Reading built = reading.asBuilt();
        return !built.overRange() && Math.abs(built.value()) <= built.halfWidth();
    }

    /** 1, or infinite where a healthy machine shows OL. */
    public double builtRatio() {
        return reading.asBuilt().overRange() ? Double.POSITIVE_INFINITY : 1;
    }

    /**
     * The supposed reading as a share of the healthy one; infinite where it is OL, negative where its sign is the other. Where
     * a healthy machine reads nothing it is 1 as long as that cannot be told, and beyond every scale otherwise.
     */
    public double supposedRatio() {
        Reading supposed = reading.asSupposed();
        if (supposed.overRange()) {
            return Double.POSITIVE_INFINITY;
        }
        if (healthyReadsNothing()) {
            return reading.tooCloseToTell() ? 1 : Math.copySign(Double.MAX_VALUE, supposed.value());
        }
        return share(supposed.value());
    }

    /** Lower end of what healthy machines show as a share of the healthy reading; infinite where it is OL. */
    public double lowRatio() {
        double low = share(reading.healthy().low());
        double high = share(reading.healthy().high());
        return healthyReadsNothing() ? 1 : Math.min(low, high);
    }

    /** Upper end as a share; infinite where some healthy machines show OL. */
    public double highRatio() {
        double low = share(reading.healthy().low());
        double high = share(reading.healthy().high());
        return healthyReadsNothing() ? 1 : Math.max(low, high);
    }

    /** Healthy display. */
    public String built() {
        return Figures.shortDisplay(reading.asBuilt());
    }

    /** Supposed display. */
    public String supposed() {
        return Figures.shortDisplay(reading.asSupposed());
    }

    /** What healthy machines show, in words. */
    public String range() {
        return Figures.range(reading);
    }

    /** The row as a screen reader says it. */
    public String spoken() {
        return WORDS.say(
                reading.tooCloseToTell() ? "spoken.close" : "spoken.moved",
                point,
                reading.check().function().words(),
                built(),
                range(),
                supposed());
    }

    private double share(double value) {
        if (Double.isInfinite(value)) {
            return Double.POSITIVE_INFINITY;
        }
        Reading built = reading.asBuilt();
        // of OL every figure is as good as none
        return built.overRange() ? 0 : value / built.value();
    }
}
