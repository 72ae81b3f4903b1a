package fusetale.match;

import fusetale.circuit.MeterFunction;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * Weighs boards against what was found. What a board lets expect is remembered from one weighing to the next, as long as
 * nothing more of it was worked out: of sixty things found one is new.
 */
final class Scales {
    private final Workbench bench;
    private final boolean sideBySide;
    /** By number of the board, of the weighing before. */
    private final Map<Integer, Remembered> remembered = new ConcurrentHashMap<>();

    private List<Key> keysBefore = List.of();
    private int weighings;

    /** What is asked, wherever it stands among the findings. */
    private record Key(Wanted wanted, Renewed renewed) {}

    /** What a board let expect of the findings of one weighing, when so much of it was worked out. */
    private static final class Remembered {
        final int weighing;
        final long stamp;
        final Expectation[] expected;

        Remembered(int weighing, long stamp, Expectation[] expected) {
            this.weighing = weighing;
            this.stamp = stamp;
            this.expected = expected;
        }
    }

    /**
     * For one bench.
     *
     * @param sideBySide whether boards are weighed by several threads; what comes out is the same
     */
    Scales(Workbench bench, boolean sideBySide) {
        this.bench = bench;
        this.sideBySide = sideBySide;
    }

    /** Weighs all boards of some of which it is known what they show as found. */
    Workbench.Weighing weigh(Case findings, Predicate<Boards.Board> listed) {
        List<Boards.Board> known = full(bench.boards().all().stream()
                .filter(bench::known)
                .filter(listed)
                .toList());
        List<Key> keys = keys(findings);
        int[] before = places(keys);
        weighings++;
        keysBefore = keys;
        List<Expectation[]> expected = stream(known.size())
                .mapToObj(k -> remembered(known.get(k), findings, before))
                .toList();
        Common common = common(findings, known, expected);
        List<Fit> fits = stream(known.size())
                .mapToObj(k -> fit(known.get(k), findings, expected.get(k), common))
                .toList();
        return new Workbench.Weighing(findings, common, Posterior.of(known, fits, common, findings.repeated()));
    }

    /** How far off each finding is from what the healthy machine shows, in standard deviations. */
    double[] away(Case findings) {
        Boards.Board healthy = bench.boards().all().get(0);
        Expectation[] expected = expected(healthy, findings, Way.AS_TAKEN);
        return Fit.of(expected, common(findings, List.of(healthy), List.<Expectation[]>of(expected)))
                .away();
    }

    private IntStream stream(int size) {
        IntStream all = IntStream.range(0, size);
        return sideBySide ? all.parallel() : all;
    }

    private static List<Key> keys(Case findings) {
        List<Key> keys = new ArrayList<>();
        for (int j = 0; j < findings.size(); j++) {
            keys.add(new Key(findings.wanted().get(j), findings.renewed().get(j)));
        }
        return keys;
    }

    /** Where each stood among the findings weighed before; −1 where it did not, or where parts had been replaced by then. */
    private int[] places(List<Key> keys) {
        Map<Key, Integer> there = new HashMap<>();
        for (int j = 0; j < keysBefore.size(); j++) {
            there.put(keysBefore.get(j), j);
        }
        return keys.stream()
                .mapToInt(k -> k.renewed().isNothing() ? there.getOrDefault(k, -1) : -1)
                .toArray();
    }

    private Expectation[] remembered(Boards.Board board, Case findings, int[] before) {
        long stamp = bench.stamp(board);
        Remembered there = remembered.get(board.number());
        boolean holds = there != null && there.weighing == weighings - 1 && there.stamp == stamp;
        Expectation[] expected = new Expectation[before.length];
        for (int j = 0; j < before.length; j++) {
            expected[j] = there != null && holds && before[j] >= 0
                    ? there.expected[before[j]]
                    : expect(board, findings, j, Way.AS_TAKEN);
        }
        remembered.put(board.number(), new Remembered(weighings, stamp, expected));
        return expected;
    }

    private Expectation expect(Boards.Board board, Case findings, int j, Way way) {
        return bench.expect(board, findings.wanted().get(j), findings.renewed().get(j), way);
    }

    private Expectation[] expected(Boards.Board board, Case findings, Way way) {
        return IntStream.range(0, findings.size())
                .mapToObj(j -> expect(board, findings, j, way))
                .toArray(Expectation[]::new);
    }

    private Fit fit(Boards.Board board, Case findings, Expectation[] holds, Common common) {
        Fit fit = Fit.of(holds, common);
        List<Way> ways = bench.ways(board, findings.renewals());
        return ways.size() == 1
                ? fit
                : Fit.either(ways.stream()
                        .map(w -> new Fit.Turned(
                                w, w == Way.AS_TAKEN ? fit : Fit.of(expected(board, findings, w), common)))
                        .toList());
    }

    /**
     * What all boards share of the evidence.
     *
     * @param expected what each board lets expect of each, fuses as they were taken to come out
     */
    private Common common(Case findings, List<Boards.Board> known, List<Expectation[]> expected) {
        int n = findings.size();
        double[][] drawn = new double[n][];
        double[] broad = new double[n];
        for (int j = 0; j < n; j++) {
            Evidence e = findings.evidence().get(j);
            drawn[j] = bench.drawn(e.ask());
            if (e.shown() instanceof Shown.Seen seen) {
                Expectation good = bench.expect(
                        bench.boards().all().get(0), findings.wanted().get(j), Renewed.NOTHING);
                broad[j] = Math.log(Seeing.broad(seen, good.sight()));
                continue;
            }
            Pool pool = new Pool();
            for (int k = 0; k < known.size(); k++) {
                pool.add(expected.get(k)[j], known.get(k).weight());
            }
            MeterFunction function = ((Ask.Metered) e.ask()).check().function();
            broad[j] = Math.log(pool.of(function, e.shown()));
        }
        return new Common(findings.evidence(), drawn, broad);
    }

    /** While only some amounts of a hypothesis are known, they carry the weight of all. */
    private List<Boards.Board> full(List<Boards.Board> known) {
        Map<Integer, Integer> counts = new LinkedHashMap<>();
        known.forEach(b -> counts.merge(b.hypothesis(), 1, Integer::sum));
        return known.stream()
                .map(b -> {
                    double weight = bench.boards().of(b).weight() / counts.getOrDefault(b.hypothesis(), 1);
                    return new Boards.Board(b.number(), b.hypothesis(), b.place(), weight, b.supposition());
                })
                .toList();
    }
}
