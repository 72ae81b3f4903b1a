package fusetale.fault;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** The nearest right spelling of a wrong word. */
public final class Spelling {
    private Spelling() {}

    /**
     * The allowed word that takes the fewest changed, missing, extra or exchanged letters (optimal string alignment:
     * Damerau, Communications of the ACM 7(3), 1964), capitals ignored; the first of several. Empty where none comes
     * near: more than half of the letters would have to change.
     */
    public static Optional<String> nearest(String found, Collection<String> allowed) {
        String best = null;
        int least = Math.max(2, found.length() / 2) + 1;
        for (String word : allowed) {
            int distance = distance(found.toLowerCase(Locale.ROOT), word.toLowerCase(Locale.ROOT));
            if (distance < least) {
                least = distance;
                best = word;
            }
        }
        return Optional.ofNullable(best);
    }

    private static int distance(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    d[i][j] = i + j;
                    continue;
                }
                int changed = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                d[i][j] = Math.min(Math.min(d[i - 1][j] + 1, d[i][j - 1] + 1), d[i - 1][j - 1] + changed);
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
                }
            }
        }
        return d[a.length()][b.length()];
    }
}
