package fusetale.match;

import fusetale.bench.Check;
import fusetale.circuit.Circuit;
import fusetale.circuit.Connector;
import fusetale.circuit.Net;
import fusetale.circuit.Part;
import fusetale.circuit.Pin;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What stands beside a part: the parts and connectors that share a trace with it. What looks like a part that failed and is no
 * supposition of the list is likeliest there, in a way that nobody thought of.
 */
final class Beside {
    private final Asks asks;
    private final Map<String, Set<Net>> nets = new HashMap<>();
    private final Map<Net, Integer> meeting = new HashMap<>();

    Beside(Circuit circuit, Asks asks) {
        this.asks = asks;
        for (Part part : circuit.parts()) {
            part.pins().stream().map(Pin::net).forEach(n -> joins(part.name(), n, circuit));
        }
        for (Connector connector : circuit.connectors()) {
            for (Connector.Contact contact : connector.pins()) {
                joins(connector.name(), contact.board(), circuit);
                joins(connector.name(), contact.harness(), circuit);
            }
        }
    }

    /** Ground joins everything and says nothing. */
    private void joins(String name, Net net, Circuit circuit) {
        if (!net.equals(circuit.ground())
                && nets.computeIfAbsent(name, n -> new HashSet<>()).add(net)) {
            meeting.merge(net, 1, Integer::sum);
        }
    }

    /**
     * Checks across what stands beside some parts.
     *
     * @param taken what was measured already: each reading across one of them leaves less for another
     * @return by check, 1 where the trace joins nothing else, less where more meet there
     */
    Map<Check, Double> of(Collection<String> parts, Set<Check> taken) {
        Map<Check, Double> all = new HashMap<>();
        nets.forEach((other, there) -> {
            double close = 0;
            for (String part : parts) {
                for (Net net : nets.getOrDefault(part, Set.of())) {
                    if (there.contains(net)) {
                        close = Math.max(close, Math.sqrt(2.0 / meeting.getOrDefault(net, 1)));
                    }
                }
            }
            if (close > 0 && !parts.contains(other)) {
                List<Check> across = asks.across(other);
                double left =
                        close / (1 + across.stream().filter(taken::contains).count());
                across.forEach(c -> all.merge(c, left, Math::max));
            }
        });
        return all;
    }
}
