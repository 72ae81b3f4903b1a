package fusetale.desk.state;

import fusetale.circuit.Circuit;
import fusetale.explore.Words;
import fusetale.fault.Catalogue;
import fusetale.quantity.Spelling;
import fusetale.sentence.SentenceException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The line that says which parts are new: {@code replaced R2, F1}, or {@code new R2}. Immutable. */
final class ReplacedLine {
    private static final Words WORDS = Words.of(ReplacedLine.class);
    private static final Pattern FIRST = Pattern.compile("([^\\s:]+):?(?:\\s+(.*))?");
    private static final Pattern BETWEEN = Pattern.compile("[,;&+\\s]+");
    private static final int NEAR = 3;

    private final List<String> known;

    ReplacedLine(Circuit board) {
        this.known = Catalogue.designators(board);
    }

    /** What a line says; empty where it is no such line. */
    Optional<Found> read(String typed) throws SentenceException {
        Matcher line = FIRST.matcher(typed.strip());
        List<String> verbs = List.of(WORDS.say("replaced.verbs").split(", ", -1));
        if (!line.matches() || !verbs.contains(line.group(1).toLowerCase(Locale.ROOT))) {
            return Optional.empty();
        }
        String rest = line.group(2) == null ? "" : line.group(2);
        Set<String> parts = new LinkedHashSet<>();
        for (String word : BETWEEN.split(rest, -1)) {
            if (!word.isEmpty() && !word.equalsIgnoreCase(WORDS.say("replaced.and"))) {
                parts.add(named(word));
            }
        }
        if (parts.isEmpty()) {
            throw SentenceException.near(typed.strip(), WORDS.say("replaced.which"), List.of());
        }
        return Optional.of(of(new ArrayList<>(parts)));
    }

    /** Parts that are new from here on. */
    Found of(List<String> parts) {
        return new Found.Replaced(WORDS.say("replaced", String.join(", ", parts)), parts);
    }

    private String named(String word) throws SentenceException {
        Optional<String> name = known.stream().filter(word::equalsIgnoreCase).findFirst();
        if (name.isPresent()) {
            return name.get();
        }
        List<String> near = Spelling.nearestFew(word, known, NEAR);
        String unknown = near.isEmpty()
                ? WORDS.say("replaced.unknown", word)
                : WORDS.say("replaced.unknown.near", word, String.join(", ", near));
        throw SentenceException.near(word, unknown, near);
    }
}
