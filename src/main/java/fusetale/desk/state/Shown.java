package fusetale.desk.state;

import fusetale.circuit.Circuit;
import fusetale.explore.Outcome;
import fusetale.explore.Question;
import fusetale.fault.Supposition;
import fusetale.sentence.Sentence;

/**
 * An answer with the question it belongs to.
 *
 * @param board the machine it was asked of
 * @param sentence what was asked
 * @param outcome the answer
 * @param whole whether all of it is there: before what follows is played forward the verdict is a first look
 */
public record Shown(Circuit board, Sentence sentence, Outcome outcome, boolean whole) {
    /** Whether it answers this question of this board. */
    public boolean answers(Circuit asked, Sentence question) {
        return board.equals(asked) && sentence.equals(question);
    }

    /** Whether it tells of the same machine on the same bench, with the plug the other way. */
    public boolean isOtherPowerOf(Shown one) {
        return answersWithOtherPower(one.board, one.sentence);
    }

    /** Whether it tells what is asked there, with the plug the other way. */
    public boolean answersWithOtherPower(Circuit asked, Sentence question) {
        return board.equals(asked) && covers(Asked.otherwise(asked, question), question.supposition());
    }

    /** Whether it tells what is asked there of a machine, though the sentence was another. */
    boolean covers(Question other, Supposition supposed) {
        Question asked = outcome.question();
        return board.equals(other.healthy())
                && sentence.supposition().equals(supposed)
                && asked.arrangement().equals(other.arrangement())
                && asked.meter().equals(other.meter());
    }
}
