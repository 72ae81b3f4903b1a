package fusetale.match;

import fusetale.bench.Arrangement;
import fusetale.circuit.Circuit;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * Weighs, and works out what the evidence asks of boards that are still likely, until no other could become so. At the end every
 * hypothesis is looked at, as found, at both ends of its amounts: a regulator at half its voltage shows nothing of what one at a
 * quarter does.
 */
final class Refining {
    /**
     * Hypotheses less likely than this are not worked out further: did one thing seen turn from slip to proof, which is two
     * hundred to one, it would still have one of a hundred.
     */
    private static final double LIKELY = 5e-5;

    /** Boards that are worked out before all are weighed again. */
    private static final int AT_ONCE = 64;

    private final Workbench bench;
    private final Circuit circuit;

    Refining(Workbench bench, Circuit circuit) {
        this.bench = bench;
        this.circuit = circuit;
    }

    /** In which order boards are worked out: what is refuted in one stage costs nothing in the next. */
    private enum Stage {
        MIDDLE_AMOUNTS,
        AMOUNTS_AS_FOUND,
        AMOUNTS,
        ALL_ENDS_AS_FOUND
    }

    /**
     * Weighs until nothing more could become likely.
     *
     * @param listed which boards are compared at all
     * @param sharper told each better answer, in the calling thread
     */
    Workbench.Weighing settled(
            Case findings,
            List<Arrangement> arrangements,
            Predicate<Boards.Board> listed,
            Workbench.Sharper sharper,
            BooleanSupplier stopped) {
        List<Boards.Board> compared =
                bench.boards().all().stream().filter(listed).toList();
        bench.readilyOnce(compared.stream().filter(bench::known).toList(), arrangements, stopped);
        Set<Integer> endsOpen = compared.stream()
                .filter(b -> belongs(b, Stage.ALL_ENDS_AS_FOUND) && !bench.known(b))
                .map(Boards.Board::hypothesis)
                .collect(Collectors.toCollection(TreeSet::new));
        Set<String> tried = new HashSet<>();
        Nearness nearness = null;
        while (true) {
            Workbench.Weighing weighing = bench.weigh(findings, listed);
            Map<Integer, Double> likely = likely(weighing);
            BitSet complete = complete(weighing);
            Map<Integer, List<Boards.Board>> lacking = Map.of();
            Stage stage = Stage.MIDDLE_AMOUNTS;
            for (Stage next : Stage.values()) {
                if (lacking.isEmpty()) {
                    stage = next;
                    Set<Integer> among = next == Stage.ALL_ENDS_AS_FOUND ? endsOpen : likely.keySet();
                    lacking = lacking(next, among, findings, complete, tried);
                }
            }
            if (lacking.isEmpty() || stopped.getAsBoolean()) {
                return weighing;
            }
            nearness = nearness == null ? new Nearness(circuit, bench.outOfOrder(findings)) : nearness;
            int of = stage == Stage.ALL_ENDS_AS_FOUND ? endsOpen.size() : likely.size();
            sharper.told(weighing, of - lacking.size(), of);
            List<Boards.Board> some = some(stage, likely, lacking, nearness, tried);
            boolean asFound = stage == Stage.AMOUNTS_AS_FOUND || stage == Stage.ALL_ENDS_AS_FOUND;
            bench.work(some, asFound ? List.of() : arrangements, findings, stopped);
            bench.readily(some, arrangements, stopped);
        }
    }

    /** Boards of which all is known that was asked, by number. */
    private BitSet complete(Workbench.Weighing weighing) {
        BitSet complete = new BitSet();
        Posterior p = weighing.posterior();
        for (int k = 0; k < p.boards().size(); k++) {
            Boards.Board board = p.boards().get(k);
            complete.set(
                    board.number(),
                    p.fits().get(k).isComplete() && p.fits().get(k).ways().isEmpty());
        }
        return complete;
    }

    /** Boards of a stage that lack something, by hypothesis; what cannot be worked out is not tried for ever. */
    private Map<Integer, List<Boards.Board>> lacking(
            Stage stage, Set<Integer> among, Case findings, BitSet complete, Set<String> tried) {
        Map<Integer, List<Boards.Board>> all = new LinkedHashMap<>();
        for (int h : among) {
            List<Boards.Board> of = bench.boards().of(h).stream()
                    .filter(b -> belongs(b, stage))
                    .filter(b -> !complete.get(b.number()))
                    .filter(b -> !bench.known(b)
                            || ((stage == Stage.MIDDLE_AMOUNTS || stage == Stage.AMOUNTS) && bench.lacks(b, findings)))
                    .toList();
            if (!of.isEmpty() && !tried.contains(stage + " " + h)) {
                all.put(h, of);
            }
        }
        return all;
    }

    private static boolean belongs(Boards.Board board, Stage stage) {
        return switch (stage) {
            case MIDDLE_AMOUNTS -> board.middle();
            case AMOUNTS_AS_FOUND, AMOUNTS -> !board.middle();
            case ALL_ENDS_AS_FOUND -> !board.middle() && !board.between();
        };
    }

    /** What is worked out before all are weighed again: likely and near first, all amounts of a hypothesis together. */
    private List<Boards.Board> some(
            Stage stage,
            Map<Integer, Double> likely,
            Map<Integer, List<Boards.Board>> lacking,
            Nearness nearness,
            Set<String> tried) {
        List<Integer> order = lacking.keySet().stream()
                .sorted(Comparator.comparingDouble((Integer h) -> -chance(h, likely)
                        * nearness.ratio(
                                bench.boards().hypotheses().get(h).usual().faults())))
                .toList();
        List<Boards.Board> some = new ArrayList<>();
        for (int h : order) {
            if (some.size() < AT_ONCE) {
                some.addAll(lacking.getOrDefault(h, List.of()));
                tried.add(stage + " " + h);
            }
        }
        return some;
    }

    /** Of what is likely, how much; of all else, less than that and by how often it is so. */
    private double chance(int hypothesis, Map<Integer, Double> likely) {
        return likely.getOrDefault(
                hypothesis, LIKELY * bench.boards().hypotheses().get(hypothesis).weight());
    }

    /**
     * Hypotheses that are still likely, with all their amounts. What is not known of a board may turn out to be exactly what was
     * found: nothing is given up for what was never worked out.
     */
    private static Map<Integer, Double> likely(Workbench.Weighing weighing) {
        Posterior p = weighing.posterior();
        Map<Integer, Double> shares = new LinkedHashMap<>();
        for (int k = 0; k < p.shares().length; k++) {
            double atBest = p.shares()[k] * Math.exp(p.fits().get(k).open(weighing.common()));
            shares.merge(p.boards().get(k).hypothesis(), Math.min(1, atBest), Double::sum);
        }
        shares.values().removeIf(share -> share <= LIKELY);
        return shares;
    }
}
