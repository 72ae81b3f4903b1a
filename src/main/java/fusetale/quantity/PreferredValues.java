package fusetale.quantity;

import java.util.Arrays;

/**
 * The preferred number series of IEC 60063, in which resistors and capacitors are made.
 *
 * <p>E3 to E24 have two digits and are a table: the standard keeps eight historical values of E24 (27 30 33 36 39 43 47
 * 82) that the geometric rule would make 26 29 32 35 38 42 46 83. E48 to E192 have three digits and follow the rule
 * round(100 · 10^(i/n)), but for 920 in E192, where the rule would say 919.
 */
public enum PreferredValues {
    /** Three values a decade. */
    E3(3),
    /** Six values a decade, for ±20 %. */
    E6(6),
    /** Twelve values a decade, for ±10 %. */
    E12(12),
    /** Twenty-four values a decade, for ±5 %. */
    E24(24),
    /** Forty-eight values a decade, for ±2 %. */
    E48(48),
    /** Ninety-six values a decade, for ±1 %. */
    E96(96),
    /** A hundred and ninety-two values a decade, for ±0.5 % and finer. */
    E192(192);

    private static final int[] TWO_DIGITS = {
        10, 11, 12, 13, 15, 16, 18, 20, 22, 24, 27, 30, 33, 36, 39, 43, 47, 51, 56, 62, 68, 75, 82, 91
    };
    /** Far below the step of any series, far above the rounding of a double. */
    private static final double SAME_RATIO = 1e-9;

    private final int perDecade;

    PreferredValues(int perDecade) {
        this.perDecade = perDecade;
    }

    /** One decade of the series, from 1 to below 10, ascending. */
    public double[] decade() {
        double[] values = new double[perDecade];
        for (int i = 0; i < perDecade; i++) {
            if (perDecade <= TWO_DIGITS.length) {
                values[i] = TWO_DIGITS[i * (TWO_DIGITS.length / perDecade)] / 10.0;
            } else {
                long hundredths = Math.round(100 * Math.pow(10, i / (double) perDecade));
                values[i] = (hundredths == 919 ? 920 : hundredths) / 100.0;
            }
        }
        return values;
    }

    /**
     * The value of the series that is off by least; of two equally far ones the smaller.
     *
     * @param value more than 0
     */
    public Quantity nearest(Quantity value) {
        if (!(value.si() > 0)) {
            throw new IllegalArgumentException("no preferred value is near " + value);
        }
        int power = (int) Math.floor(Math.log10(value.si()));
        // the decades on both sides too: 9.9 is nearest to 10, and the logarithm may be off by a rounding
        double best = Arrays.stream(new int[] {power - 1, power, power + 1})
                .boxed()
                .flatMap(p -> Arrays.stream(decade()).mapToObj(step -> scaled(step, p)))
                .min((one, two) -> Double.compare(Math.abs(one - value.si()), Math.abs(two - value.si())))
                .orElseThrow();
        return new Quantity(best, value.unit());
    }

    /** Whether a value is of the series, in any decade, up to the rounding of a double. */
    public boolean contains(Quantity value) {
        return value.si() > 0 && Math.abs(nearest(value).si() / value.si() - 1) < SAME_RATIO;
    }

    private static double scaled(double step, int power) {
        return QuantityPrinter.shortest(step).scaleByPowerOfTen(power).doubleValue();
    }
}
