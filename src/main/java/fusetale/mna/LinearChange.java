package fusetale.mna;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What the linear parts of two networks differ by, where that is a few conductances between nodes that both have: a resistor
 * drifted, a fuse blown, a leak or a short laid across a part. Two failures in three of a machine are that, and then its
 * reductions follow from those of the healthy machine by Sherman and Morrison's formula.
 */
final class LinearChange {
    /** More changes than this cost as much as factoring anew. */
    private static final int MOST_CHANGES = 4;

    private static final double SAME_RATIO = 1e-14;

    private LinearChange() {}

    /**
     * The conductances to lay onto {@code base} to make it {@code other}, empty where their linear parts are the same; null
     * where they differ by more, or by anything else.
     */
    static @Nullable List<Norton> between(Layout base, Layout other) {
        if (!sameFrame(base, other)) {
            return null;
        }
        Map<List<Integer>, Double> had = conductances(base.network);
        Map<List<Integer>, Double> has = conductances(other.network);
        Set<List<Integer>> pairs = new LinkedHashSet<>(had.keySet());
        pairs.addAll(has.keySet());
        List<Norton> changes = new ArrayList<>();
        for (List<Integer> pair : pairs) {
            double before = had.getOrDefault(pair, 0.0);
            double after = has.getOrDefault(pair, 0.0);
            // what stands in parallel may have been added up in another order
            if (Math.abs(after - before) > SAME_RATIO * Math.max(before, after)) {
                changes.add(new Norton(pair.get(0), pair.get(1), after - before, 0));
            }
        }
        return changes.size() <= MOST_CHANGES ? changes : null;
    }

    private static boolean sameFrame(Layout base, Layout other) {
        return base.network.nodes().equals(other.network.nodes())
                && base.cells.equals(other.cells)
                && base.slowStates == other.slowStates
                && base.branches.equals(other.branches)
                && sourcePlaces(base).equals(sourcePlaces(other))
                && java.util.Arrays.equals(base.portOne, other.portOne)
                && java.util.Arrays.equals(base.portTwo, other.portTwo)
                && java.util.Arrays.equals(base.portState, other.portState)
                && controlled(base.network).equals(controlled(other.network));
    }

    private static List<List<Integer>> sourcePlaces(Layout layout) {
        return layout.sources.stream()
                .map(s -> List.of(s.one(), s.two(), s.branch()))
                .toList();
    }

    private static List<Element> controlled(Network network) {
        return network.elements().stream()
                .filter(e -> e instanceof Element.VoltageByVoltage
                        || e instanceof Element.VoltageByCurrent
                        || e instanceof Element.CurrentByVoltage
                        || e instanceof Element.CurrentByCurrent)
                .toList();
    }

    /** By pair of nodes [S]. */
    private static Map<List<Integer>, Double> conductances(Network network) {
        Map<List<Integer>, Double> sums = new LinkedHashMap<>();
        for (Element e : network.elements()) {
            if (e instanceof Element.Resistor r) {
                add(sums, r.one(), r.two(), 1 / r.ohms());
            } else if (e instanceof Element.Ported p) {
                for (int k = 0; k < p.ports().size(); k++) {
                    Element.Ends ends = p.ports().get(k);
                    add(sums, ends.one(), ends.two(), p.law().baselineSiemens(k));
                }
            }
        }
        return sums;
    }

    private static void add(Map<List<Integer>, Double> into, int one, int two, double siemens) {
        if (one != two && siemens != 0) {
            into.merge(List.of(Math.min(one, two), Math.max(one, two)), siemens, Double::sum);
        }
    }
}
