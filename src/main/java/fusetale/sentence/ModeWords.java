package fusetale.sentence;

import fusetale.fault.FailureMode;
import fusetale.fault.FaultForm;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** The words a failure may be called by. All are held in small letters and without the words that mean nothing here. */
final class ModeWords {
    private static final Set<String> FILLERS =
            Set.of("is", "are", "has", "have", "been", "gone", "went", "a", "an", "the", "its", "with");

    private ModeWords() {}

    /** Small letters, hyphens as spaces, no filling words. */
    static String plain(String words) {
        List<String> kept = new ArrayList<>();
        for (String word :
                words.toLowerCase(Locale.ROOT).replace('-', ' ').strip().split("[\\s,:]+", -1)) {
            if (!word.isEmpty() && !FILLERS.contains(word)) {
                kept.add(word);
            }
        }
        return String.join(" ", kept);
    }

    /**
     * The forms that these words can mean: those called exactly so, or else those whose words begin so.
     *
     * @param words out of {@link #plain}; not empty
     */
    static List<FaultForm> matching(String words, List<FaultForm> forms) {
        List<FaultForm> exact =
                forms.stream().filter(f -> names(f).contains(words)).toList();
        if (!exact.isEmpty()) {
            return exact;
        }
        return forms.stream()
                .filter(f -> names(f).stream().anyMatch(n -> n.startsWith(words)))
                .toList();
    }

    /** All names of a failure. */
    static Set<String> names(FaultForm form) {
        Set<String> names = ownNames(form);
        names.addAll(alsoCalled(form.mode()));
        return names;
    }

    /** The names that the vocabulary and the sentence have for a failure. */
    static Set<String> ownNames(FaultForm form) {
        Set<String> names = new LinkedHashSet<>();
        names.add(plain(form.mode().compact()));
        names.add(plain(form.phrase().plain()));
        names.add(beforeAmount(form.phrase().measured()));
        names.add(plain(form.mode().words()));
        boolean stuck = form.mode() == FailureMode.STUCK_ON || form.mode() == FailureMode.STUCK_OFF;
        if (stuck && !form.telling().detail().isEmpty()) {
            // a logic output is stuck high or low
            names.add("stuck " + form.telling().detail());
        }
        return names;
    }

    private static String beforeAmount(String measured) {
        int brace = measured.indexOf("{}");
        String before = plain(brace < 0 ? measured : measured.substring(0, brace));
        return withoutTrailingTo(before);
    }

    /** "drifted to" an amount is "drifted". */
    static String withoutTrailingTo(String words) {
        return words.endsWith(" to") ? words.substring(0, words.length() - 3) : words;
    }

    /** Workshop words beyond the vocabulary's own. */
    private static List<String> alsoCalled(FailureMode mode) {
        return switch (mode) {
            case SHORT -> List.of("short circuited", "bridged");
            case OPEN -> List.of("open circuit", "broken");
            case WRONG_RATING -> List.of("wrong", "holds");
            case CRACKED_JOINT -> List.of("cracked");
            case MISSING -> List.of("not there", "pulled");
            case WEAK -> List.of("flat", "low");
            case DRIED_OUT -> List.of("dry", "dried up");
            case NO_LATCH -> List.of("will not latch", "not latching");
            case STUCK_ON -> List.of("welded");
            case LOW_LINE -> List.of("low", "weak");
            case HIGH_LINE -> List.of("high");
            case PARTLY_OPEN -> List.of("high resistance");
            case SWAPPED -> List.of("crossed");
            case STUCK_HIGH -> List.of("high");
            case STUCK_LOW -> List.of("low");
            case LEAKY, DRIFTED, HIGH_ESR, BLOWN, LOOSE, BURNT, REVERSED, SHORTED_TURNS, STUCK_OFF -> List.of();
        };
    }
}
