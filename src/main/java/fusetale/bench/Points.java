package fusetale.bench;

import fusetale.circuit.Circuit;
import fusetale.circuit.Net;
import fusetale.circuit.TestPoint;
import java.util.ArrayList;
import java.util.List;

/** The points of a circuit that have names of their own. */
final class Points {
    private Points() {}

    /** Test points, then nets. */
    static List<String> known(Circuit circuit) {
        List<String> known = new ArrayList<>();
        circuit.points().stream().map(TestPoint::name).forEach(known::add);
        circuit.nets().stream().map(Net::name).forEach(known::add);
        return known;
    }
}
