package fusetale.explore;

import fusetale.bench.Arrangement;
import fusetale.bench.Check;
import fusetale.bench.UnfitArrangement;
import fusetale.circuit.Circuit;
import fusetale.circuit.Net;
import fusetale.fault.Catalogue;
import fusetale.fault.FailureMode;
import fusetale.fault.Fault;
import fusetale.fault.Supposition;
import fusetale.fault.UnfitSupposition;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * A machine as it stands on the bench: arranged first, then as supposed, so that a pin is lifted before the part it belongs
 * to falls into pieces.
 *
 * @param arranged as arranged and as supposed
 * @param bare the arrangement's supply, all its deeds done
 */
record Machine(Circuit arranged, Arrangement bare) {
    static Machine of(Circuit healthy, Arrangement arrangement, Supposition supposition)
            throws UnfitArrangement, UnfitSupposition {
        Circuit arranged = Catalogue.apply(healthy, arrangement.appliedTo(healthy), supposition);
        return new Machine(arranged, arrangement.withoutDeeds());
    }

    /** The same machine with a fuse blown. */
    Machine withBlown(String fuse) {
        try {
            return new Machine(Catalogue.apply(arranged, blown(fuse)), bare);
        } catch (UnfitSupposition e) {
            throw new IllegalStateException("a fuse that stands in the circuit cannot blow: " + fuse, e);
        }
    }

    static Supposition blown(String fuse) {
        return new Supposition(List.of(new Fault(fuse, "", FailureMode.BLOWN, null)));
    }

    /** Checks of the healthy machine with their points as they are called here. */
    List<Check> checksHere(List<Check> checks, Circuit asArranged) {
        // the same few points come again and again
        Map<String, String> known = new HashMap<>();
        Function<String, String> here = point -> known.computeIfAbsent(point, p -> pointHere(p, asArranged));
        return checks.stream()
                .map(c -> new Check(here.apply(c.from()), here.apply(c.to()), c.function()))
                .toList();
    }

    /**
     * The name that a point of the healthy machine has here. A pin keeps its name while its part does: behind a cracked
     * joint it is the part's side that is meant; where the part is open inside, its leg stays where it is soldered. Where
     * the part fell into pieces, its net is.
     *
     * @param asArranged the healthy machine as arranged
     */
    String pointHere(String point, Circuit asArranged) {
        Optional<Net> here = arranged.find(point);
        if (here.isEmpty()) {
            return asArranged.find(point).map(Net::name).orElse(point);
        }
        return Catalogue.legBefore(arranged, here.get()).map(Net::name).orElse(point);
    }

    /**
     * Which checks of the healthy machine lie between the nets they did.
     *
     * @param here the same checks as they are called here
     * @param asArranged the healthy machine as arranged
     * @return by their places
     */
    BitSet staying(List<Check> checks, List<Check> here, Circuit asArranged) {
        Map<String, Boolean> known = new HashMap<>();
        BitSet staying = new BitSet(checks.size());
        for (int k = 0; k < checks.size(); k++) {
            Check before = checks.get(k);
            Check now = here.get(k);
            staying.set(
                    k,
                    known.computeIfAbsent(before.from(), p -> stays(p, now.from(), asArranged))
                            && known.computeIfAbsent(before.to(), p -> stays(p, now.to(), asArranged)));
        }
        return staying;
    }

    /** Whether a point of the healthy machine, called so here, still is the net it was. */
    private boolean stays(String point, String here, Circuit asArranged) {
        boolean net = point.equals(here) && point.indexOf('.') < 0;
        return net || arranged.find(here).equals(asArranged.find(point));
    }
}
