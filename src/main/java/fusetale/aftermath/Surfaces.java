package fusetale.aftermath;

import fusetale.bench.Seen;
import fusetale.bench.Warmth;
import fusetale.circuit.Circuit;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What a finger would feel: the outside of everything that warms up, once it has settled, by the heat paths of {@link Bodies}. Of
 * a part with several junctions or windings it is their common case or core.
 */
public final class Surfaces implements Warmth {
    private final Circuit healthy;

    /**
     * Of a machine.
     *
     * @param healthy as drawn and arranged, for what a contact's resistance should be
     */
    public Surfaces(Circuit healthy) {
        this.healthy = healthy;
    }

    @Override
    public Map<String, Double> celsius(Seen seen) {
        Heat heat = Losses.of(seen, healthy, seen.circuit());
        List<Body> bodies = Bodies.of(seen.circuit());
        Map<String, Double> surfaces = new TreeMap<>();
        for (Body body : bodies) {
            double own = heat.own(body);
            double all = heat.ofPart(body, bodies);
            // a pin is felt by itself, a leg or a winding is not
            String felt = body.nature() == Body.Nature.CONTACT ? body.name() : body.part();
            double celsius = AIR_CELSIUS + body.network().outerKelvin(own, all);
            surfaces.merge(felt, celsius, Math::max);
        }
        return surfaces;
    }
}
