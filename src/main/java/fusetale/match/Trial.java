package fusetale.match;

import fusetale.bench.Check;
import fusetale.bench.Observation;
import fusetale.bench.Reading;
import fusetale.explore.Foretold;
import fusetale.fault.FailureMode;
import fusetale.fault.Fault;
import fusetale.fault.Supposition;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * One machine as supposed, and what of it has been worked out so far. Grows; readings once worked out stay.
 */
final class Trial {
    /** Closer than this two readings are one: a third of what models may be off [axis]. */
    private static final double ALIKE = 0.01;

    private final Supposition supposition;
    private final boolean rested;

    private final Map<String, Shows> byArrangement = new ConcurrentHashMap<>();
    private final Map<String, Unlike> unlike = new ConcurrentHashMap<>();
    private final AtomicInteger grown = new AtomicInteger();

    /**
     * Of a machine.
     *
     * @param rested whether it has not been on as it is supposed: no fuse has melted yet
     */
    Trial(Supposition supposition, boolean rested) {
        this.supposition = supposition;
        this.rested = rested;
    }

    /**
     * What was worked out in one arrangement.
     *
     * @param readings by check
     * @param sights by part and what is looked at
     * @param melted fuses that melt in this arrangement
     * @param instead fuses that may have melted before one of those, and were saved by it
     * @param mayMelt fuses that may
     * @param lost parts that are lost, at a first look
     * @param moved nets at which it is not as in the healthy machine
     * @param solvable whether it has a steady state
     */
    record Shows(
            Map<Check, Reading> readings,
            Map<String, Observation> sights,
            List<String> melted,
            List<String> instead,
            List<String> mayMelt,
            List<String> lost,
            Set<String> moved,
            boolean solvable) {
        static final Shows UNSOLVED =
                new Shows(Map.of(), Map.of(), List.of(), List.of(), List.of(), List.of(), Set.of(), false);

        static Shows of(Foretold foretold) {
            Map<Check, Reading> readings = new HashMap<>();
            foretold.readings().forEach(r -> readings.put(r.check(), r));
            Map<String, Observation> sights = new HashMap<>();
            foretold.observations()
                    .forEach(o -> sights.put(key(o.part(), o.sight().aspect()), o));
            return new Shows(
                    readings,
                    sights,
                    foretold.melted(),
                    foretold.instead(),
                    foretold.mayMelt(),
                    foretold.lost(),
                    foretold.moved(),
                    true);
        }

        /** As it was told. */
        Foretold foretold() {
            return new Foretold(
                    List.copyOf(readings.values()),
                    List.copyOf(sights.values()),
                    melted,
                    instead,
                    mayMelt,
                    lost,
                    /* untouched= */ false,
                    moved);
        }

        /** The same with more checks. */
        Shows and(Shows more) {
            Map<Check, Reading> all = new HashMap<>(readings);
            all.putAll(more.readings);
            Map<String, Observation> seen = new HashMap<>(sights);
            seen.putAll(more.sights);
            return new Shows(all, seen, melted, instead, mayMelt, lost, moved, solvable && more.solvable);
        }

        static String key(String part, Observation.Aspect aspect) {
            return part + "|" + aspect;
        }

        /** Whether nobody would tell it from another. */
        boolean alike(Shows other) {
            return solvable
                    && other.solvable
                    && melted.equals(other.melted)
                    && instead.equals(other.instead)
                    && mayMelt.equals(other.mayMelt)
                    && lost.equals(other.lost)
                    && Unlike.of(this, other).equals(Unlike.NOTHING);
        }
    }

    Supposition supposition() {
        return supposition;
    }

    /** What to find it by in a kept dictionary. */
    String title() {
        return rested ? supposition + " at rest" : supposition.toString();
    }

    Optional<Shows> in(String arrangement) {
        return Optional.ofNullable(byArrangement.get(arrangement));
    }

    /** All that was worked out, by arrangement. */
    Map<String, Shows> all() {
        return byArrangement;
    }

    void add(String arrangement, Shows shows) {
        byArrangement.merge(arrangement, shows, Shows::and);
        unlike.remove(arrangement);
        grown.incrementAndGet();
    }

    /** How often something was added. */
    int grown() {
        return grown.get();
    }

    /**
     * What of an arrangement is another thing than the healthy machine shows.
     *
     * @param checks readings further away than {@link #ALIKE}
     * @param sights keys of what looks different
     * @param unsolved whether it has no steady state, so that nothing can be said
     */
    record Unlike(Set<Check> checks, Set<String> sights, boolean unsolved) {
        private static final Unlike NOTHING = new Unlike(Set.of(), Set.of(), false);

        static Unlike of(Shows shows, Shows healthy) {
            Set<Check> checks = new HashSet<>();
            shows.readings().forEach((check, reading) -> {
                Reading good = healthy.readings().get(check);
                if (good == null || !alike(check, reading, good)) {
                    checks.add(check);
                }
            });
            Set<String> sights = new HashSet<>();
            shows.sights().forEach((key, seen) -> {
                Observation good = healthy.sights().get(key);
                if (good == null || !Foresight.looks(seen).equals(Foresight.looks(good))) {
                    sights.add(key);
                }
            });
            return checks.isEmpty() && sights.isEmpty() && shows.solvable()
                    ? NOTHING
                    : new Unlike(checks, sights, !shows.solvable());
        }

        private static boolean alike(Check check, Reading one, Reading other) {
            if (one.overRange() || other.overRange()) {
                return one.overRange() == other.overRange();
            }
            double away = Axis.at(check.function(), one.value()) - Axis.at(check.function(), other.value());
            return Math.abs(away) <= ALIKE;
        }
    }

    /** Compares with the healthy machine; what was never worked out is taken for alike. */
    Unlike unlike(String arrangement, Shows healthy) {
        Shows shows = byArrangement.get(arrangement);
        return shows == null ? Unlike.NOTHING : unlike.computeIfAbsent(arrangement, a -> Unlike.of(shows, healthy));
    }

    /** Fuses that are blown once the machine has been on. */
    Set<String> blown(String asFound) {
        return rested
                ? Set.of()
                : in(asFound).<Set<String>>map(s -> new HashSet<>(s.melted())).orElse(Set.of());
    }

    /** The supposition with fuses blown: what stands on the bench once it has been switched on. */
    Supposition after(Set<String> blown) {
        return blown.isEmpty() ? supposition : after(supposition.faults(), blown);
    }

    /** Faults, and fuses blown. */
    static Supposition after(List<Fault> left, Set<String> blown) {
        List<Fault> faults = new ArrayList<>();
        for (Fault fault : left) {
            if (!blown.contains(fault.part())) {
                faults.add(fault);
            }
        }
        blown.stream().sorted().forEach(f -> faults.add(new Fault(f, "", FailureMode.BLOWN, null)));
        return new Supposition(faults);
    }
}
