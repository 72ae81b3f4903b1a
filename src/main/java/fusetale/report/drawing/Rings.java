package fusetale.report.drawing;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** Finds a place for the ring of a test point on its net, best under a clear lane upwards. */
final class Rings {
    private static final int LIMIT = 500;
    private static final int STUB_COST = 14;
    private static final int CORNER_COST = 20;
    private static final int CROWD_COST = 4;
    private static final int LANE_COST = 3;
    private static final int LANE_MOST = 24;
    private static final double LANE = 4;

    private final Maze maze;
    private final Router router;

    Rings(Maze maze, Router router) {
        this.maze = maze;
        this.router = router;
    }

    /** Where the ring goes, a wire laid to it where need be; null where the net is not on the sheet or there is no room. */
    @Nullable
    Spot place(String net) {
        Search.Way best = null;
        Wiring on = null;
        for (Wiring w : router.wirings()) {
            if (!w.net().name().equals(net)) {
                continue;
            }
            int[] tree = router.tree(w);
            int limit = best == null ? LIMIT : best.cost();
            int wired = tree.length > 1 ? 0 : 60;
            Search.Way way = router.search()
                    .find(
                            w.id(),
                            tree,
                            router.everywhere(),
                            limit,
                            (node, arriving) -> cost(w, node, arriving) + wired);
            if (!way.nodes().isEmpty()) {
                best = way;
                on = w;
            }
        }
        if (best == null || on == null) {
            return null;
        }
        router.lay(on, best.nodes());
        int node = best.nodes().get(best.nodes().size() - 1);
        keep(node, on.id());
        return new Spot(maze.x(node), maze.y(node));
    }

    /** Keeps room for a ring that a file has placed. */
    void keep(int node, int id) {
        maze.keepAround(node, id, Maze.FREE);
        maze.shade(DrawnPoint.ring(new Spot(maze.x(node), maze.y(node))));
    }

    private int cost(Wiring w, int node, @Nullable Side arriving) {
        Spot spot = new Spot(maze.x(node), maze.y(node));
        if (!maze.clearButForOwnWires(DrawnPoint.ring(spot), w.id())) {
            return -1000;
        }
        int degree = maze.degree(node, w.id());
        int kind = arriving != null ? STUB_COST : degree == 2 && straight(w, node) ? crowded(w, node) : CORNER_COST;
        Box lane = Box.between(spot.x() - LANE, router.everywhere().y(), spot.x() + LANE, spot.y() - 12);
        return kind + Math.min(LANE_MOST, LANE_COST * maze.obstaclesIn(lane));
    }

    /** How many of its neighbours along the wire are corners, joints or ends. */
    private int crowded(Wiring w, int node) {
        int crowded = 0;
        for (Side side : Side.values()) {
            if (maze.edge(node, side) == w.id() && !straight(w, maze.beside(node, side))) {
                crowded += CROWD_COST;
            }
        }
        return crowded;
    }

    private boolean straight(Wiring w, int node) {
        for (Side side : List.of(Side.RIGHT, Side.DOWN)) {
            if (maze.degree(node, w.id()) == 2
                    && maze.edge(node, side) == w.id()
                    && maze.edge(node, side.opposite()) == w.id()) {
                return true;
            }
        }
        return false;
    }
}
