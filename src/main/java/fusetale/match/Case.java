package fusetale.match;

import fusetale.bench.Observation;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Findings as they are weighed: repeated readings folded, each with what had been replaced before it.
 */
final class Case {
    private final List<Evidence> evidence;
    private final List<Renewed> renewed;
    private final Renewed now;
    private final Set<Renewed> renewals;
    private final boolean[] repeated;
    private final List<Integer> index;
    private final List<Wanted> wanted;

    private Case(List<Evidence> evidence, List<Renewed> renewed, Renewed now, boolean[] repeated, List<Integer> index) {
        this.evidence = List.copyOf(evidence);
        this.renewed = List.copyOf(renewed);
        this.now = now;
        this.repeated = repeated;
        this.index = List.copyOf(index);
        this.renewals = new LinkedHashSet<>(renewed);
        this.renewals.add(now);
        this.wanted = evidence.stream().map(e -> Wanted.of(e.ask())).toList();
    }

    /** What counts, in order. */
    List<Evidence> evidence() {
        return evidence;
    }

    /** What had been done to the machine when each was read. */
    List<Renewed> renewed() {
        return renewed;
    }

    /** All that, and what has been done by now, each once. */
    Set<Renewed> renewals() {
        return renewals;
    }

    /** What has been done to the machine by now, whether anything was read since or not. */
    Renewed now() {
        return now;
    }

    /** Whether each was read twice with the same result. Not to be modified. */
    boolean[] repeated() {
        return repeated;
    }

    /** Place of each among all findings. */
    List<Integer> index() {
        return index;
    }

    /** The ask of each with its keys. */
    List<Wanted> wanted() {
        return wanted;
    }

    /**
     * Two readings of one ask are the same within this, of their value: 1 % and some digits are left open by the sheet of a meter each
     * time (judgement).
     */
    private static final double SAME_RATIO = 0.03;

    /** And besides within this of what is as good as nothing: twice 20 mV, or 0.2 Ω of leads. */
    private static final double SAME_NEAR_ZERO = 0.8;

    static Case of(Findings findings) {
        List<Evidence> evidence = new ArrayList<>();
        List<Renewed> renewed = new ArrayList<>();
        List<Boolean> repeated = new ArrayList<>();
        List<Integer> index = new ArrayList<>();
        Set<String> fresh = new LinkedHashSet<>();
        boolean on = true;
        int place = 0;
        for (Findings.Spell spell : findings.spells()) {
            on &= spell.replaced().isEmpty();
            fresh.addAll(spell.replaced());
            int first = evidence.size();
            for (Evidence e : spell.evidence()) {
                on |= tellsOfPower(e, fresh);
                Renewed then = new Renewed(fresh, on);
                int before = earlier(evidence, first, e, renewed, then);
                if (before >= 0) {
                    boolean same = same(e.ask(), evidence.get(before).shown(), e.shown());
                    // one that differs puts the first out of court
                    evidence.set(before, e);
                    repeated.set(before, same);
                    index.set(before, place);
                } else {
                    evidence.add(e);
                    renewed.add(then);
                    repeated.add(false);
                    index.add(place);
                }
                place++;
            }
        }
        boolean[] twice = new boolean[repeated.size()];
        for (int k = 0; k < twice.length; k++) {
            twice[k] = repeated.get(k);
        }
        return new Case(evidence, renewed, new Renewed(fresh, on), twice, index);
    }

    private static int earlier(List<Evidence> evidence, int first, Evidence e, List<Renewed> renewed, Renewed then) {
        for (int k = first; k < evidence.size(); k++) {
            if (sameAsk(evidence.get(k).ask(), e.ask()) && renewed.get(k).equals(then)) {
                return k;
            }
        }
        return -1;
    }

    /**
     * Whether two asks are one, whatever the arrangements are called. Behind a series lamp good fuses stand in for those that were
     * found.
     */
    static boolean sameAsk(Ask one, Ask other) {
        return one.words().equals(other.words())
                && ((isOfFuse(one) && isOwnFuses(one) && isOwnFuses(other))
                        || Dictionary.key(one.arrangement()).equals(Dictionary.key(other.arrangement())));
    }

    /** The link and the cap of a fuse look the same with the plug in and out. */
    private static boolean isOfFuse(Ask ask) {
        return ask instanceof Ask.Noticed n
                && (n.aspect() == Observation.Aspect.FUSE || n.aspect() == Observation.Aspect.RATING);
    }

    private static boolean isOwnFuses(Ask ask) {
        return ask.arrangement().seriesLampWatts() == null;
    }

    /**
     * Whether what melts a new fuse has had its chance by then: a lamp in the lead saves it, and looking at a fuse takes no power. But
     * a new one that is gone has had power.
     */
    private static boolean tellsOfPower(Evidence e, Set<String> fresh) {
        if (!isOwnFuses(e.ask())) {
            return false;
        }
        return isOfFuse(e.ask())
                ? e.ask() instanceof Ask.Noticed n
                        && fresh.contains(n.part())
                        && e.shown() instanceof Shown.Seen seen
                        && seen.sight() == Observation.Sight.WIRE_GONE
                : e.ask().arrangement().powerOn();
    }

    /** Whether a meter, or an eye, may show both of one thing. */
    static boolean same(Ask ask, Shown one, Shown other) {
        if (ask instanceof Ask.Metered m && one instanceof Shown.Figure a && other instanceof Shown.Figure b) {
            double most = Math.max(Math.abs(a.si()), Math.abs(b.si()));
            double open =
                    SAME_RATIO * most + SAME_NEAR_ZERO * Axis.nearZero(m.check().function());
            return Math.abs(a.si() - b.si()) <= open;
        }
        return one.equals(other);
    }

    int size() {
        return evidence.size();
    }
}
