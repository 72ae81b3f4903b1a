package fusetale.match;

import java.util.List;

/**
 * Which suppositions explain what was read.
 *
 * @param candidates repairs, likeliest first, those below 1 in 1000 left out
 * @param somethingElse probability that it is something not in the list, 0 to 1
 * @param notInTheList whether to tell of it: something else is likely, or the leader needs a reading to be a slip
 * @param suspects readings that do not fit the rest, worst first
 * @param lookAlikes groups among the candidates
 * @param danger why power must stay off, or only with the series lamp; empty where nothing speaks for that
 * @param howFar how much of the dictionary stands behind this
 */
public record Ranking(
        List<Candidate> candidates,
        double somethingElse,
        boolean notInTheList,
        List<Suspect> suspects,
        List<LookAlike> lookAlikes,
        List<String> danger,
        HowFar howFar) {
    /** Copies the lists. */
    public Ranking {
        candidates = List.copyOf(candidates);
        suspects = List.copyOf(suspects);
        lookAlikes = List.copyOf(lookAlikes);
        danger = List.copyOf(danger);
    }

    /** The same with groups of look-alikes. */
    public Ranking with(List<LookAlike> groups) {
        return new Ranking(candidates, somethingElse, notInTheList, suspects, groups, danger, howFar);
    }

    /**
     * A reading that does not fit the rest.
     *
     * @param index place among all readings, from 0
     * @param share probability that it is a slip, 0 to 1
     * @param repeated whether it was read twice with the same result: then it is no slip
     */
    public record Suspect(int index, double share, boolean repeated) {}

    /**
     * How far the dictionary has come.
     *
     * @param suppositions suppositions compared, amounts and draws not counted
     * @param of suppositions there are
     * @param boards machines solved
     * @param ofBoards machines that will be
     */
    public record HowFar(int suppositions, int of, int boards, int ofBoards) {
        /** Whether nothing is left to be solved. */
        public boolean complete() {
            return boards >= ofBoards;
        }
    }
}
