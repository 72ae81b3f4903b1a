package fusetale.report.drawing;

import fusetale.circuit.Battery;
import fusetale.circuit.Bridge;
import fusetale.circuit.Circuit;
import fusetale.circuit.Controller;
import fusetale.circuit.LogicOutput;
import fusetale.circuit.Mains;
import fusetale.circuit.Part;
import fusetale.circuit.Relay;
import fusetale.circuit.Transformer;
import fusetale.explore.Flow;
import fusetale.explore.Outcome;
import fusetale.fault.FailureMode;
import fusetale.fault.Fault;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The loop that the current of a short or a leak flows round, found from the currents that were worked out: of all ways from
 * one end of the fault to the other the one through a winding, a battery or the mains and the parts whose current grew most.
 * What carries no more than on a healthy machine is no part of it.
 */
final class FaultPath {
    /** Of the widest ways the one with fewest parts is taken among those this wide. */
    private static final double ALIKE = 0.7;

    /** A way this much narrower than the largest current that grew is not the fault's. */
    private static final double LEAST_SHARE = 0.2;

    /** Less has not grown [A]. */
    private static final double LEAST_AMPS = 1e-3;

    private static final String PRIMARY = "primary";

    private static final List<String> MAIN_PINS =
            List.of("collector", "emitter", "drain", "source", "anode", "cathode", "in", "out");

    private final DrawingPlan plan;
    private final Circuit circuit;
    private final List<Fault> faults;
    private final Map<String, Double> grown = new HashMap<>();
    private final List<Link> links = new ArrayList<>();

    /** Something a current flows through, from port to port. */
    private record Link(String current, boolean source, Port one, Port two, Leg leg) {
        boolean at(String net) {
            return one.net().equals(net) || two.net().equals(net);
        }

        Port on(String net) {
            return one.net().equals(net) ? one : two;
        }

        Port other(String net) {
            return one.net().equals(net) ? two : one;
        }
    }

    FaultPath(DrawingPlan plan, Outcome outcome) {
        this.plan = plan;
        this.circuit = outcome.question().healthy();
        this.faults = outcome.question().supposition().faults();
        for (Flow flow : outcome.flows()) {
            grown.put(flow.name(), flow.asSupposed() - flow.asBuilt());
        }
        plan.symbols().forEach(this::links);
    }

    /** The loop as strokes of the highlighter; empty where there is none. */
    List<Stroke> strokes() {
        List<Stroke> strokes = new ArrayList<>();
        for (Fault fault : faults) {
            if (fault.mode() == FailureMode.SHORT || fault.mode() == FailureMode.LEAKY) {
                at(fault).ifPresent(link -> strokes.addAll(around(link)));
            }
        }
        return strokes;
    }

    /** Names of the parts, legs, windings and pins on the way of a fault's current, in order from its first end. */
    List<String> names(Fault fault) {
        return at(fault)
                .map(link -> way(link).stream().map(Link::current).toList())
                .orElse(List.of());
    }

    private void links(DrawnPart symbol) {
        Part part = circuit.part(symbol.name()).orElse(null);
        if (part instanceof Controller || part instanceof LogicOutput) {
            return;
        }
        if (part instanceof Transformer transformer) {
            transformer.windings().forEach(w -> winding(symbol, w));
        } else if (part instanceof Bridge) {
            link(symbol, ".leg1", "ac1", "plus", "leg1");
            link(symbol, ".leg2", "ac2", "plus", "leg2");
            link(symbol, ".leg3", "minus", "ac1", "leg3");
            link(symbol, ".leg4", "minus", "ac2", "leg4");
        } else if (part instanceof Relay) {
            link(symbol, "", "coil1", "coil2", "coil");
            link(symbol, ".contact", "contact1", "contact2", "contact");
        } else if (symbol.ports().size() > 2) {
            List<String> pins =
                    symbol.ports().keySet().stream().filter(MAIN_PINS::contains).toList();
            String place = pins.get(0).charAt(0) + "" + pins.get(1).charAt(0);
            link(symbol, "", pins.get(0), pins.get(1), place);
        } else {
            List<String> pins = List.copyOf(symbol.ports().keySet());
            link(symbol, "", pins.get(0), pins.get(1), "");
        }
    }

    private void winding(DrawnPart symbol, Transformer.Winding winding) {
        int sections = winding.nets().size() - 1;
        for (int k = 1; k <= sections; k++) {
            Port one = symbol.ports().get(winding.name() + "." + k);
            Port two = symbol.ports().get(winding.name() + "." + (k + 1));
            Leg whole = symbol.leg(winding.name());
            String current = symbol.name() + "." + winding.name() + (sections > 1 ? "." + k : "");
            if (one != null && two != null) {
                boolean source = !current.startsWith(symbol.name() + "." + PRIMARY);
                links.add(new Link(current, source, one, two, new Leg(whole.x1(), one.y(), whole.x2(), two.y(), 0)));
            }
        }
    }

    private void link(DrawnPart symbol, String of, String one, String two, String place) {
        Port from = symbol.ports().get(one);
        Port to = symbol.ports().get(two);
        if (from != null && to != null) {
            Leg leg = symbol.legs().containsKey(place)
                    ? symbol.leg(place)
                    : new Leg(from.x(), from.y(), to.x(), to.y(), 0);
            boolean source = symbol.name().equals(Mains.NAME)
                    || circuit.part(symbol.name()).orElse(null) instanceof Battery;
            links.add(new Link(symbol.name() + of, source, from, to, leg));
        }
    }

    /** What a fault lies across. */
    private Optional<Link> at(Fault fault) {
        String name = fault.part();
        DrawnPart symbol = plan.symbol(name).orElse(null);
        if (symbol == null) {
            return Optional.empty();
        }
        String place = fault.place();
        if (place.length() == 2 && symbol.legs().containsKey(place)) {
            Port one = pin(symbol, place.charAt(0));
            Port two = pin(symbol, place.charAt(1));
            return one == null || two == null
                    ? Optional.empty()
                    : Optional.of(new Link("", false, one, two, symbol.leg(place)));
        }
        String current = place.isEmpty() ? name : name + "." + place;
        return links.stream().filter(l -> l.current().equals(current)).findFirst();
    }

    /** The port of a pin by its letter; a thyristor's cathode is k. */
    private static @Nullable Port pin(DrawnPart symbol, char letter) {
        return symbol.ports().entrySet().stream()
                .filter(e -> e.getKey().charAt(0) == letter
                        || (letter == 'k' && e.getKey().equals("cathode")))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElse(null);
    }

    private double grown(Link link) {
        return grown.getOrDefault(link.current(), 0.0);
    }

    /** The way from the second end of a fault back to its first; empty where nothing grew enough. */
    private List<Link> way(Link fault) {
        if (fault.one().net().equals(fault.two().net())) {
            return List.of();
        }
        List<Link> others = links.stream()
                .filter(l -> l.source() || !l.current().equals(fault.current()))
                .filter(l -> grown(l) > LEAST_AMPS)
                .sorted(Comparator.comparingDouble(this::grown).reversed().thenComparing(Link::current))
                .toList();
        double most = others.isEmpty() ? 0 : grown(others.get(0));
        for (int count = 1; count <= others.size(); count++) {
            double width = grown(others.get(count - 1));
            if (width < LEAST_SHARE * most) {
                return List.of();
            }
            if (!shortest(fault, others.subList(0, count)).isEmpty()) {
                return shortest(
                        fault,
                        others.stream().filter(l -> grown(l) >= ALIKE * width).toList());
            }
        }
        return List.of();
    }

    /** Where a way has come to: a net, and whether a source lies behind. */
    private record Reached(String net, boolean fed) {}

    /** The way with fewest parts that leads through a source. */
    private static List<Link> shortest(Link fault, List<Link> links) {
        Reached start = new Reached(fault.two().net(), false);
        Reached goal = new Reached(fault.one().net(), true);
        Map<Reached, Reached> before = new HashMap<>();
        Map<Reached, Link> by = new HashMap<>();
        ArrayDeque<Reached> queue = new ArrayDeque<>(List.of(start));
        while (!queue.isEmpty() && !by.containsKey(goal)) {
            Reached at = queue.poll();
            for (Link link : links) {
                if (link.at(at.net()) && !link.equals(by.get(at))) {
                    Reached next = new Reached(link.other(at.net()).net(), at.fed() || link.source());
                    if (!next.equals(start) && !by.containsKey(next)) {
                        by.put(next, link);
                        before.put(next, at);
                        queue.add(next);
                    }
                }
            }
        }
        List<Link> way = new ArrayList<>();
        Reached at = goal;
        while (by.containsKey(at)) {
            way.add(0, by.get(at));
            at = before.get(at);
        }
        return way;
    }

    private List<Stroke> around(Link fault) {
        List<Link> way = way(fault);
        List<Stroke> strokes = new ArrayList<>();
        if (way.isEmpty()) {
            return strokes;
        }
        String net = fault.two().net();
        Port from = fault.two();
        for (Link link : way) {
            strokes.add(through(link));
            strokes.addAll(along(net, from, link.on(net)));
            from = link.other(net);
            net = from.net();
        }
        strokes.add(through(fault));
        strokes.addAll(along(net, from, fault.one()));
        return strokes;
    }

    /** Through a symbol: from the end of one lead along its leg to the end of the other. */
    private static Stroke through(Link link) {
        Leg leg = link.leg();
        boolean ahead = Math.hypot(
                        leg.x1() - link.one().x(), leg.y1() - link.one().y())
                <= Math.hypot(leg.x2() - link.one().x(), leg.y2() - link.one().y());
        List<Outline.Step> steps = new ArrayList<>();
        steps.add(new Outline.Move(link.one().x(), link.one().y()));
        steps.add(new Outline.Line(ahead ? leg.x1() : leg.x2(), ahead ? leg.y1() : leg.y2()));
        steps.add(new Outline.Line(ahead ? leg.x2() : leg.x1(), ahead ? leg.y2() : leg.y1()));
        steps.add(new Outline.Line(link.two().x(), link.two().y()));
        return new Stroke(new Outline(steps), Weight.SWIPE, Tone.MARKER_FILL);
    }

    private List<Stroke> along(String net, Port from, Port to) {
        return plan.net(net)
                .map(n -> new WireWalk(n).between(new Spot(from.x(), from.y()), new Spot(to.x(), to.y())))
                .orElse(List.of());
    }
}
