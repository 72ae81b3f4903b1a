package fusetale.desk.match;

import fusetale.circuit.Circuit;
import fusetale.match.Findings;
import fusetale.match.LookAlike;
import fusetale.match.NextReadings;
import fusetale.match.Ranking;
import fusetale.match.Repair;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * An answer with the question it belongs to.
 *
 * @param board the machine
 * @param findings what was found on it
 * @param ranking what explains that
 * @param next where to go from there; null while that is being worked out
 */
public record Standing(
        Circuit board,
        Findings findings,
        Ranking ranking,
        @Nullable NextReadings next) {
    /** Whether it answers this question. */
    public boolean answers(Circuit asked, Findings question) {
        return board.equals(asked) && findings.equals(question);
    }

    /** Whether all parts of a repair are new already. */
    boolean done(Repair repair) {
        List<String> fresh =
                findings.spells().stream().flatMap(s -> s.replaced().stream()).toList();
        return !repair.isNothing() && fresh.containsAll(repair.parts());
    }

    /** The same with what to do next. */
    Standing with(NextReadings following) {
        return new Standing(board, findings, ranking, following);
    }

    /** The same with what looks alike. */
    Standing with(List<LookAlike> groups) {
        Ranking told = new Ranking(
                ranking.candidates(),
                ranking.somethingElse(),
                ranking.notInTheList(),
                ranking.suspects(),
                groups,
                ranking.danger(),
                ranking.howFar());
        return new Standing(board, findings, told, next);
    }
}
