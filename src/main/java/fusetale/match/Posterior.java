package fusetale.match;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * How likely each board is after the evidence, by Bayes' rule, and something not in the list beside them.
 */
final class Posterior {
    private static final double DOUBTED = 0.5;
    /** A figure that is a slip with so much may be why something was seen that does not fit (judgement). */
    private static final double IN_DOUBT = 0.1;
    /** Before anything is read, what explains a strange sight may well be less likely than a wrong look at any other machine (judgement). */
    private static final int READ_FIRST = 3;

    private final List<Boards.Board> boards;
    private final double[] shares;
    private final List<Fit> fits;
    private final double somethingElse;
    private final double[] suspicion;

    Posterior(List<Boards.Board> boards, double[] shares, List<Fit> fits, double somethingElse, double[] suspicion) {
        this.boards = List.copyOf(boards);
        this.shares = shares;
        this.fits = List.copyOf(fits);
        this.somethingElse = somethingElse;
        this.suspicion = suspicion;
    }

    /** Those that were weighed. */
    List<Boards.Board> boards() {
        return boards;
    }

    /** Probability of each, with that of something else they add up to 1. Not to be modified. */
    double[] shares() {
        return shares;
    }

    /** Those with more than a share. */
    List<Boards.Board> likelierThan(double share) {
        List<Boards.Board> some = new ArrayList<>();
        for (int k = 0; k < shares.length; k++) {
            if (shares[k] > share) {
                some.add(boards.get(k));
            }
        }
        return some;
    }

    /** How each explains the evidence. */
    List<Fit> fits() {
        return fits;
    }

    /** Probability that it is not in the list. */
    double somethingElse() {
        return somethingElse;
    }

    /** Probability that each reading is a slip. Not to be modified. */
    double[] suspicion() {
        return suspicion;
    }

    /**
     * What should be read or looked at again, by place: figures that are slips more likely than not; where some were read and none is in
     * doubt, what was seen otherwise than most that is likely lets expect. What was the same twice is not asked a third time.
     */
    List<Integer> doubted(Case findings) {
        List<Integer> figures = new ArrayList<>();
        List<Integer> sights = new ArrayList<>();
        double mostOfFigures = 0;
        int read = 0;
        for (int j = 0; j < suspicion.length; j++) {
            boolean seen = findings.evidence().get(j).ask() instanceof Ask.Noticed;
            if (!seen) {
                read++;
                mostOfFigures = Math.max(mostOfFigures, findings.repeated()[j] ? 0 : suspicion[j]);
            }
            if (suspicion[j] > DOUBTED && !findings.repeated()[j]) {
                (seen ? sights : figures).add(j);
            }
        }
        return read >= READ_FIRST && figures.isEmpty() && mostOfFigures < IN_DOUBT ? sights : figures;
    }

    /** Whether something was seen once, and wrongly with more than a small probability: a second look may tell most of all. */
    boolean mayBeMisseen(Case findings, int j) {
        return findings.evidence().get(j).ask() instanceof Ask.Noticed
                && !findings.repeated()[j]
                && suspicion[j] > IN_DOUBT;
    }

    /**
     * Weighs.
     *
     * @param repeated which readings were taken twice with the same result, which are no slips
     */
    static Posterior of(List<Boards.Board> boards, List<Fit> fits, Common common, boolean[] repeated) {
        int n = boards.size();
        double[] logs = new double[n + 1];
        double broad = 0;
        for (int j = 0; j < common.size(); j++) {
            broad += common.logBroad(j);
        }
        for (int k = 0; k < n; k++) {
            logs[k] = Math.log(boards.get(k).weight()) + fits.get(k).logLikelihood();
        }
        logs[n] = Math.log(Hypotheses.SOMETHING_ELSE) + broad;
        double total = Fit.logSum(logs);
        double[] shares = new double[n];
        double[] suspicion = new double[common.size()];
        double something = Math.exp(logs[n] - total);
        for (int k = 0; k < n; k++) {
            shares[k] = Math.exp(logs[k] - total);
            double[] mistake = fits.get(k).mistake();
            double kept = shares[k];
            for (int j = 0; j < suspicion.length; j++) {
                double saved = shares[k] * mistake[j];
                if (repeated[j]) {
                    // twice the same is no slip: what only a slip would save is something else that looks like it
                    kept -= saved;
                    saved *= common.shown(j) instanceof Shown.Seen seen ? Seeing.unlistedOdds(seen) : 1;
                    something += saved;
                }
                suspicion[j] += saved;
            }
            shares[k] = Math.max(0, kept);
        }
        double all = Arrays.stream(shares).sum() + something;
        for (int k = 0; k < n; k++) {
            shares[k] /= all;
        }
        for (int j = 0; j < suspicion.length; j++) {
            suspicion[j] /= repeated[j] ? all : 1;
        }
        return new Posterior(boards, shares, fits, something / all, suspicion);
    }

    /** Probability of each repair, likeliest first; repairs of one probability in the order of the boards. */
    Map<Repair, Double> repairs(Boards all) {
        double[] sums = new double[all.repairs().size()];
        Set<Integer> there = new LinkedHashSet<>();
        for (int k = 0; k < shares.length; k++) {
            int number = all.repairOf(boards.get(k));
            there.add(number);
            sums[number] += shares[k];
        }
        List<Map.Entry<Repair, Double>> entries = new ArrayList<>();
        there.forEach(r -> entries.add(Map.entry(all.repairs().get(r), sums[r])));
        entries.sort(Map.Entry.<Repair, Double>comparingByValue().reversed());
        Map<Repair, Double> sorted = new LinkedHashMap<>();
        entries.forEach(e -> sorted.put(e.getKey(), e.getValue()));
        return sorted;
    }

    /** Place of the likeliest board of a repair; null where it has none. */
    @Nullable
    Integer best(Boards all, Repair repair) {
        int wanted = all.repairs().indexOf(repair);
        Integer best = null;
        for (int k = 0; k < shares.length; k++) {
            boolean of = all.repairOf(boards.get(k)) == wanted;
            if (of && (best == null || shares[k] > shares[best])) {
                best = k;
            }
        }
        return best;
    }
}
