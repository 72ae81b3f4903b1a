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

/**
 * One machine as supposed, and what of it has been worked out so far. Grows; readings once worked out stay.
 */
final class Trial {
    private final Supposition supposition;
    /** Fuses that had melted before, and nobody replaced. */
    private final Set<String> blownBefore;

    private final Map<String, Shows> byArrangement = new ConcurrentHashMap<>();

    Trial(Supposition supposition, Set<String> blownBefore) {
        this.supposition = supposition;
        this.blownBefore = Set.copyOf(blownBefore);
    }

    /**
     * What was worked out in one arrangement.
     *
     * @param readings by check
     * @param sights by part and what is looked at
     * @param melted fuses that melt in this arrangement
     * @param mayMelt fuses that may
     * @param lost parts that are lost, at a first look
     * @param solvable whether it has a steady state
     * @param untouched whether all is as in the healthy machine
     */
    record Shows(
            Map<Check, Reading> readings,
            Map<String, Observation> sights,
            List<String> melted,
            List<String> mayMelt,
            List<String> lost,
            boolean solvable,
            boolean untouched) {
        static final Shows UNSOLVED = new Shows(Map.of(), Map.of(), List.of(), List.of(), List.of(), false, false);

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
                    foretold.mayMelt(),
                    foretold.lost(),
                    true,
                    foretold.untouched());
        }

        /** The same with more checks. */
        Shows and(Shows more) {
            Map<Check, Reading> all = new HashMap<>(readings);
            all.putAll(more.readings);
            Map<String, Observation> seen = new HashMap<>(sights);
            seen.putAll(more.sights);
            return new Shows(all, seen, melted, mayMelt, lost, solvable && more.solvable, untouched && more.untouched);
        }

        static String key(String part, Observation.Aspect aspect) {
            return part + "|" + aspect;
        }
    }

    Supposition supposition() {
        return supposition;
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
    }

    /** Fuses that are blown once the machine has been on. */
    Set<String> blown(String asFound) {
        Set<String> blown = new HashSet<>(blownBefore);
        in(asFound).ifPresent(s -> blown.addAll(s.melted()));
        return blown;
    }

    /** The supposition with fuses blown: what stands on the bench once it has been switched on. */
    Supposition after(Set<String> blown) {
        if (blown.isEmpty()) {
            return supposition;
        }
        List<Fault> faults = new ArrayList<>();
        for (Fault fault : supposition.faults()) {
            if (!blown.contains(fault.part())) {
                faults.add(fault);
            }
        }
        blown.stream().sorted().forEach(f -> faults.add(new Fault(f, "", FailureMode.BLOWN, null)));
        return new Supposition(faults);
    }
}
