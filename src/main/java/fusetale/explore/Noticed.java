package fusetale.explore;

import fusetale.bench.Observation;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One thing to notice without a meter, as built beside as supposed.
 *
 * @param part designator, or {@code J3.4}
 * @param what what is looked at, listened to or touched
 * @param asBuilt on the healthy machine, in words; empty where there is nothing to say
 * @param asSupposed as supposed; empty where there is nothing to say
 * @param notable whether it strikes anybody who looks at the machine as supposed alone
 */
public record Noticed(String part, Observation.Aspect what, String asBuilt, String asSupposed, boolean notable) {
    /** Whether the two machines differ in it. */
    public boolean differs() {
        return !asBuilt.equals(asSupposed);
    }

    /** What a thing to notice is known by. */
    private record Thing(String part, Observation.Aspect what) {}

    /** Lays the observations of two machines beside each other, kind by kind, in their order. */
    static List<Noticed> beside(List<Observation> built, List<Observation> supposed) {
        Map<Thing, Observation> before = byThing(built);
        Map<Thing, Observation> after = byThing(supposed);
        List<Thing> things = new ArrayList<>(before.keySet());
        after.keySet().stream().filter(t -> !before.containsKey(t)).forEach(things::add);
        List<Noticed> all = new ArrayList<>();
        for (Observation.Aspect what : Observation.Aspect.values()) {
            for (Thing thing : things) {
                if (thing.what() == what) {
                    all.add(of(thing, before, after));
                }
            }
        }
        return all;
    }

    private static Noticed of(Thing thing, Map<Thing, Observation> before, Map<Thing, Observation> after) {
        Observation one = before.get(thing);
        Observation two = after.get(thing);
        return new Noticed(
                thing.part(),
                thing.what(),
                one == null ? "" : one.words(),
                two == null ? "" : two.words(),
                two != null && two.sight().notable());
    }

    private static Map<Thing, Observation> byThing(List<Observation> all) {
        Map<Thing, Observation> map = new LinkedHashMap<>();
        all.forEach(o -> map.put(new Thing(o.part(), o.sight().aspect()), o));
        return map;
    }
}
