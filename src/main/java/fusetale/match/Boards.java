package fusetale.match;

import fusetale.fault.Supposition;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Hypotheses with amounts: what is compared. An amount is taken at five places of its range, each in the middle of a fifth
 * of it on a log scale; the middle one is worked out first.
 */
final class Boards {
    static final int PLACES = 5;
    private static final int MIDDLE = PLACES / 2;

    private final List<Hypothesis> hypotheses = new ArrayList<>();
    private final List<Board> all = new ArrayList<>();
    private final List<Integer> first = new ArrayList<>();
    private final Map<Repair, Integer> repairNumbers = new LinkedHashMap<>();
    private final List<Repair> repairs = new ArrayList<>();
    /** By hypothesis, the number of its repair. */
    private final List<Integer> repairOf = new ArrayList<>();

    private final int shipped;

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

        /** Between the middle and an end of the range. */
        boolean between() {
            return place != MIDDLE && place > 0 && place < PLACES - 1;
        }
    }

    Boards(List<Hypothesis> hypotheses) {
        hypotheses.forEach(this::add);
        this.shipped = hypotheses.size();
    }

    /** One more hypothesis, made of what others left unexplained. */
    final void add(Hypothesis hypothesis) {
        int h = hypotheses.size();
        hypotheses.add(hypothesis);
        repairOf.add(repairNumbers.computeIfAbsent(hypothesis.repair(), r -> {
            repairs.add(r);
            return repairs.size() - 1;
        }));
        first.add(all.size());
        if (!hypothesis.varies()) {
            all.add(new Board(all.size(), h, MIDDLE, hypothesis.weight(), hypothesis.usual()));
            return;
        }
        for (int place = 0; place < PLACES; place++) {
            Supposition at = hypothesis.at((place + 0.5) / PLACES);
            all.add(new Board(all.size(), h, place, hypothesis.weight() / PLACES, at));
        }
    }

    /** The list as it was before pairs were made: what an answer is complete by. */
    List<Board> list() {
        return all.subList(0, shipped == hypotheses.size() ? all.size() : first.get(shipped));
    }

    /** How many hypotheses it has. */
    int listed() {
        return shipped;
    }

    /** Whether a board was in the list from the start. */
    boolean fromTheStart(Board board) {
        return board.hypothesis() < shipped;
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

    /** All repairs, in the order of the first hypothesis that asks for each. */
    List<Repair> repairs() {
        return repairs;
    }

    /** Number of a board's repair among {@link #repairs}. */
    int repairOf(Board board) {
        return repairOf.get(board.hypothesis());
    }

    /** The boards of one hypothesis, by rising amount. */
    List<Board> of(int hypothesis) {
        int end = hypothesis + 1 < first.size() ? first.get(hypothesis + 1) : all.size();
        return all.subList(first.get(hypothesis), end);
    }
}
