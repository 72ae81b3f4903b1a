package fusetale.explore;

import fusetale.bench.Seen;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * One current, as built and as supposed, before any fuse has melted.
 *
 * @param name of a part, a leg, a winding, a contact: {@code F201}, {@code BR201.leg1}, {@code T101.sol}, {@code J1.3}; of
 *     transistors the collector's
 * @param asBuilt in a healthy machine [A r.m.s.]
 * @param asSupposed with the supposition [A r.m.s.]
 */
public record Flow(String name, double asBuilt, double asSupposed) {
    /** Every current there is on either side, by name. */
    static List<Flow> of(Seen built, Seen supposed) {
        TreeSet<String> names = new TreeSet<>(built.modelled().currents().keySet());
        names.addAll(supposed.modelled().currents().keySet());
        List<Flow> flows = new ArrayList<>();
        for (String name : names) {
            flows.add(new Flow(name, rms(built, name), rms(supposed, name)));
        }
        return flows;
    }

    private static double rms(Seen seen, String name) {
        return seen.modelled().element(name).isPresent() ? seen.amps(name).rms() : 0;
    }
}
