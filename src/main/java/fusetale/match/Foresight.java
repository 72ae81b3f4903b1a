package fusetale.match;

import fusetale.bench.Observation;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What one more ask would show, of every board that is still alive: outcomes, and how likely each is together with each
 * repair.
 */
final class Foresight {
    private final List<Outcome> outcomes;
    private final double[][] joint;
    private final List<Repair> groups;

    Foresight(List<Outcome> outcomes, double[][] joint, List<Repair> groups) {
        this.outcomes = List.copyOf(outcomes);
        this.joint = joint;
        this.groups = List.copyOf(groups);
    }

    /** What the display would show, in order. */
    List<Outcome> outcomes() {
        return outcomes;
    }

    /** {@code joint[group][outcome]}, adds up to 1. Not to be modified. */
    double[][] joint() {
        return joint;
    }

    /** Repairs, in the order of {@code joint}. */
    List<Repair> groups() {
        return groups;
    }

    /** Of every outcome this much is a slip of hand or eye (judgement). */
    private static final double SLIP = 0.04;

    private static final int MOST_BINS = 32;
    private static final double WIDTH_SIGMAS = 2.5;
    private static final double REACH_SIGMAS = 3.5;

    /**
     * One outcome.
     *
     * @param low lower end on the axis; NaN where it is no figure
     * @param high upper end
     * @param seen what is seen; OL where empty and no figure
     */
    record Outcome(double low, double high, String seen) {
        boolean figure() {
            return !Double.isNaN(low);
        }
    }

    /**
     * What a board would show, given all that was read.
     *
     * @param group its repair's place
     * @param share its probability among those alive
     * @param expectation what it shows
     * @param mean on the axis, what was read taken into account
     * @param sigma standard deviation [axis]
     */
    record Alive(int group, double share, Expectation expectation, double mean, double sigma) {
        /** The same, as another repair shows it. */
        Alive with(int otherGroup, double otherShare) {
            return new Alive(otherGroup, otherShare, expectation, mean, sigma);
        }
    }

    static Foresight of(List<Alive> alive, List<Repair> groups, Normal normal) {
        boolean sights = alive.stream().anyMatch(a -> a.expectation().kind() == Expectation.Kind.SIGHT);
        return sights ? ofSights(alive, groups) : ofFigures(alive, groups, normal);
    }

    private static Foresight ofSights(List<Alive> alive, List<Repair> groups) {
        Map<String, Integer> places = new LinkedHashMap<>();
        for (Alive a : alive) {
            Observation seen = a.expectation().sight();
            if (seen != null) {
                places.putIfAbsent(looks(seen), places.size());
            }
        }
        List<Outcome> outcomes = places.keySet().stream()
                .map(w -> new Outcome(Double.NaN, Double.NaN, w))
                .toList();
        double[][] joint = new double[groups.size()][Math.max(1, outcomes.size())];
        for (Alive a : alive) {
            Observation seen = a.expectation().sight();
            if (seen != null) {
                joint[a.group()][places.getOrDefault(looks(seen), 0)] += a.share();
            } else {
                spread(joint[a.group()], a.share());
            }
        }
        return new Foresight(
                outcomes.isEmpty() ? List.of(new Outcome(Double.NaN, Double.NaN, "")) : outcomes, mixed(joint), groups);
    }

    /** What tells two sights apart: how much a rail hums is no figure. */
    static String looks(Observation seen) {
        return seen.sight() == Observation.Sight.STOPS
                ? seen.words()
                : seen.sight().words();
    }

    private static Foresight ofFigures(List<Alive> alive, List<Repair> groups, Normal normal) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Alive a : alive) {
            if (a.expectation().kind() == Expectation.Kind.FIGURE) {
                low = Math.min(low, a.mean() - REACH_SIGMAS * a.sigma());
                high = Math.max(high, a.mean() + REACH_SIGMAS * a.sigma());
            }
        }
        int bins = 0;
        double width = 1;
        if (low <= high) {
            width = Math.max(WIDTH_SIGMAS * middleSigma(alive), (high - low) / MOST_BINS);
            bins = (int) Math.max(1, Math.ceil((high - low) / width));
        }
        List<Outcome> outcomes = new ArrayList<>();
        for (int b = 0; b < bins; b++) {
            outcomes.add(new Outcome(low + b * width, low + (b + 1) * width, ""));
        }
        outcomes.add(new Outcome(Double.NaN, Double.NaN, "OL"));
        double[][] joint = new double[groups.size()][bins + 1];
        double[] parts = new double[bins];
        Alive last = null;
        for (Alive a : alive) {
            double[] row = joint[a.group()];
            switch (a.expectation().kind()) {
                case FIGURE -> {
                    if (last == null || last.mean() != a.mean() || last.sigma() != a.sigma()) {
                        parts(a, low, width, parts, normal);
                        last = a;
                    }
                    for (int b = 0; b < bins; b++) {
                        row[b] += a.share() * parts[b];
                    }
                }
                case OVER -> row[bins] += a.share();
                default -> spread(row, a.share());
            }
        }
        return new Foresight(outcomes, mixed(joint), groups);
    }

    /** The standard deviation that half of what is likely is narrower than [axis]. */
    private static double middleSigma(List<Alive> alive) {
        List<Alive> figures = alive.stream()
                .filter(a -> a.expectation().kind() == Expectation.Kind.FIGURE)
                .sorted(Comparator.comparingDouble(Alive::sigma))
                .toList();
        double half = figures.stream().mapToDouble(Alive::share).sum() / 2;
        double sum = 0;
        for (Alive a : figures) {
            sum += a.share();
            if (sum >= half) {
                return a.sigma();
            }
        }
        return 1;
    }

    /** How much of a normal law falls into each bin; the last one takes all that is left. */
    private static void parts(Alive a, double low, double width, double[] parts, Normal normal) {
        double before = 0;
        for (int b = 0; b < parts.length; b++) {
            double upTo = b == parts.length - 1 ? 1 : normal.below((low + (b + 1) * width - a.mean()) / a.sigma());
            parts[b] = upTo - before;
            before = upTo;
        }
    }

    private static void spread(double[] row, double share) {
        for (int b = 0; b < row.length; b++) {
            row[b] += share / row.length;
        }
    }

    /** Mixes a few slips in: of every group a little of what all show. */
    private static double[][] mixed(double[][] joint) {
        int outcomes = joint.length == 0 ? 0 : joint[0].length;
        double[] all = new double[outcomes];
        double sum = 0;
        for (double[] row : joint) {
            for (int b = 0; b < outcomes; b++) {
                all[b] += row[b];
                sum += row[b];
            }
        }
        double[][] mixed = new double[joint.length][outcomes];
        for (int g = 0; g < joint.length; g++) {
            double of = Arrays.stream(joint[g]).sum();
            for (int b = 0; b < outcomes; b++) {
                mixed[g][b] = ((1 - SLIP) * joint[g][b] + SLIP * of * all[b] / sum) / sum;
            }
        }
        return mixed;
    }

    double gain() {
        return Gain.expected(joint);
    }

    /** Place of a repair; the last, where it is taken together with others. */
    int place(Repair repair) {
        int place = groups.indexOf(repair);
        return place < 0 ? groups.size() - 1 : place;
    }

    /** How differently two repairs look here: half the sum of the differences, 0 to 1. */
    double apart(int one, int other) {
        double a = Arrays.stream(joint[one]).sum();
        double b = Arrays.stream(joint[other]).sum();
        double sum = 0;
        for (int k = 0; k < joint[one].length; k++) {
            sum += Math.abs(joint[one][k] / a - joint[other][k] / b);
        }
        return a > 0 && b > 0 ? sum / 2 : 0;
    }
}
