package fusetale.report.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.PriorityQueue;
import org.jspecify.annotations.Nullable;

/**
 * Finds the cheapest way for a wire through a maze: short, with few bends and fewer crossings (Dijkstra's algorithm over
 * nodes and the direction they were reached in).
 */
final class Search {
    static final int STEP_COST = 10;
    private static final int BEND_COST = 22;
    private static final int CROSSING_COST = 70;
    private static final int NEAR_COST = 9;
    private static final int BESIDE_COST = 4;
    private static final int MEETING_COST = 12;
    private static final int FOUR_WAY_COST = 45;

    private static final int DIRECTIONS = 5;
    private static final int NO_DIRECTION = 4;

    private final Maze maze;
    private final int[] costs;
    private final int[] from;
    private final boolean[] done;
    private int[] touched = new int[1024];
    private int touchedCount;

    Search(Maze maze) {
        this.maze = maze;
        int states = maze.nodes() * DIRECTIONS;
        costs = new int[states];
        from = new int[states];
        done = new boolean[states];
        Arrays.fill(costs, Integer.MAX_VALUE);
    }

    /** Whether a way may end at a node, and what that costs; -1 for no. */
    @FunctionalInterface
    interface Goal {
        /**
         * What ending there costs more.
         *
         * @param node where
         * @param arriving the direction it was reached in; null at a start
         */
        int cost(int node, @Nullable Side arriving);
    }

    /** A way found: nodes in order, its cost. */
    record Way(List<Integer> nodes, int cost) {}

    /**
     * The cheapest way from any of the starts.
     *
     * @param net whose wire it is
     * @param starts nodes to begin at
     * @param within no node outside it is passed
     * @param limit ways that cost more are none
     */
    Way find(int net, int[] starts, Box within, int limit, Goal goal) {
        reset();
        PriorityQueue<long[]> queue =
                new PriorityQueue<>((a, b) -> a[0] != b[0] ? Long.compare(a[0], b[0]) : Long.compare(a[1], b[1]));
        for (int start : starts) {
            if (!maze.foreign(start, net)) {
                reach(queue, start * DIRECTIONS + NO_DIRECTION, startCost(net, start), -1);
            }
        }
        int best = limit;
        int bestState = -1;
        while (!queue.isEmpty()) {
            long[] next = queue.poll();
            int state = (int) next[1];
            if (next[0] >= best) {
                break;
            }
            if (done[state]) {
                continue;
            }
            done[state] = true;
            int node = state / DIRECTIONS;
            int direction = state % DIRECTIONS;
            Side arriving = direction == NO_DIRECTION ? null : Side.numbered(direction);
            if (!maze.foreign(node, net)) {
                int more = goal.cost(node, arriving);
                if (more >= 0 && next[0] + more < best) {
                    best = (int) next[0] + more;
                    bestState = state;
                }
            }
            for (Side side : Side.values()) {
                step(queue, net, state, side, within);
            }
        }
        return bestState < 0 ? new Way(List.of(), limit) : new Way(way(bestState), best);
    }

    private int startCost(int net, int node) {
        int degree = maze.degree(node, net);
        return degree >= 3 ? FOUR_WAY_COST : degree == 2 ? MEETING_COST : 0;
    }

    private void step(PriorityQueue<long[]> queue, int net, int state, Side side, Box within) {
        int node = state / DIRECTIONS;
        int direction = state % DIRECTIONS;
        if (direction != NO_DIRECTION && side == Side.numbered(direction).opposite()) {
            return;
        }
        boolean turns = direction != NO_DIRECTION && side.number() != direction;
        boolean crossing = maze.foreign(node, net);
        if ((crossing && turns) || maze.edge(node, side) != Maze.FREE) {
            return;
        }
        int next = maze.beside(node, side);
        if (next < 0 || !within.holds(maze.x(next), maze.y(next))) {
            return;
        }
        int owner = maze.owner(next);
        if ((owner != Maze.FREE && owner != net) || maze.degree(next, net) > 0) {
            return;
        }
        int cost = STEP_COST + (turns ? BEND_COST : 0);
        if (maze.foreign(next, net)) {
            if (!maze.crossable(next, side, net)) {
                return;
            }
            cost += CROSSING_COST;
        }
        if (maze.near(next) && owner != net) {
            cost += NEAR_COST;
        }
        cost += beside(net, node, side) ? BESIDE_COST : 0;
        reach(queue, next * DIRECTIONS + side.number(), costs[state] + cost, state);
    }

    /** Whether another wire runs along the next edge one step aside. */
    private boolean beside(int net, int node, Side side) {
        Side across = side.clockwise();
        return parallel(net, maze.beside(node, across), side)
                || parallel(net, maze.beside(node, across.opposite()), side);
    }

    private boolean parallel(int net, int node, Side side) {
        if (node < 0) {
            return false;
        }
        int who = maze.edge(node, side);
        return who >= 0 && who != net;
    }

    private void reach(PriorityQueue<long[]> queue, int state, int cost, int before) {
        if (cost < costs[state]) {
            if (costs[state] == Integer.MAX_VALUE) {
                if (touchedCount == touched.length) {
                    touched = Arrays.copyOf(touched, 2 * touchedCount);
                }
                touched[touchedCount++] = state;
            }
            costs[state] = cost;
            from[state] = before;
            queue.add(new long[] {cost, state});
        }
    }

    private void reset() {
        for (int i = 0; i < touchedCount; i++) {
            costs[touched[i]] = Integer.MAX_VALUE;
            done[touched[i]] = false;
        }
        touchedCount = 0;
    }

    private List<Integer> way(int end) {
        List<Integer> nodes = new ArrayList<>();
        for (int state = end; state >= 0; state = from[state]) {
            nodes.add(0, state / DIRECTIONS);
        }
        return nodes;
    }
}
