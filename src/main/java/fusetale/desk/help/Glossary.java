package fusetale.desk.help;

import fusetale.explore.Words;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The words a newcomer meets.
 *
 * @param entries in the order in which they are best read
 */
public record Glossary(List<Entry> entries) {
    private static final String NAMES = ".names";

    /**
     * One word.
     *
     * @param names what it is called, the usual name first
     * @param says what it is; no figures
     * @param here what of it is on the board being worked on, with its figures; may be empty
     */
    public record Entry(List<String> names, String says, String here) {
        /** Copies the list. */
        public Entry {
            names = List.copyOf(names);
        }

        /** {@code Rectifier, bridge}. */
        public String title() {
            return String.join(", ", names);
        }

        /** All of it, as a screen reader says it. */
        public String spoken() {
            return title() + ". " + says + (here.isEmpty() ? "" : " " + here);
        }

        /** Where one of its names stands in a text of plain words, the longest there; -1 where none does. */
        private int placeIn(String plainText) {
            return names.stream()
                    .map(Entry::plain)
                    .filter(n -> n.length() > 1)
                    .mapToInt(n -> (" " + plainText + " ").indexOf(" " + n + " "))
                    .filter(at -> at >= 0)
                    .min()
                    .orElse(-1);
        }

        boolean startsWith(String beginning) {
            String wanted = plain(beginning);
            return names.stream()
                    .map(Entry::plain)
                    .flatMap(n -> Stream.concat(Stream.of(n), Arrays.stream(n.split(" "))))
                    .anyMatch(n -> n.startsWith(wanted));
        }

        private static String plain(String text) {
            return text.toLowerCase(Locale.ROOT)
                    .replaceAll("[^\\p{L}\\p{N}]+", " ")
                    .strip();
        }
    }

    /** Copies the list. */
    public Glossary {
        entries = List.copyOf(entries);
    }

    /**
     * All of them.
     *
     * @param here what is on the board, by the word's key in the bundle
     */
    public static Glossary all(Map<String, String> here) {
        Words words = Words.of(Glossary.class);
        Collection<String> keys = words.bundle().keySet();
        return new Glossary(keys.stream()
                .filter(k -> k.startsWith("word.") && k.endsWith(NAMES))
                .sorted()
                .map(k -> k.substring(0, k.length() - NAMES.length()))
                .map(k -> new Entry(
                        List.of(words.say(k + NAMES).split(" \\| ")),
                        words.say(k + ".says"),
                        here.getOrDefault(k.replaceFirst("^word\\.\\d+\\.", ""), "")))
                .toList());
    }

    /** Those one of whose names stands in a text, in the order in which they stand there. */
    public List<Entry> in(String text) {
        String plain = Entry.plain(text);
        return entries.stream()
                .filter(e -> e.placeIn(plain) >= 0)
                .sorted(Comparator.comparingInt(e -> e.placeIn(plain)))
                .toList();
    }

    /** Those one of whose names, or a word in it, begins so; all of them for nothing. */
    public List<Entry> startingWith(String beginning) {
        return beginning.isBlank()
                ? entries
                : entries.stream().filter(e -> e.startsWith(beginning)).toList();
    }
}
