package fusetale.desk.tags;

import java.util.ArrayList;
import java.util.List;

/**
 * Places tags in a row: each as near as can be to where its point is, in the order of the points, a gap apart, none outside. Least
 * squares under those constraints; in coordinates from which widths and gaps are taken away it is isotonic regression, solved
 * by pooling adjacent violators (Ayer et al. 1955), and the ends of the row clamp that solution without spoiling it.
 */
final class CordPlan {
    private CordPlan() {}

    /**
     * Left edges of all tags [px].
     *
     * @param wanted where the middle of each tag would like to be, ascending [px]
     * @param widths of the tags [px]
     * @param gap least room between two [px]
     * @param left where the row begins [px]
     * @param right where it ends [px]; where they do not fit they overflow to the right
     */
    static List<Double> lefts(List<Double> wanted, List<Double> widths, double gap, double left, double right) {
        List<Double> offsets = new ArrayList<>();
        double taken = 0;
        for (double width : widths) {
            offsets.add(taken);
            taken += width + gap;
        }
        double most = Math.max(left, right - (taken - gap));
        List<Pool> pools = new ArrayList<>();
        for (int k = 0; k < wanted.size(); k++) {
            Pool pool = new Pool(wanted.get(k) - widths.get(k) / 2 - offsets.get(k), 1);
            while (!pools.isEmpty() && pools.get(pools.size() - 1).mean() > pool.mean()) {
                pool = pools.remove(pools.size() - 1).with(pool);
            }
            pools.add(pool);
        }
        List<Double> lefts = new ArrayList<>();
        for (Pool pool : pools) {
            for (int k = 0; k < pool.count(); k++) {
                lefts.add(Math.max(left, Math.min(pool.mean(), most)) + offsets.get(lefts.size()));
            }
        }
        return lefts;
    }

    /** What a row of tags takes [px]. */
    static double width(List<Double> widths, double gap) {
        return widths.stream().mapToDouble(w -> w + gap).sum() - gap;
    }

    /** Neighbours that share one shift. */
    private record Pool(double mean, int count) {
        Pool with(Pool other) {
            int all = count + other.count;
            return new Pool((mean * count + other.mean * other.count) / all, all);
        }
    }
}
