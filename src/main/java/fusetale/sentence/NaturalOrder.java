package fusetale.sentence;

import java.math.BigInteger;
import java.util.Comparator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Names in the order in which one counts them: F9 before F10. */
final class NaturalOrder {
    private static final Pattern RUN = Pattern.compile("\\d+|\\D+");

    /** F9, F10, F101, R1. */
    static final Comparator<String> NAMES = NaturalOrder::compare;

    private NaturalOrder() {}

    private static int compare(String a, String b) {
        Matcher runsOfA = RUN.matcher(a);
        Matcher runsOfB = RUN.matcher(b);
        while (runsOfA.find()) {
            if (!runsOfB.find()) {
                return 1;
            }
            int order = runs(runsOfA.group(), runsOfB.group());
            if (order != 0) {
                return order;
            }
        }
        // 01 and 1 count the same
        return runsOfB.find() ? -1 : a.compareTo(b);
    }

    private static int runs(String a, String b) {
        boolean figures = Character.isDigit(a.charAt(0)) && Character.isDigit(b.charAt(0));
        return figures ? new BigInteger(a).compareTo(new BigInteger(b)) : a.compareTo(b);
    }
}
