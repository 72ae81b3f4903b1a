package fusetale.bench;

import java.util.Collection;
import java.util.Locale;

/** The spelling that was probably meant: fewest changed, missing or extra letters (V. I. Levenshtein, 1966). */
final class Nearest {
    private Nearest() {}

    /** "; did you mean F201?", or "; there is F201, F202" where nothing comes near, or nothing where there is nothing. */
    static String hint(String written, Collection<String> known) {
        String best = "";
        int least = Math.max(2, written.length() / 3) + 1;
        for (String word : known) {
            int distance = distance(written.toLowerCase(Locale.ROOT), word.toLowerCase(Locale.ROOT));
            if (distance < least) {
                least = distance;
                best = word;
            }
        }
        if (!best.isEmpty()) {
            return "; did you mean " + best + "?";
        }
        return known.isEmpty() ? "; there is none" : "; there is " + String.join(", ", known);
    }

    private static int distance(String a, String b) {
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int changed = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(changed, Math.min(row[j], row[j - 1]) + 1);
            }
        }
        return row[b.length()];
    }
}
