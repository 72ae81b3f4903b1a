package fusetale.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Writes quantities. */
final class QuantityPrinter {
    /** Digits that any decimal survives in a double, and digits that any double survives in. */
    private static final int SAFE_DIGITS = 15;

    private static final int EXACT_DIGITS = 17;
    private static final BigDecimal LARGEST_PLAIN = new BigDecimal("1e7");
    private static final BigDecimal SMALLEST_PLAIN = new BigDecimal("1e-3");

    private QuantityPrinter() {}

    /** The shortest decimal that is this double again when read. */
    static BigDecimal shortest(double value) {
        BigDecimal exact = new BigDecimal(value);
        for (int digits = SAFE_DIGITS; digits < EXACT_DIGITS; digits++) {
            BigDecimal rounded = exact.round(new MathContext(digits, RoundingMode.HALF_EVEN));
            if (rounded.doubleValue() == value) {
                return rounded;
            }
        }
        return exact.round(new MathContext(EXACT_DIGITS, RoundingMode.HALF_EVEN));
    }

    static BigDecimal rounded(double value, int significantDigits) {
        return new BigDecimal(value).round(new MathContext(significantDigits, RoundingMode.HALF_UP));
    }

    /** Number, space, prefix and unit; ratios as a per cent, above one as × k. */
    static String print(BigDecimal value, Unit unit, boolean typed) {
        if (unit == Unit.RATIO) {
            return value.abs().compareTo(BigDecimal.ONE) > 0
                    ? (typed ? "x" : "× ") + number(value)
                    : number(value.movePointRight(2)) + " %";
        }
        String prefix = prefix(value, unit);
        BigDecimal mantissa = value.scaleByPowerOfTen(-Lettering.exponent(prefix));
        return number(mantissa) + " " + (typed ? prefix + unit.symbol() : sign(prefix) + sign(unit));
    }

    /** The letter-and-digit code of IEC 60062, with a small k as the bench writes it and u for micro. */
    static String code(BigDecimal value, Unit unit) {
        String own = unit == Unit.OHM ? "R" : "F";
        String prefix = largest(value, unit == Unit.OHM ? "kMGT" : unit.prefixes());
        String digits = plain(value.scaleByPowerOfTen(-Lettering.exponent(prefix)));
        return Lettering.coded(digits, (prefix.isEmpty() ? own : prefix).charAt(0));
    }

    private static String prefix(BigDecimal value, Unit unit) {
        // repairers count in μF up to a whole farad: 10000 μF, never 10 mF
        String prefix = largest(value, unit == Unit.FARAD ? "pnu" : unit.prefixes());
        BigDecimal mantissa = value.abs().scaleByPowerOfTen(-Lettering.exponent(prefix));
        return mantissa.compareTo(SMALLEST_PLAIN) < 0 ? "" : prefix;
    }

    /** The largest prefix, or none, that leaves one or more before the point; the smallest where none does. */
    private static String largest(BigDecimal value, String prefixes) {
        String best = "";
        boolean found = fits(value, "");
        for (int i = prefixes.length() - 1; i >= 0; i--) {
            String prefix = prefixes.substring(i, i + 1);
            int exponent = Lettering.exponent(prefix);
            if (exponent > 0 && fits(value, prefix)) {
                return prefix;
            }
            if (exponent < 0 && !found && value.signum() != 0) {
                best = prefix;
                found = fits(value, prefix);
            }
        }
        return best;
    }

    private static boolean fits(BigDecimal value, String prefix) {
        return value.abs().scaleByPowerOfTen(-Lettering.exponent(prefix)).compareTo(BigDecimal.ONE) >= 0;
    }

    private static String sign(String prefix) {
        return prefix.equals("u") ? "μ" : prefix;
    }

    private static String sign(Unit unit) {
        return unit == Unit.OHM ? "Ω" : unit.symbol();
    }

    private static String number(BigDecimal value) {
        BigDecimal size = value.abs();
        if (size.signum() != 0 && (size.compareTo(LARGEST_PLAIN) >= 0 || size.compareTo(SMALLEST_PLAIN) < 0)) {
            BigDecimal digits = value.stripTrailingZeros();
            int exponent = digits.precision() - digits.scale() - 1;
            return plain(digits.scaleByPowerOfTen(-exponent)) + "e" + exponent;
        }
        return plain(value);
    }

    private static String plain(BigDecimal value) {
        return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    }
}
