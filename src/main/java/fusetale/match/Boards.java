package fusetale.match;

import fusetale.fault.Supposition;
import java.util.ArrayList;
import java.util.List;

/**
 * Hypotheses with amounts: what is compared. An amount is taken at five places of its range, each in the middle of a fifth
 * of it on a log scale; the middle one is worked out first.
 */
final class Boards {
    static final int PLACES = 5;
    private static final int MIDDLE = PLACES / 2;

    private final List<Hypothesis> hypotheses;
    private final List<Board> all = new ArrayList<>();
    private final int[] first;

    /**
     * One of them.
     *
     * @param hypothesis number of its hypothesis
     * @param place of its amount, 0 to 4; {@link #MIDDLE} where it has none
     * @param weight how often, against all others
     */
    record Board(int number, int hypothesis, int place, double weight, Supposition supposition) {
        boolean middle() {
            return place == MIDDLE;
        }
    }

    Boards(List<Hypothesis> hypotheses) {
        this.hypotheses = List.copyOf(hypotheses);
        this.first = new int[hypotheses.size()];
        for (int h = 0; h < hypotheses.size(); h++) {
            Hypothesis hypothesis = hypotheses.get(h);
            first[h] = all.size();
            if (!hypothesis.varies()) {
                all.add(new Board(all.size(), h, MIDDLE, hypothesis.weight(), hypothesis.usual()));
                continue;
            }
            for (int place = 0; place < PLACES; place++) {
                Supposition at = hypothesis.at((place + 0.5) / PLACES);
                all.add(new Board(all.size(), h, place, hypothesis.weight() / PLACES, at));
            }
        }
    }

    List<Hypothesis> hypotheses() {
        return hypotheses;
    }

    List<Board> all() {
        return all;
    }

    Hypothesis of(Board board) {
        return hypotheses.get(board.hypothesis());
    }

    /** The boards of one hypothesis, by rising amount. */
    List<Board> of(int hypothesis) {
        int end = hypothesis + 1 < first.length ? first[hypothesis + 1] : all.size();
        return all.subList(first[hypothesis], end);
    }
}
