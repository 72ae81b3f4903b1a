package fusetale.circuit;

import fusetale.quantity.Unit;

/**
 * The notation of amounts as regular expressions, for JSON Schema only: what {@code fusetale.quantity.Notation} reads, told
 * again so that an editor marks a wrong unit while one types. Kept to what both JSON Schema (ECMA-262) and Java understand.
 */
final class AmountPattern {
    private static final String NUMBER = "(\\d[\\d ]*([.,]\\d*)?|[.,]\\d+)([eE][+-]?\\d{1,3})?";
    private static final String MICRO = "uUµμ";
    private static final String PER_CENT = "\\d+([.,]\\d+)? ?%";
    private static final String TOLERANCE = "((±|\\+-|\\+/-)? ?" + PER_CENT
            + "|[+-]?\\d+([.,]\\d+)? ?%? ?(\\.\\.|/) ?[+-]?" + PER_CENT + "|[B-DFGHJKMNQTSZ])";

    private AmountPattern() {}

    static String tolerance() {
        return "^" + TOLERANCE + "$";
    }

    static String amount(Unit unit, boolean signed) {
        return "^" + (signed ? "[+-]?" : "\\+?") + amount(unit) + "$";
    }

    static String amountWithTolerance(Unit unit, boolean signed) {
        return "^" + (signed ? "[+-]?" : "\\+?") + amount(unit) + "( ?" + TOLERANCE + ")?$";
    }

    static String span(Unit unit) {
        return "^" + NUMBER + "( ?" + spelt(unit) + ")? ?(\\.\\.|to) ?" + NUMBER + " ?" + spelt(unit) + "$";
    }

    private static String amount(Unit unit) {
        String plain = NUMBER + " ?" + spelt(unit);
        String code = switch (unit) {
            case VOLT -> "\\d*V\\d+";
            case AMPERE -> "\\d*A\\d+";
            case OHM -> "\\d*[RkKMGT]\\d+( ?([oO][hH][mM]s?|Ω|Ω))?";
            case FARAD -> "\\d*[pnmF" + MICRO + "]\\d+F?";
            case HENRY -> "\\d*[nmH" + MICRO + "]\\d+H?";
            case RATIO -> "[xX×*] ?" + NUMBER + "|" + NUMBER + " ?[xX×*]";
            default -> "";
        };
        return code.isEmpty() ? "(" + plain + ")" : "(" + plain + "|" + code + ")";
    }

    /** Prefix and unit. */
    private static String spelt(Unit unit) {
        return switch (unit) {
            case VOLT -> "[numkK" + MICRO + "]?([vV]|[vV]olts?)";
            case AMPERE -> "[fpnumkK" + MICRO + "]?([aA]|[aA]mps?|[aA]mperes?)";
            case OHM -> "([umkKMGT" + MICRO + "]?([oO][hH][mM]s?|Ω|Ω)|[RkKMGT])";
            case FARAD -> "([pnm" + MICRO + "]?([fF]|[fF]arads?)|[pnm" + MICRO + "])";
            case HENRY -> "([nm" + MICRO + "]?([hH]|[hH]enr(y|ies|ys))|[nm" + MICRO + "])";
            case WATT -> "[numkKM" + MICRO + "]?([wW]|[wW]atts?)";
            case HERTZ -> "[kKMG]?([hH][zZ]|[hH]ertz)";
            case SECOND -> "[pnm" + MICRO + "]?(s|sec|seconds?)";
            case CELSIUS -> "(°C|℃|C)";
            case KELVIN_PER_WATT -> "(K|°C|C)/W";
            case AMPERE_SQUARED_SECOND -> "A(²|2|\\^2)[·*]?s";
            case JOULE -> "[umkM" + MICRO + "]?([jJ]|[jJ]oules?)";
            case JOULE_PER_KELVIN -> "m?J/(K|°C|C)";
            case GRAM -> "[mkK]?([gG]|[gG]rams?)";
            case METRE -> "[umkK" + MICRO + "]?([mM]|[mM]et(re|er)s?)";
            case SQUARE_MILLIMETRE -> "(mm(²|2|\\^2)|sq mm)";
            case DECIBEL -> "dB";
            case RATIO -> "(%|per ?cent)";
        };
    }
}
