package fusetale.match;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/**
 * The boards that are still likely, and what they would show if something more were asked. Most of them show of most asks what
 * the healthy machine shows there: those are taken together, so that a thousand boards cost little more than the few that
 * differ.
 */
final class Survivors {
    private static final double LEAST_SHARE = 1e-5;
    private static final int MOST = 3000;

    private final Workbench bench;
    private final Workbench.Weighing weighing;
    private final Renewed renewed;
    private final Normal normal = new Normal();
    private final List<Place> places = new ArrayList<>();
    private final List<Repair> groups = new ArrayList<>();
    private final double[] shares;
    private final Map<Integer, List<Place>> byHypothesis = new LinkedHashMap<>();
    private final Map<String, Contrast> contrasts = new ConcurrentHashMap<>();
    /** How drawn machines stand at what was read. */
    private final double[][] drawnOfEvidence;

    /** A board that is still likely; where its fuses may have come out one way or the other, once each way. */
    static final class Place {
        private final Boards.Board board;
        private final double share;
        private final int group;
        private final Fit fit;
        private final Common common;
        private final Way way;
        private @Nullable Given given;
        private boolean asked;

        Place(Boards.Board board, double share, int group, Fit fit, Common common, Way way) {
            this.board = board;
            this.share = share;
            this.group = group;
            this.fit = fit;
            this.common = common;
            this.way = way;
        }

        Boards.Board board() {
            return board;
        }

        /** Its probability among all that are still likely. */
        double share() {
            return share;
        }

        /** How its fuses have come out. */
        Way way() {
            return way;
        }

        /** Place of its repair among {@link Survivors#groups}. */
        int group() {
            return group;
        }

        @Nullable
        synchronized Given given() {
            if (!asked) {
                asked = true;
                given = Given.of(fit, common);
            }
            return given;
        }
    }

    Survivors(Workbench bench, Workbench.Weighing weighing) {
        this.bench = bench;
        this.weighing = weighing;
        Case findings = weighing.findings();
        this.renewed = findings.now();
        this.drawnOfEvidence =
                findings.evidence().stream().map(e -> bench.drawn(e.ask())).toArray(double[][]::new);
        this.shares = collect();
    }

    private double[] collect() {
        Posterior p = weighing.posterior();
        Integer[] order = new Integer[p.shares().length];
        Arrays.setAll(order, k -> k);
        Arrays.sort(order, Comparator.comparingDouble((Integer k) -> -p.shares()[k]));
        double sum = 0;
        List<Integer> kept = new ArrayList<>();
        for (int k : order) {
            if (kept.size() >= MOST || p.shares()[k] < LEAST_SHARE) {
                break;
            }
            kept.add(k);
            sum += p.shares()[k];
        }
        Map<Repair, Integer> numbers = new LinkedHashMap<>();
        for (int k : kept) {
            Boards.Board board = p.boards().get(k);
            Repair repair = bench.boards().of(board).repair();
            int group = numbers.computeIfAbsent(repair, r -> numbers.size());
            places.addAll(ways(board, p.shares()[k] / sum, group, p.fits().get(k)));
        }
        places.sort(Comparator.comparingDouble(Place::share).reversed());
        places.forEach(place -> byHypothesis
                .computeIfAbsent(place.board().hypothesis(), h -> new ArrayList<>())
                .add(place));
        groups.addAll(numbers.keySet());
        double[] of = new double[groups.size()];
        places.forEach(p1 -> of[p1.group()] += p1.share());
        return of;
    }

    /** What was read may have told which fuse melted, or whether one has; what is asked next must not be asked for that again. */
    private List<Place> ways(Boards.Board board, double share, int group, Fit fit) {
        if (fit.ways().isEmpty()) {
            return List.of(new Place(board, share, group, fit, weighing.common(), Way.AS_TAKEN));
        }
        double[] of = fit.waysShares(this::stands);
        List<Place> all = new ArrayList<>();
        for (int k = 0; k < of.length; k++) {
            Fit.Turned turned = fit.ways().get(k);
            all.add(new Place(board, share * of[k], group, turned.fit(), weighing.common(), turned.way()));
        }
        return all;
    }

    /** How much of a fit stands without taking for a slip what was the same twice. */
    private double stands(Fit fit) {
        double kept = 1;
        for (int j = 0; j < fit.mistake().length; j++) {
            kept -= weighing.findings().repeated()[j] ? fit.mistake()[j] : 0;
        }
        return Math.max(0, kept);
    }

    /** Likeliest first. */
    List<Place> places() {
        return places;
    }

    /** Their repairs. */
    List<Repair> groups() {
        return groups;
    }

    /** Probability of each repair among them. Not to be modified. */
    double[] shares() {
        return shares;
    }

    /** Place of the likeliest repair, which need not be that of the likeliest board. */
    int leader() {
        int first = 0;
        for (int g = 1; g < shares.length; g++) {
            first = shares[g] > shares[first] ? g : first;
        }
        return first;
    }

    /** Parts that are new by now. */
    Renewed renewed() {
        return renewed;
    }

    List<Boards.Board> boards(int most) {
        return places.stream().map(Place::board).distinct().limit(most).toList();
    }

    /** The likeliest, which together are as likely as that. */
    List<Boards.Board> boards(double likely) {
        Set<Boards.Board> some = new LinkedHashSet<>();
        double sum = 0;
        for (Place place : places) {
            if (sum >= likely) {
                break;
            }
            some.add(place.board());
            sum += place.share();
        }
        return List.copyOf(some);
    }

    /** Forgets what was compared, after more was worked out. */
    void again() {
        contrasts.clear();
    }

    /** What an ask would show, all repairs apart. */
    Foresight foresight(Ask ask) {
        return foresight(ask, false);
    }

    /**
     * The same with all repairs taken together that show only what the healthy machine shows: it tells as much, and is quicker.
     */
    Foresight lumped(Ask ask) {
        return foresight(ask, true);
    }

    private Foresight foresight(Ask ask, boolean lump) {
        Wanted wanted = Wanted.of(ask);
        List<Place> apart = apart(wanted);
        double[] rest = shares.clone();
        Map<Integer, Integer> numbers = new HashMap<>();
        List<Repair> named = new ArrayList<>();
        apart.forEach(p -> {
            rest[p.group()] -= p.share();
            number(p.group(), numbers, named);
        });
        Spread spread = new Spread(ask, wanted);
        List<Foresight.Alive> shown = new ArrayList<>();
        for (Place place : apart) {
            shown.add(spread.of(place, numbers.getOrDefault(place.group(), 0)));
        }
        Foresight.Alive healthy = spread.healthy(new HashSet<>(apart));
        double together = 0;
        int likeliest = -1;
        for (int g = 0; g < rest.length; g++) {
            if (rest[g] <= 0) {
                continue;
            }
            if (!lump || numbers.containsKey(g)) {
                shown.add(healthy.with(number(g, numbers, named), rest[g]));
            } else {
                together += rest[g];
                likeliest = likeliest < 0 ? g : likeliest;
            }
        }
        if (likeliest >= 0) {
            shown.add(healthy.with(named.size(), together));
            named.add(groups.get(likeliest));
        }
        return Foresight.of(shown, named, normal);
    }

    /** How differently the leader looks there from a machine with nothing wrong, from 0 to 1, whatever else is still likely. */
    double leaderApart(Ask ask) {
        Wanted wanted = Wanted.of(ask);
        List<Place> apart = apart(wanted);
        int first = leader();
        List<Place> leader = apart.stream().filter(p -> p.group() == first).toList();
        if (leader.isEmpty()) {
            return 0;
        }
        Spread spread = new Spread(ask, wanted);
        List<Foresight.Alive> shown = new ArrayList<>();
        double left = shares[first];
        for (Place place : leader) {
            shown.add(spread.of(place, 0));
            left -= place.share();
        }
        Foresight.Alive healthy = spread.healthy(new HashSet<>(apart));
        if (left > 0) {
            shown.add(healthy.with(0, left));
        }
        shown.add(healthy.with(1, shares[first]));
        return Foresight.of(shown, List.of(groups.get(first), Repair.NOTHING), normal)
                .apart(0, 1);
    }

    private int number(int group, Map<Integer, Integer> numbers, List<Repair> named) {
        return numbers.computeIfAbsent(group, g -> {
            named.add(groups.get(g));
            return named.size() - 1;
        });
    }

    /** Boards whose hypothesis shows something else there than the healthy machine, at any of its amounts. */
    private List<Place> apart(Wanted wanted) {
        BitSet hypotheses = contrasts
                .computeIfAbsent(wanted.bench(), a -> bench.contrast(a, byHypothesis.keySet(), renewed))
                .apart(wanted);
        List<Place> all = new ArrayList<>();
        byHypothesis.forEach((hypothesis, those) -> {
            if (hypotheses.get(hypothesis)) {
                all.addAll(those);
            }
        });
        return all;
    }

    /** The law of one more reading, given all that was read. */
    private final class Spread {
        private final Wanted wanted;
        private final Outlook outlook;
        private final int machines;
        private final double own;
        private final double[] shared;

        Spread(Ask ask, Wanted wanted) {
            this.wanted = wanted;
            this.outlook = bench.outlook(wanted);
            double[] drawn = bench.drawn(ask);
            this.machines = drawn.length;
            this.own = Common.covariance(drawn, drawn);
            this.shared = new double[drawnOfEvidence.length];
            for (int j = 0; j < shared.length; j++) {
                shared[j] = Common.covariance(drawn, drawnOfEvidence[j]);
            }
        }

        Foresight.Alive of(Place place, int number) {
            Expectation e = renewed.isNothing()
                    ? outlook.of(place.board(), place.way())
                    : bench.expect(place.board(), wanted, renewed, place.way());
            return of(e, e.kind() == Expectation.Kind.FIGURE ? place.given() : null, number, place.share());
        }

        /** What shows where nothing is wrong, as far as the likeliest of those that look so lets know. */
        Foresight.Alive healthy(Set<Place> apart) {
            Expectation e = bench.expect(bench.boards().all().get(0), wanted, renewed);
            Given given = places.stream()
                    .filter(p -> !apart.contains(p))
                    .findFirst()
                    .map(Place::given)
                    .orElse(null);
            return of(e, given, 0, 0);
        }

        private Foresight.Alive of(Expectation e, @Nullable Given given, int number, double share) {
            double mean = e.middle();
            double variance = e.ownVariance() + own + e.slope() * e.slope() / 12;
            if (e.kind() == Expectation.Kind.FIGURE && given != null) {
                Given.Law law = given.law(shared, machines, e.slope());
                mean += law.shift();
                variance = Math.max(e.ownVariance(), variance - law.explained());
            }
            return new Foresight.Alive(number, share, e, mean, Math.sqrt(variance));
        }
    }
}
