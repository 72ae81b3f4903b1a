package fusetale.report.drawing;

import fusetale.circuit.Net;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Lays wires, flags and ground signs. Belongs to one draughtsman. */
final class Router {
    /** Terminals of a rail further apart than this are joined by flags [cost, about px]. */
    private static final int RAIL_LIMIT = 330;

    private static final int WIRE_LIMIT = 12000;
    private static final int FLAG_LIMIT = 600;
    private static final int JOINT_COST = 24;
    private static final int ROUNDS = 2;

    /** How far a wire may stray from the box around its terminals [px]. */
    private static final double STRAY = 160;

    private final Maze maze;
    private final Search search;
    private final List<Wiring> wirings = new ArrayList<>();
    private final Box everywhere;

    Router(Maze maze) {
        this.maze = maze;
        this.search = new Search(maze);
        this.everywhere = new Box(maze.x(0), maze.y(0), 0, 0)
                .with(new Box(maze.x(maze.nodes() - 1), maze.y(maze.nodes() - 1), 0, 0));
    }

    /** One more group of terminals; keeps their nodes for it. */
    Wiring add(Net net, Wiring.Kind kind, List<Terminal> terminals) {
        Wiring wiring = new Wiring(wirings.size(), net, kind, terminals);
        wirings.add(wiring);
        terminals.forEach(t -> maze.keep(t.node(), wiring.id()));
        return wiring;
    }

    List<Wiring> wirings() {
        return wirings;
    }

    /** Lays everything but rings: what has no choice first. */
    void route() {
        grounds();
        singles();
        List<Wiring> several = new ArrayList<>();
        for (Wiring w : List.copyOf(wirings)) {
            if (w.terminals().size() > 1) {
                several.add(w);
            }
        }
        several.sort(Comparator.comparingDouble(this::size).thenComparing(Wiring::id));
        for (Wiring w : several) {
            join(w);
        }
        for (int round = 1; round < ROUNDS; round++) {
            for (Wiring w : several) {
                lift(w);
                join(w);
            }
        }
    }

    /** Flags of groups with several terminals, and of those split off. */
    void flags() {
        for (Wiring w : wirings) {
            if (w.flagged() && w.flags().isEmpty()) {
                end(w);
            }
        }
    }

    /** Takes the wires of a group up again. */
    private void lift(Wiring w) {
        for (int node : w.nodes()) {
            for (Side side : Side.values()) {
                if (maze.edge(node, side) == w.id()) {
                    maze.lay(node, side, Maze.FREE);
                }
            }
        }
        w.nodes().clear();
        w.terminals().forEach(t -> w.nodes().add(t.node()));
    }

    private void grounds() {
        List<Wiring> grounds = new ArrayList<>(
                wirings.stream().filter(w -> w.kind() == Wiring.Kind.GROUND).toList());
        // those that point down have their sign at once; the others look for a place between them
        grounds.sort(Comparator.comparing((Wiring w) -> w.terminals().get(0).side() != Side.DOWN));
        grounds.forEach(this::end);
    }

    private void singles() {
        for (Wiring w : wirings) {
            if (w.kind() != Wiring.Kind.GROUND && w.terminals().size() == 1 && w.flagged()) {
                end(w);
            }
        }
    }

    private double size(Wiring w) {
        Box box = around(w.terminals());
        return box.width() + box.height();
    }

    private Box around(List<Terminal> terminals) {
        Box box =
                new Box(maze.x(terminals.get(0).node()), maze.y(terminals.get(0).node()), 0, 0);
        for (Terminal t : terminals) {
            box = box.with(new Box(maze.x(t.node()), maze.y(t.node()), 0, 0));
        }
        return box;
    }

    /** Joins the terminals of a group, the nearest first; what is out of reach becomes a group of its own. */
    private void join(Wiring w) {
        List<Terminal> left = new ArrayList<>(w.terminals());
        List<Terminal> joined = new ArrayList<>(List.of(left.remove(0)));
        int limit = w.kind() == Wiring.Kind.RAIL ? RAIL_LIMIT : WIRE_LIMIT;
        Box within = around(w.terminals()).grown(STRAY);
        while (!left.isEmpty()) {
            Search.Way way = search.find(
                    w.id(), reached(w, joined), within, limit, (node, arriving) -> meeting(left, node, arriving));
            if (way.nodes().isEmpty()) {
                split(w, joined, left);
                return;
            }
            lay(w, way.nodes());
            int end = way.nodes().get(way.nodes().size() - 1);
            left.stream().filter(t -> t.node() == end).forEach(joined::add);
            left.removeIf(t -> t.node() == end);
        }
    }

    /** Nodes that wires of a group have reached so far. */
    private int[] reached(Wiring w, List<Terminal> joined) {
        return w.nodes().stream()
                .mapToInt(i -> i)
                .filter(n -> maze.degree(n, w.id()) > 0 || joined.stream().anyMatch(t -> t.node() == n))
                .toArray();
    }

    private static int meeting(List<Terminal> left, int node, @Nullable Side arriving) {
        for (Terminal t : left) {
            if (t.node() == node) {
                return arriving == null
                                || t.side() == null
                                || arriving == t.side().opposite()
                        ? 0
                        : 4;
            }
        }
        return -1;
    }

    private void split(Wiring w, List<Terminal> joined, List<Terminal> left) {
        w.keepOnly(joined);
        w.flag();
        Wiring rest = add(w.net(), Wiring.Kind.RAIL, left);
        left.stream().filter(t -> t.side() == null).forEach(t -> maze.keepAround(t.node(), rest.id(), w.id()));
        if (w.named()) {
            rest.withName();
        }
        if (left.size() > 1) {
            join(rest);
        }
    }

    void lay(Wiring w, List<Integer> nodes) {
        int id = w.id();
        for (int node : nodes) {
            w.nodes().add(node);
        }
        for (int i = 1; i < nodes.size(); i++) {
            for (Side side : Side.values()) {
                if (maze.beside(nodes.get(i - 1), side) == nodes.get(i)) {
                    maze.lay(nodes.get(i - 1), side, id);
                }
            }
        }
    }

    /** Nodes of a group: its terminals and its wires. */
    int[] tree(Wiring w) {
        return w.nodes().stream().mapToInt(i -> i).toArray();
    }

    /** Ends a group in a flag, or in its ground sign, where there is room nearest to it. */
    private void end(Wiring w) {
        Box within = around(w.terminals()).grown(STRAY);
        Search.Way way = search.find(w.id(), tree(w), within, FLAG_LIMIT, (node, arriving) -> {
            Choice choice = choice(w, node, arriving);
            return choice == null ? -1 : choice.cost();
        });
        Terminal first = w.terminals().get(0);
        List<Integer> nodes = way.nodes().isEmpty() ? List.of(first.node()) : way.nodes();
        Side arriving = arriving(nodes);
        int last = nodes.get(nodes.size() - 1);
        Choice choice = choice(w, last, arriving);
        Side side = choice != null ? choice.side() : first.side() == null ? Side.UP : first.side();
        lay(w, nodes);
        Flag flag = shape(w, last, side);
        w.flags().add(flag);
        maze.block(flag.bounds(), false);
    }

    private @Nullable Side arriving(List<Integer> nodes) {
        if (nodes.size() < 2) {
            return null;
        }
        for (Side side : Side.values()) {
            if (maze.beside(nodes.get(nodes.size() - 2), side) == nodes.get(nodes.size() - 1)) {
                return side;
            }
        }
        return null;
    }

    private Flag shape(Wiring w, int node, Side side) {
        double x = maze.x(node);
        double y = maze.y(node);
        if (w.kind() == Wiring.Kind.GROUND) {
            return w.named() ? Flags.ground(w.net(), x, y) : Flags.ground(x, y);
        }
        return Flags.rail(w.net(), x, y, side);
    }

    /** A way to set a flag at a node. */
    private record Choice(Side side, int cost) {}

    private @Nullable Choice choice(Wiring w, int node, @Nullable Side arriving) {
        boolean ground = w.kind() == Wiring.Kind.GROUND;
        Choice best = null;
        for (Side side : ground ? new Side[] {Side.DOWN} : Side.values()) {
            int cost = turning(w, node, arriving, side) + (ground ? 0 : liking(side));
            // an arrow needs a bit of wire between itself and a joint
            cost += side.level() && arriving == null && maze.degree(node, w.id()) > 0 ? JOINT_COST : 0;
            boolean better = best == null || cost < best.cost();
            if (better && cost < FLAG_LIMIT && maze.clear(shape(w, node, side).bounds(), w.id())) {
                best = new Choice(side, cost);
            }
        }
        return best;
    }

    private static int liking(Side side) {
        return switch (side) {
            case UP -> 0;
            case LEFT, RIGHT -> 5;
            case DOWN -> 30;
        };
    }

    private static int turning(Wiring w, int node, @Nullable Side arriving, Side side) {
        Side coming = arriving;
        for (Terminal t : w.terminals()) {
            if (coming == null && t.node() == node) {
                coming = t.side();
            }
        }
        if (coming == null || coming == side) {
            return 0;
        }
        return coming == side.opposite() ? FLAG_LIMIT : 9;
    }

    /** The search that rings use too. */
    Search search() {
        return search;
    }

    /** The whole sheet. */
    Box everywhere() {
        return everywhere;
    }
}
