package fusetale.sentence;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The words that clauses about the bench begin with, and what may stand second. Beginnings are spelt out. */
final class Verbs {
    private static final Map<String, List<String>> WORDS = words();

    private Verbs() {}

    private static Map<String, List<String>> words() {
        Map<String, List<String>> words = new LinkedHashMap<>();
        words.put("power", List.of("on", "off"));
        words.put("on", List.of());
        words.put("off", List.of());
        words.put("mains", List.of());
        words.put("at", List.of());
        words.put("lamp", List.of());
        words.put("series", List.of("lamp"));
        words.put("no", List.of("lamp", "series lamp", "clip", "leads", "range"));
        words.put("pull", List.of());
        words.put("take", List.of("out"));
        words.put("unplug", List.of());
        words.put("plug", List.of("in"));
        words.put("lift", List.of());
        words.put("solder", List.of());
        words.put("clip", List.of());
        words.put("unclip", List.of());
        words.put("hold", List.of());
        words.put("release", List.of());
        words.put("pulse", List.of());
        words.put("charge", List.of());
        words.put("discharge", List.of());
        words.put("open", List.of());
        words.put("close", List.of());
        words.put("meter", List.of());
        words.put("range", List.of("auto"));
        words.put("auto", List.of("range"));
        words.put("ohms", List.of());
        words.put("volts", List.of());
        words.put("dc", List.of("volts", "amps"));
        words.put("ac", List.of("volts"));
        words.put("diode", List.of("test"));
        words.put("continuity", List.of());
        words.put("amps", List.of());
        words.put("leads", List.of());
        words.put("red", List.of("lead"));
        words.put("black", List.of("lead"));
        words.put("swap", List.of("leads"));
        words.put("put", List.of("back", "in"));
        words.put("arrangement", List.of());
        words.put("nothing", List.of());
        return words;
    }

    /** All first words. */
    static List<String> all() {
        return List.copyOf(WORDS.keySet());
    }

    /** The first words that begin so. */
    static List<String> beginning(String text) {
        String small = text.toLowerCase(Locale.ROOT);
        return WORDS.keySet().stream().filter(w -> w.startsWith(small)).toList();
    }

    /** Whether this is a first word in full. */
    static boolean has(String word) {
        return WORDS.containsKey(word.toLowerCase(Locale.ROOT));
    }

    /** What may stand behind a first word. */
    static List<String> seconds(String verb) {
        return WORDS.getOrDefault(verb, List.of());
    }

    /**
     * A clause with its first word spelt out, and its second where that is one of a few.
     *
     * @throws SentenceException where the first word begins several
     */
    static String spelledOut(String clause) throws SentenceException {
        String[] words = clause.split("\\s+", 2);
        String first = only(words[0], beginning(words[0]), words[0]);
        if (words.length == 1) {
            return first;
        }
        String rest = words[1];
        String[] second = rest.split("\\s+", 2);
        String small = second[0].toLowerCase(Locale.ROOT);
        List<String> begun =
                seconds(first).stream().filter(w -> w.startsWith(small)).toList();
        if (begun.isEmpty() || seconds(first).contains(small)) {
            return first + " " + rest;
        }
        String spelt = only(second[0], begun, clause);
        return first + " " + spelt + (second.length == 1 ? "" : " " + second[1]);
    }

    private static String only(String word, List<String> begun, String whole) throws SentenceException {
        String small = word.toLowerCase(Locale.ROOT);
        if (begun.size() == 1 || begun.contains(small)) {
            return begun.contains(small) ? small : begun.get(0);
        }
        if (begun.isEmpty()) {
            return word;
        }
        throw SentenceException.near(word, Texts.say("verb.several", whole, String.join(", ", begun)), begun);
    }
}
