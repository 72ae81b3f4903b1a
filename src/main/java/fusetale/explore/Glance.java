package fusetale.explore;

import fusetale.fault.Supposition;
import java.util.List;

/**
 * What the meter would say, at a glance.
 *
 * @param supposition what is supposed
 * @param readings as built beside as supposed, in the order of the checks
 */
public record Glance(Supposition supposition, List<Compared> readings) {
    /** Copies the list. */
    public Glance {
        readings = List.copyOf(readings);
    }
}
