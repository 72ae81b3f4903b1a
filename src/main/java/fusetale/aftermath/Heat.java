package fusetale.aftermath;

import java.util.List;
import java.util.Map;

/**
 * Where heat comes about in a machine.
 *
 * @param watts of bodies by name [W]; none is 0
 * @param outerWatts what belongs to a part but none of its bodies, as iron loss, by designator [W]
 */
record Heat(Map<String, Double> watts, Map<String, Double> outerWatts) {
    /** Of a body by itself [W]. */
    double own(Body body) {
        return watts.getOrDefault(body.name(), 0.0);
    }

    /** Of a part, none of its bodies' [W]. */
    double outer(Body body) {
        return outerWatts.getOrDefault(body.part(), 0.0);
    }

    /**
     * Of all that shares the outer stages of a body: every body of its part, and what is none's [W].
     *
     * @param bodies all of the machine
     */
    double ofPart(Body body, List<Body> bodies) {
        return outer(body)
                + bodies.stream()
                        .filter(b -> b.part().equals(body.part()))
                        .mapToDouble(this::own)
                        .sum();
    }
}
