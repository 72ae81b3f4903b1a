package fusetale.desk.match;

import fusetale.circuit.Circuit;
import fusetale.explore.Words;
import fusetale.fault.Supposition;
import fusetale.fault.UnfitSupposition;
import fusetale.match.Candidate;
import fusetale.quantity.Shares;
import fusetale.sentence.SentencePrinter;

/** A candidate in a few words. */
final class CandidateWords {
    private static final Words WORDS = Words.of(CandidateWords.class);
    private static final String OF_HUNDRED = " of 100";

    private CandidateWords() {}

    /** {@code BR1 leg 1 is shorted}: the likeliest of what asks for this repair. */
    static String of(Circuit board, Candidate candidate) {
        if (candidate.repair().isNothing()) {
            return WORDS.say("nothing");
        }
        return candidate.suppositions().stream()
                .findFirst()
                .map(likely -> clauses(board, likely.supposition(), candidate))
                .orElseGet(() -> candidate.repair().words());
    }

    private static String clauses(Circuit board, Supposition supposition, Candidate candidate) {
        try {
            return String.join(" and ", new SentencePrinter(board).roughly(supposition));
        } catch (UnfitSupposition noLonger) {
            // the board was drawn anew since
            return candidate.repair().words();
        }
    }

    /** {@code 85}, {@code under 1}: a share of 100 boards, in the column that says so. */
    static String share(double ratio) {
        String said = Shares.said(Math.max(0, Math.min(1, ratio)));
        return said.endsWith(OF_HUNDRED) ? said.substring(0, said.length() - OF_HUNDRED.length()) : said;
    }
}
