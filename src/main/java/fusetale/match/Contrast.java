package fusetale.match;

import fusetale.bench.Check;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Which hypotheses show something else than the healthy machine in one arrangement, at any of their amounts: by check, and by what is
 * looked at. Remembered from one list of what to measure next to the following, and brought up to date where more of a
 * hypothesis was worked out. Immutable.
 */
final class Contrast {
    private final String arrangement;
    /** How much of a hypothesis, and of the healthy machine, was worked out when it was compared. */
    private final Map<Integer, Long> stamps;

    private final Map<Check, BitSet> checks;
    private final Map<String, BitSet> sights;
    private final BitSet unsolved;

    private Contrast(
            String arrangement,
            Map<Integer, Long> stamps,
            Map<Check, BitSet> checks,
            Map<String, BitSet> sights,
            BitSet unsolved) {
        this.arrangement = arrangement;
        this.stamps = stamps;
        this.checks = checks;
        this.sights = sights;
        this.unsolved = unsolved;
    }

    /** Of an arrangement; nothing compared yet. */
    static Contrast of(String arrangement) {
        return new Contrast(arrangement, Map.of(), Map.of(), Map.of(), new BitSet());
    }

    /**
     * The same with some hypotheses compared as far as they are worked out by now; this one where they are.
     *
     * @param renewed what has been done to the machine by now
     */
    Contrast upToDate(Workbench bench, Collection<Integer> hypotheses, Renewed renewed) {
        Map<Integer, Long> changed = new HashMap<>();
        long healthy = (long) bench.dictionary().healthy().grown() << Integer.SIZE;
        for (int hypothesis : hypotheses) {
            long stamp = healthy;
            for (Trial trial : trials(bench, hypothesis, renewed)) {
                stamp += trial.grown();
            }
            Long known = stamps.get(hypothesis);
            if (known == null || known != stamp) {
                changed.put(hypothesis, stamp);
            }
        }
        return changed.isEmpty() ? this : with(changed, bench, renewed);
    }

    private Contrast with(Map<Integer, Long> changed, Workbench bench, Renewed renewed) {
        Contrast next =
                new Contrast(arrangement, new HashMap<>(stamps), copy(checks), copy(sights), (BitSet) unsolved.clone());
        Trial.Shows good = bench.dictionary().healthy().in(arrangement).orElse(Trial.Shows.UNSOLVED);
        next.stamps.putAll(changed);
        for (int hypothesis : changed.keySet()) {
            next.checks.values().forEach(set -> set.clear(hypothesis));
            next.sights.values().forEach(set -> set.clear(hypothesis));
            next.unsolved.clear(hypothesis);
            for (Trial trial : trials(bench, hypothesis, renewed)) {
                Trial.Unlike unlike = trial.unlike(arrangement, good);
                unlike.checks()
                        .forEach(c -> next.checks
                                .computeIfAbsent(c, k -> new BitSet())
                                .set(hypothesis));
                unlike.sights()
                        .forEach(s -> next.sights
                                .computeIfAbsent(s, k -> new BitSet())
                                .set(hypothesis));
                if (unlike.unsolved()) {
                    next.unsolved.set(hypothesis);
                }
            }
        }
        return next;
    }

    /** All its amounts; where its fuses may have come out one way or the other, both ways. */
    private static List<Trial> trials(Workbench bench, int hypothesis, Renewed renewed) {
        List<Trial> all = new ArrayList<>();
        for (Boards.Board board : bench.boards().of(hypothesis)) {
            bench.ways(board, List.of(renewed)).forEach(w -> all.add(bench.after(board, renewed, w)));
        }
        return all;
    }

    private static <K> Map<K, BitSet> copy(Map<K, BitSet> sets) {
        Map<K, BitSet> copy = new HashMap<>();
        sets.forEach((key, set) -> copy.put(key, (BitSet) set.clone()));
        return copy;
    }

    /** The hypotheses that show something else at an ask, or of which nothing is known there. The caller's own. */
    BitSet apart(Wanted wanted) {
        BitSet some = wanted.ask() instanceof Ask.Metered m ? checks.get(m.check()) : sights.get(wanted.sight());
        BitSet all = some == null ? new BitSet() : (BitSet) some.clone();
        all.or(unsolved);
        return all;
    }
}
