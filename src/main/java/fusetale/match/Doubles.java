package fusetale.match;

import fusetale.circuit.Circuit;
import fusetale.fault.Catalogue;
import fusetale.fault.Fault;
import fusetale.fault.Supposition;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Where one fault does not explain what was found: the leaders, each with what best explains the rest. */
final class Doubles {
    private static final int LEADERS = 3;
    private static final int SECONDS = 6;
    private static final double OFF_SIGMAS = 3;
    /** No worse than this is what a slip explains [ln]. */
    private static final double FLOOR = -8;
    /** A machine with one fault has a second that has nothing to do with it in fifteen of a hundred (judgement). */
    private static final double SECOND_FAULT = 0.15;

    private final Circuit circuit;
    private final Boards boards;
    private final Posterior posterior;
    private final Common common;

    Doubles(Circuit circuit, Boards boards, Posterior posterior, Common common) {
        this.circuit = circuit;
        this.boards = boards;
        this.posterior = posterior;
        this.common = common;
    }

    /** Likeliest first; none of one part twice. */
    List<Hypothesis> all() {
        Map<Integer, Integer> singles = singles();
        List<Hypothesis> all = new ArrayList<>();
        singles.values().stream().limit(LEADERS).forEach(leader -> {
            List<Integer> open = unexplained(leader);
            Fault first = fault(leader);
            singles.values().stream()
                    .filter(k -> !fault(k).part().equals(first.part()))
                    .sorted(Comparator.comparingDouble((Integer k) -> -explains(k, open)))
                    .limit(SECONDS)
                    .forEach(k -> all.add(both(leader, k)));
        });
        return all;
    }

    /** Of every single fault the board at its likeliest amount, by hypothesis, likeliest first. */
    private Map<Integer, Integer> singles() {
        Integer[] order = new Integer[posterior.shares().length];
        Arrays.setAll(order, k -> k);
        Arrays.sort(order, Comparator.comparingDouble((Integer k) -> -posterior.shares()[k]));
        Map<Integer, Integer> singles = new LinkedHashMap<>();
        for (int k : order) {
            if (posterior.boards().get(k).supposition().faults().size() == 1) {
                singles.putIfAbsent(posterior.boards().get(k).hypothesis(), k);
            }
        }
        return singles;
    }

    private Fault fault(int board) {
        return posterior.boards().get(board).supposition().faults().get(0);
    }

    private List<Integer> unexplained(int board) {
        List<Integer> open = new ArrayList<>();
        for (int j = 0; j < common.size(); j++) {
            if (alone(board, j) < -OFF_SIGMAS * OFF_SIGMAS / 2) {
                open.add(j);
            }
        }
        return open;
    }

    private double explains(int board, List<Integer> open) {
        double log = Math.log(boards.of(posterior.boards().get(board)).weight());
        for (int j : open) {
            log += Math.max(FLOOR, alone(board, j));
        }
        return log;
    }

    /** How well a board explains one thing found, by itself [ln, 0 for as expected]. */
    private double alone(int board, int j) {
        Fit fit = posterior.fits().get(board);
        Expectation e = fit.expectations()[j];
        Shown shown = common.shown(j);
        if (e.kind() == Expectation.Kind.FIGURE && shown instanceof Shown.Figure) {
            double z = (common.axis(j) - e.middle()) / fit.spread()[j];
            return -z * z / 2;
        }
        if (e.sight() != null && shown instanceof Shown.Seen seen) {
            return Math.min(0, Math.log(Seeing.probability(seen, e.sight())));
        }
        boolean over = e.kind() == Expectation.Kind.OVER;
        return e.kind() == Expectation.Kind.UNKNOWN || over == (shown instanceof Shown.Over) ? 0 : FLOOR;
    }

    private Hypothesis both(int one, int other) {
        List<String> order = Catalogue.designators(circuit);
        List<Fault> faults = new ArrayList<>(List.of(fault(one), fault(other)));
        faults.sort(Comparator.comparingInt(f -> order.indexOf(f.part())));
        // either may have come first
        double weight = 2
                * SECOND_FAULT
                * boards.of(posterior.boards().get(one)).weight()
                * boards.of(posterior.boards().get(other)).weight();
        Repair repair = new Repair(faults.stream().map(Fault::part).toList());
        return new Hypothesis(new Supposition(faults), -1, null, weight, repair);
    }
}
