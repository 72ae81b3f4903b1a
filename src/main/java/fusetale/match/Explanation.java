package fusetale.match;

import fusetale.bench.Check;
import fusetale.bench.Observation;
import fusetale.bench.Reading;
import fusetale.circuit.MeterFunction;
import fusetale.explore.Words;
import fusetale.quantity.Notation;
import fusetale.quantity.Quantity;
import fusetale.quantity.Shares;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;

/** Puts a weighing into a ranking that can be read. */
final class Explanation {
    /** Repairs below this are not worth a line. */
    private static final double LEAST_SHARE = 0.001;

    private static final int MOST_CANDIDATES = 40;
    /** From here on something else is told of. */
    private static final double TELLING = 0.2;

    private static final double NEEDS_A_SLIP = 0.3;
    private static final double TWO_SIGMAS = 2;
    /** More than this of a short that no fuse clears: hands off (decision 1 of the design). */
    static final double DANGER = 0.02;

    private static final int MOST_VICTIMS = 4;
    private static final int THREE_DIGITS = 3;
    private static final double LN2 = Math.log(2);
    private static final Words WORDS = Words.of(Explanation.class);

    private final Workbench bench;
    private final Workbench.Weighing weighing;
    private final Posterior posterior;
    private final Case findings;
    private double[] averages = {};

    Explanation(Workbench bench, Workbench.Weighing weighing) {
        this.bench = bench;
        this.weighing = weighing;
        this.posterior = weighing.posterior();
        this.findings = weighing.findings();
    }

    Ranking ranking(Ranking.HowFar howFar) {
        averages = averages();
        List<Candidate> candidates = new ArrayList<>();
        for (Map.Entry<Repair, Double> e : posterior.repairs(bench.boards()).entrySet()) {
            if (e.getValue() >= LEAST_SHARE && candidates.size() < MOST_CANDIDATES) {
                candidates.add(candidate(e.getKey(), e.getValue()));
            }
        }
        List<Ranking.Suspect> suspects = suspects();
        boolean leaderNeedsSlip = !candidates.isEmpty()
                && candidates.get(0).evidence().stream().anyMatch(w -> w.mistakeShare() > NEEDS_A_SLIP);
        return new Ranking(
                candidates,
                posterior.somethingElse(),
                posterior.somethingElse() > TELLING || leaderNeedsSlip,
                suspects,
                List.of(),
                danger(),
                howFar);
    }

    private List<Ranking.Suspect> suspects() {
        List<Ranking.Suspect> all = new ArrayList<>();
        List<Integer> doubted = posterior.doubted(findings);
        for (int j = 0; j < findings.size(); j++) {
            double share = posterior.suspicion()[j];
            if (doubted.contains(j) || (findings.repeated()[j] && share > NEEDS_A_SLIP)) {
                all.add(new Ranking.Suspect(findings.index().get(j), share, findings.repeated()[j]));
            }
        }
        all.sort(Comparator.comparingDouble(Ranking.Suspect::share).reversed());
        return all;
    }

    private Candidate candidate(Repair repair, double share) {
        int best = Objects.requireNonNull(posterior.best(bench.boards(), repair));
        int number = bench.boards().repairOf(posterior.boards().get(best));
        Map<Integer, double[]> byHypothesis = new LinkedHashMap<>();
        for (int k = 0; k < posterior.shares().length; k++) {
            Boards.Board board = posterior.boards().get(k);
            if (bench.boards().repairOf(board) == number) {
                double[] sum = byHypothesis.computeIfAbsent(board.hypothesis(), h -> new double[] {0, -1, 0});
                sum[0] += posterior.shares()[k];
                if (posterior.shares()[k] > sum[1]) {
                    sum[1] = posterior.shares()[k];
                    sum[2] = k;
                }
            }
        }
        List<Candidate.Likely> likely = byHypothesis.values().stream()
                .sorted(Comparator.comparingDouble((double[] s) -> s[0]).reversed())
                .map(s ->
                        new Candidate.Likely(posterior.boards().get((int) s[2]).supposition(), s[0]))
                .toList();
        List<String> consequences =
                melted(best).stream().filter(f -> !repair.parts().contains(f)).toList();
        return new Candidate(repair, share, likely, weighed(best), consequences);
    }

    /** Fuses that have melted as found, in the way that what was found speaks for. */
    private Collection<String> melted(int board) {
        Boards.Board of = posterior.boards().get(board);
        return posterior.fits().get(board).likeliestWay() == Way.AS_TAKEN
                        || bench.blownOtherwise(of).isEmpty()
                ? bench.trial(of)
                        .in(Dictionary.key(bench.dictionary().asFound()))
                        .map(Trial.Shows::melted)
                        .orElse(List.of())
                : new TreeSet<>(bench.blownOtherwise(of));
    }

    private List<Weighed> weighed(int board) {
        Fit fit = posterior.fits().get(board);
        List<Weighed> all = new ArrayList<>();
        for (int j = 0; j < findings.size(); j++) {
            Expectation e = fit.expectations()[j];
            double low = Double.NaN;
            double high = Double.NaN;
            double middle = Double.NaN;
            if (e.kind() == Expectation.Kind.FIGURE
                    && weighing.common().check(j).function() != MeterFunction.CONTINUITY) {
                MeterFunction function = weighing.common().check(j).function();
                low = Axis.back(function, e.middle() - TWO_SIGMAS * fit.spread()[j]);
                high = Axis.back(function, e.middle() + TWO_SIGMAS * fit.spread()[j]);
                middle = Axis.back(function, e.middle());
            }
            all.add(new Weighed(
                    findings.evidence().get(j),
                    shows(e),
                    middle,
                    low,
                    high,
                    fit.away()[j],
                    bits(board, j),
                    fit.mistake()[j],
                    findings.index().get(j)));
        }
        return all;
    }

    private static String shows(Expectation e) {
        Reading reading = e.reading();
        Observation sight = e.sight();
        if (reading != null) {
            return reading.shows();
        }
        return sight != null ? sight.words() : "";
    }

    /** log2 of how much likelier the reading is under the board than under all, both given the other readings. */
    private double bits(int board, int j) {
        double floor = weighing.common().logBroad(j) + Math.log(Fit.SLIP);
        double own = Math.max(posterior.fits().get(board).logEach()[j], floor);
        return (own - Math.max(averages[j], floor)) / LN2;
    }

    /** ln of how likely each reading is under all boards together, given the other readings. */
    private double[] averages() {
        double[] all = new double[findings.size()];
        double[] logs = new double[posterior.shares().length];
        double[] weights = new double[logs.length];
        for (int k = 0; k < logs.length; k++) {
            logs[k] = Math.log(Math.max(posterior.shares()[k], Double.MIN_NORMAL));
        }
        double together = Fit.logSum(logs);
        for (int j = 0; j < all.length; j++) {
            for (int k = 0; k < logs.length; k++) {
                // a board that stands by a slip lets the reading be anything
                double slip = weighing.common().logBroad(j) + Math.log(Fit.SLIP);
                weights[k] = logs[k] - Math.max(posterior.fits().get(k).logEach()[j], slip);
            }
            all[j] = together - Fit.logSum(weights);
        }
        return all;
    }

    /** Why the power must stay off: the likeliest short that the fitted fuses would not clear, and what it would take along. */
    List<String> danger() {
        double share = 0;
        Map<Repair, Double> repairs = new LinkedHashMap<>();
        Map<Repair, Set<String>> victims = new LinkedHashMap<>();
        String asFound = Dictionary.key(bench.dictionary().asFound());
        for (int k = 0; k < posterior.shares().length; k++) {
            Boards.Board board = posterior.boards().get(k);
            // what was not worked out with its new parts is as dangerous as it was
            List<String> lost = bench.after(board, findings.now())
                    .in(asFound)
                    .or(() -> bench.trial(board).in(asFound))
                    .map(Trial.Shows::lost)
                    .orElse(List.of());
            if (!lost.isEmpty() && posterior.shares()[k] > 0) {
                share += posterior.shares()[k];
                Repair repair = bench.boards().of(board).repair();
                repairs.merge(repair, posterior.shares()[k], Double::sum);
                lost.forEach(l ->
                        victims.computeIfAbsent(repair, r -> new TreeSet<>()).add(owner(l)));
            }
        }
        if (share <= DANGER) {
            return List.of();
        }
        // shares of a thousand boards add up to a rounding more than 1
        share = Math.min(1, share);
        Repair leader = repairs.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .orElseThrow();
        return List.of(danger(share, leader, victims.getOrDefault(leader, Set.of())));
    }

    /**
     * The danger in words.
     *
     * @param victims parts that go past what they stand; of the leader's own only told where there are no others
     */
    static String danger(double share, Repair leader, Set<String> victims) {
        List<String> others =
                victims.stream().filter(v -> !leader.parts().contains(v)).toList();
        if (others.isEmpty()) {
            boolean one = leader.parts().size() == 1;
            return WORDS.say(one ? "danger.itself" : "danger.themselves", Shares.said(share), leader.words());
        }
        String few = String.join(", ", others.stream().limit(MOST_VICTIMS).toList());
        return WORDS.say(others.size() == 1 ? "danger.one" : "danger", Shares.said(share), leader.words(), few);
    }

    /** The part of which a leg, winding or junction is lost. */
    private static String owner(String lost) {
        int dot = lost.indexOf('.');
        return dot < 0 ? lost : lost.substring(0, dot);
    }

    /** A figure on the axis of a check as a display would show it, three digits. */
    static String figure(Check check, double axis) {
        double si = Axis.back(check.function(), axis);
        boolean nothing = Math.abs(si) < Axis.nearZero(check.function()) / 2;
        double rounded = nothing
                ? 0
                : new BigDecimal(si).round(new MathContext(THREE_DIGITS)).doubleValue();
        return Notation.format(new Quantity(rounded, check.function().unit()));
    }
}
