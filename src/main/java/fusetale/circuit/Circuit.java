package fusetale.circuit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * One machine's supply and drivers, as drawn or as rewritten by a supposition or an arrangement. Immutable.
 *
 * @param name the machine's name
 * @param story what is told of it
 * @param mains its supply
 * @param ground net all test points fall back to
 * @param parts parts in the order of the file
 * @param points test points in the order of the file
 * @param connectors connectors in the order of the file
 * @param settings named arrangements in the order of the file; the first is the default
 * @param drawing where everything stands on the drawing
 * @param stages stages of a staged start-up in order; empty where the file has none
 */
public record Circuit(
        String name,
        String story,
        Mains mains,
        Net ground,
        List<Part> parts,
        List<TestPoint> points,
        List<Connector> connectors,
        List<BenchSetting> settings,
        Drawing drawing,
        List<StartStage> stages) {
    /** Copies what can change. */
    public Circuit {
        parts = List.copyOf(parts);
        points = List.copyOf(points);
        connectors = List.copyOf(connectors);
        settings = List.copyOf(settings);
        stages = List.copyOf(stages);
    }

    /** The part of a name. */
    public Optional<Part> part(String partName) {
        return parts.stream().filter(p -> p.name().equals(partName)).findFirst();
    }

    /** The test point of a name. */
    public Optional<TestPoint> point(String pointName) {
        return points.stream().filter(p -> p.name().equals(pointName)).findFirst();
    }

    /** The connector of a name. */
    public Optional<Connector> connector(String connectorName) {
        return connectors.stream().filter(c -> c.name().equals(connectorName)).findFirst();
    }

    /** All nets: mains, ground, parts in order, connectors. */
    public Set<Net> nets() {
        Set<Net> nets = new LinkedHashSet<>();
        nets.add(ground);
        nets.add(Mains.LINE);
        nets.add(Mains.NEUTRAL);
        parts.forEach(p -> p.pins().forEach(pin -> nets.add(pin.net())));
        connectors.forEach(c -> c.pins().forEach(pin -> {
            nets.add(pin.board());
            nets.add(pin.harness());
        }));
        return nets;
    }

    private boolean has(Net net) {
        if (net.equals(ground) || net.equals(Mains.LINE) || net.equals(Mains.NEUTRAL)) {
            return true;
        }
        for (Part part : parts) {
            for (Pin pin : part.pins()) {
                if (pin.net().equals(net)) {
                    return true;
                }
            }
        }
        return connectors.stream()
                .flatMap(c -> c.pins().stream())
                .anyMatch(pin -> net.equals(pin.board()) || net.equals(pin.harness()));
    }

    /**
     * The net that a point's name means: a test point, a net, {@code PART.pin}, or {@code CONNECTOR.pin} (its harness
     * side).
     */
    public Optional<Net> find(String point) {
        Optional<Net> testPoint = point(point).map(TestPoint::at);
        if (testPoint.isPresent()) {
            return testPoint;
        }
        Net net = new Net(point);
        if (has(net)) {
            return Optional.of(net);
        }
        int dot = point.indexOf('.');
        if (dot < 0) {
            return Optional.empty();
        }
        String owner = point.substring(0, dot);
        String pin = point.substring(dot + 1);
        Optional<Net> ofPart = part(owner)
                .flatMap(
                        p -> p.pins().stream().filter(q -> q.name().equals(pin)).findFirst())
                .map(Pin::net);
        if (ofPart.isPresent()) {
            return ofPart;
        }
        return connector(owner)
                .flatMap(c ->
                        c.pins().stream().filter(q -> q.label().equals(pin)).findFirst())
                .map(Connector.Contact::harness);
    }

    /** The same circuit with other parts. */
    public Circuit withParts(List<Part> newParts) {
        return new Circuit(name, story, mains, ground, newParts, points, connectors, settings, drawing, stages);
    }

    /** The same circuit on other mains. */
    public Circuit withMains(Mains newMains) {
        return new Circuit(name, story, newMains, ground, parts, points, connectors, settings, drawing, stages);
    }

    /** The same circuit with other connectors. */
    public Circuit withConnectors(List<Connector> newConnectors) {
        return new Circuit(name, story, mains, ground, parts, points, newConnectors, settings, drawing, stages);
    }

    /**
     * The same circuit with the part of this name replaced.
     *
     * @throws IllegalArgumentException where there is no such part
     */
    public Circuit with(Part replacement) {
        Map<String, Part> byName = new LinkedHashMap<>();
        parts.forEach(p -> byName.put(p.name(), p));
        if (byName.replace(replacement.name(), replacement) == null) {
            throw new IllegalArgumentException("no part " + replacement.name());
        }
        return withParts(new ArrayList<>(byName.values()));
    }

    /** The same circuit with one more part. */
    public Circuit plus(Part extra) {
        List<Part> all = new ArrayList<>(parts);
        all.add(extra);
        return withParts(all);
    }
}
