package fusetale.cli;

import fusetale.explore.Answer;
import fusetale.explore.Explorer;
import fusetale.explore.Outcome;
import fusetale.explore.Progress;
import fusetale.explore.Question;
import fusetale.explore.StagedStart;
import fusetale.explore.Staging;
import fusetale.explore.Words;

/**
 * An outcome and how long it took.
 *
 * @param outcome the outcome
 * @param milliseconds wall-clock time of the answer
 */
record Asking(Outcome outcome, double milliseconds) {
    private static final double PATIENCE_MILLISECONDS = 1000;
    private static final Words WORDS = Words.of(Asking.class);

    /**
     * Asks.
     *
     * @throws Refused where there is no answer
     */
    static Asking of(Question question, Console console) throws Refused {
        long start = System.nanoTime();
        Answer answer = new Explorer(1).answer(question, told(console, start), () -> false);
        double milliseconds = (System.nanoTime() - start) / 1e6;
        if (milliseconds > PATIENCE_MILLISECONDS) {
            console.tellProgress("");
        }
        if (answer instanceof Answer.Answered answered) {
            return new Asking(answered.outcome(), milliseconds);
        }
        Answer.Unanswered none = (Answer.Unanswered) answer;
        throw new Refused(none.why() == Answer.Why.UNUSABLE ? ExitCodes.UNUSABLE : ExitCodes.NO_ANSWER, none.text());
    }

    /**
     * Asks once a stage of the machine's staged start-up.
     *
     * @throws Refused where a stage has no answer
     */
    static StagedStart staged(Question question, Console console) throws Refused {
        if (!question.arrangement().powerOn()
                || !question.arrangement().pulsedSeconds().isEmpty()) {
            throw new Refused(ExitCodes.UNUSABLE, WORDS.say("staged.unfit"));
        }
        Staging.Result result = Staging.of(
                new Explorer(1),
                question,
                (done, of) -> console.tellProgress(WORDS.say("progress.stages", done, of)),
                () -> false);
        console.tellProgress("");
        if (result instanceof Staging.Result.Done done) {
            return done.start();
        }
        Staging.Result.None none = (Staging.Result.None) result;
        throw new Refused(
                none.reason().why() == Answer.Why.UNUSABLE ? ExitCodes.UNUSABLE : ExitCodes.NO_ANSWER,
                WORDS.say("staged.none", none.stage(), none.reason().text()));
    }

    /** On a terminal, tells how far it has come where it takes more than a second. */
    private static Progress told(Console console, long start) {
        return (done, of) -> {
            if ((System.nanoTime() - start) / 1e6 > PATIENCE_MILLISECONDS) {
                console.tellProgress(WORDS.say("progress", done));
            }
        };
    }
}
