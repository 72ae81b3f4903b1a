package fusetale.quantity;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Finds the word that was probably meant. Distance: insertions, deletions, substitutions and swaps of neighbours
 * (F. J. Damerau, "A technique for computer detection and correction of spelling errors", Communications of the ACM 7(3),
 * 1964), in the form where no stretch is edited twice.
 */
public final class Spelling {
    /** No word of ours is longer; what is longer was not meant as one. */
    private static final int LONGEST = 64;

    private static final Pattern FIGURES_BEHIND = Pattern.compile("\\d{1,9}$");

    private Spelling() {}

    /**
     * The nearest of {@code words}, the first of several; empty where none is near: at most one slip in three letters, two
     * at least. Capitals, hyphens and underscores do not count.
     */
    public static Optional<String> nearest(String written, Collection<String> words) {
        if (written.length() > LONGEST) {
            return Optional.empty();
        }
        String best = null;
        int least = Math.max(2, written.length() / 3) + 1;
        for (String word : words) {
            int distance = distance(plain(written), plain(word));
            if (distance < least && distance < Math.max(word.length(), written.length())) {
                best = word;
                least = distance;
            }
        }
        return Optional.ofNullable(best);
    }

    /**
     * The nearest of {@code words}, nearest first, as far away as {@link #nearest} allows; of equally near ones those come
     * first whose figures at the end differ least: to TP9, TP8 before TP1.
     *
     * @param most how many at most
     */
    public static List<String> nearestFew(String written, Collection<String> words, int most) {
        if (written.length() > LONGEST) {
            return List.of();
        }
        int bound = Math.max(2, written.length() / 3);
        String plain = plain(written);
        return words.stream()
                .map(word -> new Near(word, distance(plain, plain(word)), apart(plain, plain(word))))
                .filter(n -> n.distance() <= bound
                        && n.distance() < Math.max(n.word().length(), written.length()))
                .sorted(Comparator.comparingInt(Near::distance).thenComparingLong(Near::apart))
                .limit(most)
                .map(Near::word)
                .toList();
    }

    private record Near(String word, int distance, long apart) {}

    /** How far two names' figures at the end are apart. */
    private static long apart(String a, String b) {
        Matcher figuresOfA = FIGURES_BEHIND.matcher(a);
        Matcher figuresOfB = FIGURES_BEHIND.matcher(b);
        return figuresOfA.find() && figuresOfB.find()
                ? Math.abs(Long.parseLong(figuresOfA.group()) - Long.parseLong(figuresOfB.group()))
                : Long.MAX_VALUE;
    }

    /** As {@link #nearest}, with the empty text for none. */
    public static String nearestIfAny(String written, Collection<String> words) {
        return nearest(written, words).orElse("");
    }

    /** Whether two words differ by one slip at most. */
    public static boolean oneSlip(String a, String b) {
        return distance(plain(a), plain(b)) <= 1;
    }

    private static String plain(String word) {
        return word.strip().toLowerCase(Locale.ROOT).replace('_', ' ').replace('-', ' ');
    }

    private static int distance(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            d[i][0] = i;
        }
        for (int j = 0; j <= b.length(); j++) {
            d[0][j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            for (int j = 1; j <= b.length(); j++) {
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                d[i][j] = Math.min(Math.min(d[i - 1][j] + 1, d[i][j - 1] + 1), d[i - 1][j - 1] + change);
                boolean swapped =
                        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
                if (swapped) {
                    d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
                }
            }
        }
        return d[a.length()][b.length()];
    }
}
