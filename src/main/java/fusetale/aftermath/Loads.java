package fusetale.aftermath;

import fusetale.bench.Seen;
import fusetale.circuit.Circuit;
import fusetale.fault.Supposition;
import java.util.List;
import java.util.Map;

/**
 * What one state of a machine does to its parts.
 *
 * @param watts heat of each body by its name [W]; none is 0
 * @param outerWatts heat of a part that belongs to no body of it, as iron loss, by designator [W]
 * @param wears what runs against time at these loads
 */
public record Loads(Map<String, Double> watts, Map<String, Double> outerWatts, List<Wear> wears) {
    /** Copies what can change. */
    public Loads {
        watts = Map.copyOf(watts);
        outerWatts = Map.copyOf(outerWatts);
        wears = List.copyOf(wears);
    }

    /**
     * Of a machine that was looked at.
     *
     * @param seen as it is
     * @param asBuilt with nothing supposed, in the same arrangement: what its contacts should be, what its battery should do
     * @param supposed what is wrong with it by now: that a capacitor stands the wrong way round is not seen in its voltage
     * @param start as it was supposed, before anything happened: what of it warms up
     */
    public static Loads of(Seen seen, Seen asBuilt, Supposition supposed, Circuit start) {
        Seen tabled = seen.tabled();
        Heat heat = Losses.of(tabled, asBuilt.circuit(), start);
        return new Loads(heat.watts(), heat.outerWatts(), Wears.of(tabled, asBuilt, supposed));
    }

    /** Where its heat comes about. */
    Heat heat() {
        return new Heat(watts, outerWatts);
    }
}
