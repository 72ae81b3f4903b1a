package fusetale.report.drawing;

import fusetale.circuit.Circuit;
import fusetale.circuit.Connector;
import fusetale.circuit.Controller;
import fusetale.circuit.LogicOutput;
import fusetale.circuit.Mains;
import fusetale.circuit.Net;
import fusetale.circuit.Part;
import fusetale.circuit.SectionArea;
import fusetale.circuit.Square;
import fusetale.circuit.Stand;
import fusetale.circuit.TestPoint;
import fusetale.circuit.Wire;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Draws one machine: sets symbols, letters them, lays wires, sets rings. Used once. */
final class Draughtsman {
    private static final double MARGIN = 20;

    /** Room around everything for wires and flags that go outside [px]. */
    private static final double ROOM = 120;

    /** From this many terminals on a net that leaves its section is a rail. */
    private static final int RAIL_TERMINALS = 7;

    /** Two sections further apart than this are joined by flags [px]. */
    private static final double FAR = 320;

    private static final int GROUND_TERMINALS = 5;
    private static final int LOOSE_PITCH = 8;

    private final Circuit circuit;
    private final Symbols symbols;
    private final List<DrawnPart> parts = new ArrayList<>();
    private final Map<String, List<DrawnPart>> contacts = new LinkedHashMap<>();
    private final List<Section> sections = new ArrayList<>();
    private int loose;

    Draughtsman(Circuit circuit, SymbolStyle style) {
        this.circuit = circuit;
        this.symbols = new Symbols(style);
    }

    DrawingPlan plan() {
        set();
        letter();
        Maze maze = maze();
        Router router = new Router(maze);
        Rings rings = new Rings(maze, router);
        Map<String, Spot> placed = placedRings();
        groups(maze, router, placed);
        placed.forEach((name, spot) -> {
            int node = maze.node(spot.x(), spot.y());
            if (maze.owner(node) >= 0) {
                rings.keep(node, maze.owner(node));
            }
        });
        router.route();
        List<DrawnPoint> points = new ArrayList<>();
        for (TestPoint point : circuit.points()) {
            ring(point, router, rings, placed, points);
        }
        router.flags();
        return assembled(nets(maze, router), points);
    }

    private Stand stand(String name) {
        Stand stand = circuit.drawing().places().get(name);
        return stand != null ? stand : looseStand();
    }

    /** A place to the left of everything for what a file has not placed. */
    private Stand looseStand() {
        int row = loose * LOOSE_PITCH;
        loose++;
        return new Stand(new Square(-3 * LOOSE_PITCH, row));
    }

    private void set() {
        if (circuit.drawing().places().containsKey(Mains.NAME)) {
            parts.add(symbols.mains(circuit.mains()).at(stand(Mains.NAME)));
        }
        for (Part part : circuit.parts()) {
            Stand stand = stand(part.name());
            parts.add(symbols.of(part, stand.spread()).at(stand));
        }
        for (Connector connector : circuit.connectors()) {
            List<DrawnPart> pins = new ArrayList<>();
            for (Connector.Contact contact : connector.pins()) {
                Symbol symbol = Symbols.contact(connector, contact);
                pins.add(symbol.at(stand(connector.name() + "." + contact.label())));
            }
            contacts.put(connector.name(), pins);
        }
        for (SectionArea area : circuit.drawing().sections()) {
            sections.add(section(area));
        }
    }

    private static Section section(SectionArea area) {
        double step = Placement.SQUARE;
        // frames run between the lines of the grid, so that no wire lies on them
        Box bounds = Box.between(
                        area.from().column() * step,
                        area.from().row() * step,
                        area.to().column() * step,
                        area.to().row() * step)
                .grown(step / 2);
        String heading = area.heading().substring(0, 1).toUpperCase(Locale.ROOT)
                + area.heading().substring(1);
        Label title = new Label(heading, bounds.x() + 10, bounds.y() + 21, Label.Anchor.START, Label.Role.HEADING);
        return new Section(heading, bounds, title, List.of());
    }

    private void letter() {
        Captions captions = new Captions();
        sections.forEach(s -> captions.keepOff(s.title().bounds()));
        sections.forEach(s -> s.frame().forEach(captions::keepOff));
        all().forEach(captions::keepOff);
        placedRings().values().forEach(spot -> captions.keepOff(DrawnPoint.ring(spot)));
        contacts.values().forEach(pins -> pins.replaceAll(captions::captioned));
        parts.replaceAll(captions::captioned);
    }

    private List<DrawnPart> all() {
        List<DrawnPart> all = new ArrayList<>(parts);
        contacts.values().forEach(all::addAll);
        return all;
    }

    private Maze maze() {
        Box sheet = all().get(0).extent();
        for (DrawnPart part : all()) {
            sheet = sheet.with(part.extent());
        }
        for (Section section : sections) {
            sheet = sheet.with(section.bounds());
        }
        Maze maze = new Maze(sheet.grown(ROOM));
        sections.forEach(s -> maze.block(s.title().bounds(), false));
        sections.forEach(s -> s.frame().forEach(maze::shade));
        for (DrawnPart part : all()) {
            part.solids().forEach(b -> maze.block(b, true));
            part.labels().forEach(l -> maze.block(l.bounds(), false));
        }
        return maze;
    }

    /** Rings that the file places. */
    private Map<String, Spot> placedRings() {
        Map<String, Spot> placed = new LinkedHashMap<>();
        for (TestPoint point : circuit.points()) {
            Stand stand = circuit.drawing().places().get(point.name());
            if (stand != null) {
                double step = Placement.SQUARE;
                placed.put(
                        point.name(),
                        new Spot(stand.square().column() * step, stand.square().row() * step));
            }
        }
        return placed;
    }

    private void groups(Maze maze, Router router, Map<String, Spot> rings) {
        Map<Net, List<Terminal>> terminals = new LinkedHashMap<>();
        for (DrawnPart part : all()) {
            int section = sectionOf(part.bounds().middleX(), part.bounds().middleY());
            for (Port port : part.ports().values()) {
                terminals
                        .computeIfAbsent(new Net(port.net()), n -> new ArrayList<>())
                        .add(new Terminal(maze.node(port.x(), port.y()), port.side(), section));
            }
        }
        for (TestPoint point : circuit.points()) {
            Spot spot = rings.get(point.name());
            List<Terminal> of = terminals.get(point.at());
            if (spot != null && of != null) {
                of.add(new Terminal(maze.node(spot.x(), spot.y()), null, sectionOf(spot.x(), spot.y())));
            }
        }
        Set<Net> grounds = grounds(terminals);
        terminals.forEach((net, of) -> {
            Wiring.Kind kind = grounds.contains(net) ? Wiring.Kind.GROUND : kind(of, maze);
            for (List<Terminal> group : grouped(kind, of)) {
                Wiring wiring = router.add(net, kind, group);
                if (!net.equals(circuit.ground())) {
                    wiring.withName();
                }
            }
        });
    }

    private int sectionOf(double x, double y) {
        for (int i = 0; i < sections.size(); i++) {
            if (sections.get(i).bounds().holds(x, y)) {
                return i;
            }
        }
        return -1;
    }

    /** The machine's ground, and what many parts take for theirs: joined to it by connectors and wires alone. */
    private Set<Net> grounds(Map<Net, List<Terminal>> terminals) {
        Set<Net> grounds = new LinkedHashSet<>();
        grounds.add(circuit.ground());
        Set<Net> near = new LinkedHashSet<>();
        for (Connector connector : circuit.connectors()) {
            for (Connector.Contact contact : connector.pins()) {
                near.addAll(across(contact.board(), contact.harness()));
            }
        }
        for (Part part : circuit.parts()) {
            if (part instanceof Wire wire) {
                near.addAll(across(wire.one(), wire.two()));
            }
            if (part instanceof Controller controller) {
                near.add(controller.ground());
            }
            if (part instanceof LogicOutput output) {
                near.add(output.ground());
            }
        }
        for (Net net : near) {
            if (terminals.getOrDefault(net, List.of()).size() >= GROUND_TERMINALS) {
                grounds.add(net);
            }
        }
        return grounds;
    }

    private Set<Net> across(Net one, Net two) {
        return one.equals(circuit.ground()) ? Set.of(two) : two.equals(circuit.ground()) ? Set.of(one) : Set.of();
    }

    private static Wiring.Kind kind(List<Terminal> terminals, Maze maze) {
        Map<Integer, List<Terminal>> bySection = bySection(terminals);
        if (terminals.size() == 1 || bySection.size() > 2) {
            return Wiring.Kind.RAIL;
        }
        if (bySection.size() < 2) {
            return Wiring.Kind.WIRE;
        }
        List<List<Terminal>> both = List.copyOf(bySection.values());
        double least = Double.POSITIVE_INFINITY;
        for (Terminal one : both.get(0)) {
            for (Terminal two : both.get(1)) {
                double apart = Math.abs(maze.x(one.node()) - maze.x(two.node()))
                        + Math.abs(maze.y(one.node()) - maze.y(two.node()));
                least = Math.min(least, apart);
            }
        }
        return terminals.size() >= RAIL_TERMINALS || least > FAR ? Wiring.Kind.RAIL : Wiring.Kind.WIRE;
    }

    private static Map<Integer, List<Terminal>> bySection(List<Terminal> terminals) {
        Map<Integer, List<Terminal>> bySection = new LinkedHashMap<>();
        terminals.forEach(t ->
                bySection.computeIfAbsent(t.section(), s -> new ArrayList<>()).add(t));
        return bySection;
    }

    private static List<List<Terminal>> grouped(Wiring.Kind kind, List<Terminal> terminals) {
        return switch (kind) {
            case WIRE -> List.of(terminals);
            case RAIL -> List.copyOf(bySection(terminals).values());
            case GROUND -> terminals.stream().map(List::of).toList();
        };
    }

    private void ring(TestPoint point, Router router, Rings rings, Map<String, Spot> placed, List<DrawnPoint> points) {
        Spot red = placed.get(point.name());
        if (red == null) {
            red = rings.place(point.at().name());
        }
        if (red == null) {
            return;
        }
        boolean grounded = router.wirings().stream()
                .anyMatch(w -> w.net().equals(point.against()) && w.kind() == Wiring.Kind.GROUND);
        Spot black = grounded ? null : rings.place(point.against().name());
        points.add(
                new DrawnPoint(point.name(), point.name().replaceFirst("^\\D+(?=\\d)", ""), point.label(), red, black));
    }

    private static List<DrawnNet> nets(Maze maze, Router router) {
        Map<String, DrawnNet> nets = new LinkedHashMap<>();
        for (Wiring w : router.wirings()) {
            List<Segment> wires = maze.wires(w.id(), router.tree(w));
            List<Spot> joints = new ArrayList<>();
            for (int node : router.tree(w)) {
                double x = maze.x(node);
                double y = maze.y(node);
                long leads = w.terminals().stream()
                                .filter(t -> t.node() == node && t.side() != null)
                                .count()
                        + w.flags().stream()
                                .filter(f -> f.x() == x && f.y() == y)
                                .count();
                if (maze.degree(node, w.id()) + leads > 2) {
                    joints.add(new Spot(x, y));
                }
            }
            DrawnNet own = new DrawnNet(w.net().name(), wires, joints, w.flags());
            nets.merge(w.net().name(), own, Draughtsman::joined);
        }
        return List.copyOf(nets.values());
    }

    private static DrawnNet joined(DrawnNet one, DrawnNet two) {
        List<Segment> wires = new ArrayList<>(one.wires());
        wires.addAll(two.wires());
        List<Spot> joints = new ArrayList<>(one.joints());
        joints.addAll(two.joints());
        List<Flag> flags = new ArrayList<>(one.flags());
        flags.addAll(two.flags());
        return new DrawnNet(one.net(), wires, joints, flags);
    }

    private DrawingPlan assembled(List<DrawnNet> nets, List<DrawnPoint> points) {
        Box sheet = all().get(0).extent();
        for (DrawnPart part : all()) {
            sheet = sheet.with(part.extent());
        }
        for (Section section : sections) {
            sheet = sheet.with(section.bounds()).with(section.title().bounds());
        }
        for (DrawnNet net : nets) {
            for (Segment wire : net.wires()) {
                sheet = sheet.with(wire.bounds());
            }
            for (Flag flag : net.flags()) {
                sheet = sheet.with(flag.bounds());
            }
        }
        for (DrawnPoint point : points) {
            sheet = sheet.with(DrawnPoint.ring(point.red()));
        }
        double dx = 2 * Math.round((MARGIN - sheet.x()) / 2);
        double dy = 2 * Math.round((MARGIN - sheet.y()) / 2);
        return new DrawingPlan(
                2 * Math.ceil((sheet.right() + dx + MARGIN) / 2),
                2 * Math.ceil((sheet.bottom() + dy + MARGIN) / 2),
                sections.stream().map(s -> withParts(s).moved(dx, dy)).toList(),
                parts.stream().map(p -> p.moved(dx, dy)).toList(),
                nets.stream().map(n -> n.moved(dx, dy)).toList(),
                points.stream().map(p -> p.moved(dx, dy)).toList(),
                contacts.entrySet().stream()
                        .map(e -> new DrawnConnector(
                                e.getKey(),
                                e.getValue().stream().map(p -> p.moved(dx, dy)).toList()))
                        .toList());
    }

    private Section withParts(Section section) {
        List<String> names = all().stream()
                .filter(p ->
                        section.bounds().holds(p.bounds().middleX(), p.bounds().middleY()))
                .map(DrawnPart::name)
                .toList();
        return new Section(section.heading(), section.bounds(), section.title(), names);
    }
}
