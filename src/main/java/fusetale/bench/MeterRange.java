package fusetale.bench;

import fusetale.circuit.MeterFunction;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * One range of a meter and its accuracy, ±(% of reading + counts).
 *
 * @param fullScale most it shows, SI
 * @param resolution its last digit, SI
 * @param readingRatio share of the reading in the accuracy: 0.005 for 0.5 %
 * @param counts counts of the last digit in the accuracy
 */
public record MeterRange(double fullScale, double resolution, double readingRatio, int counts) {
    /** Refuses ranges that cannot show anything. */
    public MeterRange {
        if (!(fullScale > 0 && resolution > 0 && resolution <= fullScale && readingRatio >= 0 && counts >= 0)) {
            throw new IllegalArgumentException("a range of " + fullScale + " in steps of " + resolution);
        }
    }

    /** Whether a value can be shown, rounded to the last digit. */
    public boolean holds(double value) {
        return Math.round(Math.abs(value) / resolution) <= Math.round(fullScale / resolution);
    }

    /** Half-width of the accuracy at a value, SI. */
    public double halfWidth(double value) {
        return readingRatio * Math.abs(value) + counts * resolution;
    }

    /** The value as the display prints it, with its unit: {@code 12.34 V}, {@code 4.70 kΩ}. */
    public String shows(double value, MeterFunction function) {
        String unit = function == MeterFunction.OHMS ? "Ω" : "V";
        int exponent = exponent();
        BigDecimal counted = BigDecimal.valueOf(Math.round(value / resolution))
                .multiply(BigDecimal.valueOf(resolution))
                .scaleByPowerOfTen(-exponent);
        int decimals = Math.max(0, exponent - (int) Math.floor(Math.log10(resolution) + 1e-9));
        String prefix = switch (exponent) {
            case -3 -> "m";
            case 3 -> "k";
            case 6 -> "M";
            default -> "";
        };
        return counted.setScale(decimals, RoundingMode.HALF_EVEN).toPlainString() + " " + prefix + unit;
    }

    /** The reading of a value in this range. */
    Reading reading(Check check, double value) {
        boolean over = !holds(value);
        String shows = over ? "OL" : shows(value, check.function());
        return new Reading(check, value, over, shows, halfWidth(value));
    }

    private int exponent() {
        if (fullScale < 1) {
            return -3;
        }
        if (fullScale <= 1000) {
            return 0;
        }
        return fullScale < 1e6 ? 3 : 6;
    }
}
