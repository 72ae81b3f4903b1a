package fusetale.cli;

import fusetale.explore.Answer;
import fusetale.explore.Explorer;
import fusetale.explore.Outcome;
import fusetale.explore.Progress;
import fusetale.explore.Question;

/**
 * An outcome and how long it took.
 *
 * @param outcome the outcome
 * @param milliseconds wall-clock time of the answer
 */
record Asking(Outcome outcome, double milliseconds) {
    /**
     * Asks.
     *
     * @throws Refused where there is no answer
     */
    static Asking of(Question question) throws Refused {
        long start = System.nanoTime();
        Answer answer = new Explorer(1).answer(question, Progress.SILENT, () -> false);
        double milliseconds = (System.nanoTime() - start) / 1e6;
        if (answer instanceof Answer.Answered answered) {
            return new Asking(answered.outcome(), milliseconds);
        }
        Answer.Unanswered none = (Answer.Unanswered) answer;
        throw new Refused(none.why() == Answer.Why.UNUSABLE ? ExitCodes.UNUSABLE : ExitCodes.NO_ANSWER, none.text());
    }
}
