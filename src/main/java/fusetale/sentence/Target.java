package fusetale.sentence;

import fusetale.circuit.Circuit;
import fusetale.fault.Catalogue;
import fusetale.fault.FaultForm;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * What a clause is about: a part, perhaps a place of it, and the words behind.
 *
 * @param part designator
 * @param place a place of it; null where none was said
 * @param rest what stands behind, as typed
 */
record Target(String part, @Nullable String place, String rest) {
    private static final Pattern ARTICLE = Pattern.compile("^the\\s+", Pattern.CASE_INSENSITIVE);

    /**
     * Finds the part, capitals ignored, and the place.
     *
     * @throws SentenceException where the clause does not begin with a part of the circuit
     */
    static Target find(Circuit circuit, String clause) throws SentenceException {
        String text = turned(circuit, withoutArticle(clause));
        String part = longest(text, Catalogue.designators(circuit));
        if (part == null) {
            String first = text.split("[\\s.=]+", 2)[0];
            throw new SentenceException(
                    first, "'" + first + "' is no part of " + circuit.name(), Catalogue.designators(circuit));
        }
        String behind = text.substring(part.length()).replaceFirst("^[\\s.\\-]+", "");
        Map<String, String> places = spellings(Catalogue.possible(circuit, part));
        String spelt = longest(behind, List.copyOf(places.keySet()));
        return spelt == null
                ? new Target(part, null, behind)
                : new Target(
                        part,
                        places.get(spelt),
                        behind.substring(spelt.length()).strip());
    }

    /** Whether a text begins with a designator of the circuit. */
    static boolean begins(Circuit circuit, String text) {
        return longest(withoutArticle(text), Catalogue.designators(circuit)) != null;
    }

    /** "the mains" is called "mains". */
    private static String withoutArticle(String text) {
        return ARTICLE.matcher(text.strip()).replaceFirst("");
    }

    /** "leg 1 of BR201 is shorted" said the other way round. */
    private static String turned(Circuit circuit, String text) {
        int of = text.toLowerCase(Locale.ROOT).indexOf(" of ");
        if (of < 0 || begins(circuit, text)) {
            return text;
        }
        String behind = withoutArticle(text.substring(of + 4));
        String part = longest(behind, Catalogue.designators(circuit));
        return part == null ? text : part + " " + text.substring(0, of) + behind.substring(part.length());
    }

    /** Every way a place may be written, with the place it means. */
    private static Map<String, String> spellings(List<FaultForm> forms) {
        Map<String, String> spellings = new LinkedHashMap<>();
        for (FaultForm form : forms) {
            for (String spelling : spellings(form)) {
                spellings.putIfAbsent(spelling, form.place());
            }
        }
        return spellings;
    }

    private static List<String> spellings(FaultForm form) {
        if (form.place().isEmpty()) {
            return List.of();
        }
        List<String> all = new ArrayList<>(List.of(form.place()));
        String words = form.placeWords();
        if (!words.isEmpty()) {
            all.add(words);
            // C-E, C E, leg1, "the power winding" as "power"
            all.add(words.replace(" to ", "-"));
            all.add(words.replace(" to ", " "));
            all.add(words.replace(" ", ""));
            all.add(words.replace(" winding", "").replace("winding ", ""));
        }
        return all;
    }

    /** The longest of some words that a text begins with, as a whole word, capitals ignored. */
    private static @Nullable String longest(String text, List<String> words) {
        String best = null;
        for (String word : words) {
            boolean longer = best == null || word.length() > best.length();
            if (longer && !word.isEmpty() && begins(text, word)) {
                best = word;
            }
        }
        return best;
    }

    private static boolean begins(String text, String word) {
        return text.regionMatches(true, 0, word, 0, word.length())
                && (text.length() == word.length() || !Character.isLetterOrDigit(text.charAt(word.length())));
    }
}
