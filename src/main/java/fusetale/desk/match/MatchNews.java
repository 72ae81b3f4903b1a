package fusetale.desk.match;

import fusetale.circuit.Circuit;
import fusetale.explore.Words;
import fusetale.match.Candidate;
import fusetale.match.Ranking;
import java.util.Optional;

/** What changed from one answer to the next, where it is worth a word. */
final class MatchNews {
    private static final Words WORDS = Words.of(MatchNews.class);

    private MatchNews() {}

    /** That another repair leads now; empty where the same does. */
    static String of(Circuit board, Ranking before, Ranking now) {
        Optional<Candidate> led = before.candidates().stream().findFirst();
        Optional<Candidate> leads = now.candidates().stream().findFirst();
        if (led.isEmpty()
                || leads.isEmpty()
                || led.get().repair().equals(leads.get().repair())) {
            return "";
        }
        return WORDS.say("news", CandidateWords.of(board, leads.get()), CandidateWords.of(board, led.get()));
    }
}
