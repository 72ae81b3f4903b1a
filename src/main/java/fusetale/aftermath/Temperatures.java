package fusetale.aftermath;

import fusetale.bench.Seen;
import fusetale.circuit.Circuit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * How warm everything gets in the end if its loads stay what they are, against what it stands. Middle values of thermal figures, air
 * of {@link Stress#AIR_CELSIUS}; copper at its stated resistance.
 */
public final class Temperatures {
    private Temperatures() {}

    /**
     * A row for everything that warms up and has a limit, in the order of the circuit.
     *
     * @param healthy as drawn, for what a contact's resistance should be
     */
    public static List<Stress> of(Seen seen, Circuit healthy) {
        Heat heat = Losses.of(seen, healthy, seen.circuit());
        List<Body> bodies = Bodies.of(seen.circuit());
        List<Stress> rows = new ArrayList<>();
        for (Body body : bodies) {
            double own = heat.own(body);
            double all = heat.ofPart(body, bodies);
            body.limits().stream()
                    .min(Comparator.comparingDouble(Limit::lowCelsius))
                    .ifPresent(limit -> rows.add(new Stress(
                            body.part(),
                            body.place(),
                            Strain.TEMPERATURE,
                            Stress.AIR_CELSIUS + body.network().settledKelvin(own, all),
                            limit.lowCelsius())));
        }
        return rows;
    }
}
