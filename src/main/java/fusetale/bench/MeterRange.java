package fusetale.bench;

import fusetale.circuit.MeterFunction;
import fusetale.circuit.MeterModel;
import fusetale.quantity.Unit;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * One range of a meter and its accuracy, ±(share of reading + share of full scale + counts).
 *
 * @param fullScale most it shows, SI
 * @param resolution its last digit, or what an eye reads between two marks of a scale, SI
 * @param readingRatio share of the reading in the accuracy: 0.005 for 0.5 %
 * @param fullScaleRatio share of full scale in the accuracy, as sheets of meters with a needle state it
 * @param counts counts of the last digit in the accuracy
 */
public record MeterRange(double fullScale, double resolution, double readingRatio, double fullScaleRatio, int counts) {
    /** A full scale that is called by a round number may lie so many counts below it: 199.9 V is the 200 V range. */
    private static final double ROUND_COUNTS = 1.001;

    /** Refuses ranges that cannot show anything. */
    public MeterRange {
        if (!(fullScale > 0
                && resolution > 0
                && resolution <= fullScale
                && readingRatio >= 0
                && fullScaleRatio >= 0
                && counts >= 0)) {
            throw new IllegalArgumentException("a range of " + fullScale + " in steps of " + resolution);
        }
    }

    /** A range with an accuracy of ±(share of reading + counts). */
    public MeterRange(double fullScale, double resolution, double readingRatio, int counts) {
        this(fullScale, resolution, readingRatio, 0, counts);
    }

    static MeterRange of(MeterModel.Range range) {
        return new MeterRange(
                range.fullScaleSi(),
                range.resolutionSi(),
                range.readingRatio(),
                range.fullScaleRatio(),
                range.counts());
    }

    /** Whether a value can be shown, rounded to the last digit. */
    public boolean holds(double value) {
        return Math.round(Math.abs(value) / resolution) <= Math.round(fullScale / resolution);
    }

    /** Whether this is the range that a repairer calls by a figure: its full scale, or one count above it. */
    public boolean isCalled(double figure) {
        double above = figure - fullScale;
        return above > -1e-9 * fullScale && above <= ROUND_COUNTS * resolution;
    }

    /** Half-width of the accuracy at a value, SI. */
    public double halfWidth(double value) {
        return readingRatio * Math.abs(value) + fullScaleRatio * fullScale + counts * resolution;
    }

    /** The value as the display prints it, with its unit: {@code 12.34 V}, {@code 4.70 kΩ}. */
    public String shows(double value, MeterFunction function) {
        String unit = function.unit() == Unit.OHM ? "Ω" : function.unit().symbol();
        int exponent = exponent();
        BigDecimal step = new BigDecimal(Double.toString(resolution)).stripTrailingZeros();
        BigDecimal counted = BigDecimal.valueOf(Math.round(value / resolution))
                .multiply(step)
                .scaleByPowerOfTen(-exponent);
        int decimals = Math.max(0, step.scale() + exponent);
        String prefix = switch (exponent) {
            case -6 -> "μ";
            case -3 -> "m";
            case 3 -> "k";
            case 6 -> "M";
            default -> "";
        };
        return counted.setScale(decimals, RoundingMode.HALF_EVEN).toPlainString() + " " + prefix + unit;
    }

    /**
     * The reading of a value in this range.
     *
     * @param overShows what the meter shows where this range does not hold the value
     */
    Reading reading(Check check, double value, String overShows) {
        boolean over = !holds(value);
        String shows = over ? overShows : shows(value, check.function());
        return new Reading(check, value, over, shows, halfWidth(value));
    }

    private int exponent() {
        if (fullScale < 1e-3) {
            return -6;
        }
        if (fullScale < 1) {
            return -3;
        }
        if (fullScale <= 1000) {
            return 0;
        }
        return fullScale < 1e6 ? 3 : 6;
    }
}
