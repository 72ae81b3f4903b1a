package fusetale.match;

import fusetale.bench.Arrangement;
import fusetale.bench.Check;
import fusetale.bench.Meter;
import fusetale.bench.Reading;
import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Random;

/**
 * How far the greedy choice of the next reading is from the best there is, where that can be computed: problems cut down to
 * eleven boards of a machine and twenty-four noise-free checks, drawn at random; the optimum by dynamic programming over all
 * subsets of boards (expected number of checks until nothing more can be told apart). The greedy choice is the one of the
 * planner: {@link Gain#expected}, all checks costing the same.
 *
 * <pre>GreedyStudy CIRCUIT.yaml PROBLEMS SEED</pre>
 */
public final class GreedyStudy {
    private static final int BOARDS = 11;
    private static final int CHECKS = 24;
    /** Outcomes closer than this are one [axis]. */
    private static final double ONE_OUTCOME = 0.1;

    private final double[] weights;
    /** By check and board. */
    private final int[][] outcomes;

    private final double[] best = new double[1 << BOARDS];

    private GreedyStudy(double[] weights, int[][] outcomes) {
        this.weights = weights;
        this.outcomes = outcomes;
        Arrays.fill(best, -1);
    }

    /** Runs. */
    public static void main(String[] args) throws Exception {
        Circuit circuit = Objects.requireNonNull(
                CircuitReader.withShippedParts().read(Path.of(args[0])).circuit());
        int problems = Integer.parseInt(args[1]);
        Random random = new Random(Long.parseLong(args[2]));
        List<Hypothesis> hypotheses = Hypotheses.of(circuit);
        Workbench bench = new Workbench(circuit, Meter.trueRms4000(), 2, 2, 1, hypotheses);
        Case nothing = Case.of(Findings.of(List.of()));
        Arrangement off = Arrangement.unpowered();
        Arrangement on = bench.dictionary().asFound();
        bench.dictionary().prepare(on, bench.asks().powerOn(), () -> false);
        bench.dictionary().prepare(off, bench.asks().powerOff(), () -> false);
        double greedySum = 0;
        double bestSum = 0;
        double anySum = 0;
        double worst = 1;
        int equal = 0;
        double ratios = 0;
        for (int p = 0; p < problems; p++) {
            GreedyStudy problem = drawn(bench, nothing, on, off, random);
            int all = (1 << BOARDS) - 1;
            double optimum = problem.optimum(all);
            double greedy = problem.greedy(all);
            double any = problem.any(all, random);
            bestSum += optimum;
            greedySum += greedy;
            anySum += any;
            ratios += greedy / optimum;
            worst = Math.max(worst, greedy / optimum);
            equal += greedy < optimum + 1e-9 ? 1 : 0;
        }
        System.out.printf(
                Locale.ROOT,
                "%s, %d problems of %d boards and %d checks, seed %s: optimum %.3f checks, greedy %.3f (mean ratio %.3f,"
                        + " worst %.3f, equal in %d), a useful check at random %.3f%n",
                circuit.name(),
                problems,
                BOARDS,
                CHECKS,
                args[2],
                bestSum / problems,
                greedySum / problems,
                ratios / problems,
                worst,
                equal,
                anySum / problems);
    }

    private static GreedyStudy drawn(Workbench bench, Case nothing, Arrangement on, Arrangement off, Random random) {
        while (true) {
            List<Boards.Board> boards = new ArrayList<>(
                    bench.boards().all().stream().filter(Boards.Board::middle).toList());
            Collections.shuffle(boards, random);
            List<Boards.Board> some = boards.subList(0, BOARDS);
            bench.work(some, List.of(on, off), nothing, () -> false);
            List<Ask.Metered> asks = new ArrayList<>();
            bench.asks().powerOn().forEach(c -> asks.add(new Ask.Metered(on, c)));
            bench.asks().powerOff().forEach(c -> asks.add(new Ask.Metered(off, c)));
            Collections.shuffle(asks, random);
            List<int[]> rows = new ArrayList<>();
            for (Ask.Metered ask : asks) {
                int[] row = some.stream()
                        .mapToInt(b -> outcome(bench.trial(b), ask))
                        .toArray();
                boolean splits = Arrays.stream(row).distinct().count() > 1;
                if (splits && rows.size() < CHECKS) {
                    rows.add(row);
                }
            }
            if (rows.size() == CHECKS) {
                double[] weights = some.stream()
                        .mapToDouble(b -> bench.boards().of(b).weight())
                        .toArray();
                double sum = Arrays.stream(weights).sum();
                return new GreedyStudy(Arrays.stream(weights).map(w -> w / sum).toArray(), rows.toArray(int[][]::new));
            }
        }
    }

    private static int outcome(Trial trial, Ask.Metered ask) {
        Check check = ask.check();
        Reading reading = trial.in(Dictionary.key(ask.arrangement()))
                .map(s -> s.readings().get(check))
                .orElse(null);
        if (reading == null || reading.overRange()) {
            return Integer.MAX_VALUE;
        }
        return (int) Math.round(Axis.at(check.function(), reading.value()) / ONE_OUTCOME);
    }

    /** Parts of a set of boards by the outcome of a check. */
    private List<Integer> parts(int check, int set) {
        List<Integer> outcomesSeen = new ArrayList<>();
        List<Integer> parts = new ArrayList<>();
        for (int b = 0; b < BOARDS; b++) {
            if ((set & 1 << b) == 0) {
                continue;
            }
            int at = outcomesSeen.indexOf(outcomes[check][b]);
            if (at < 0) {
                outcomesSeen.add(outcomes[check][b]);
                parts.add(1 << b);
            } else {
                parts.set(at, parts.get(at) | 1 << b);
            }
        }
        return parts;
    }

    private double weight(int set) {
        double sum = 0;
        for (int b = 0; b < BOARDS; b++) {
            sum += (set & 1 << b) != 0 ? weights[b] : 0;
        }
        return sum;
    }

    /** Expected number of checks, the best one chosen each time. */
    private double optimum(int set) {
        if (best[set] >= 0) {
            return best[set];
        }
        double least = Double.POSITIVE_INFINITY;
        for (int c = 0; c < outcomes.length; c++) {
            List<Integer> parts = parts(c, set);
            if (parts.size() > 1) {
                double cost = 1;
                for (int part : parts) {
                    cost += weight(part) / weight(set) * optimum(part);
                }
                least = Math.min(least, cost);
            }
        }
        best[set] = least == Double.POSITIVE_INFINITY ? 0 : least;
        return best[set];
    }

    private double greedy(int set) {
        int chosen = -1;
        double most = 1e-12;
        for (int c = 0; c < outcomes.length; c++) {
            double gain = Gain.expected(joint(parts(c, set), set));
            if (gain > most + 1e-12) {
                most = gain;
                chosen = c;
            }
        }
        return chosen < 0 ? 0 : after(chosen, set, this::greedy);
    }

    private double any(int set, Random random) {
        List<Integer> useful = new ArrayList<>();
        for (int c = 0; c < outcomes.length; c++) {
            if (parts(c, set).size() > 1) {
                useful.add(c);
            }
        }
        return useful.isEmpty() ? 0 : after(useful.get(random.nextInt(useful.size())), set, s -> any(s, random));
    }

    private double after(int check, int set, java.util.function.IntToDoubleFunction goOn) {
        double cost = 1;
        for (int part : parts(check, set)) {
            cost += weight(part) / weight(set) * goOn.applyAsDouble(part);
        }
        return cost;
    }

    /** Boards and outcomes together. */
    private double[][] joint(List<Integer> parts, int set) {
        List<double[]> rows = new ArrayList<>();
        for (int b = 0; b < BOARDS; b++) {
            if ((set & 1 << b) != 0) {
                double[] row = new double[parts.size()];
                for (int p = 0; p < row.length; p++) {
                    row[p] = (parts.get(p) & 1 << b) != 0 ? weights[b] / weight(set) : 0;
                }
                rows.add(row);
            }
        }
        return rows.toArray(double[][]::new);
    }
}
