package fusetale.report.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntConsumer;

/**
 * What is taken of the sheet, on a grid of {@value Placement#SQUARE} px: by symbols and texts, which no wire may cross, by ends of leads,
 * which belong to one net, and by wires, which others may cross at right angles only. Nodes are numbered row by row. Belongs to
 * one draughtsman.
 */
final class Maze {
    /** Nobody's. */
    static final int FREE = -1;

    /** Nobody may pass. */
    static final int BLOCKED = -2;

    private static final int STEP = Placement.SQUARE;

    /** Room between a wire and what it passes [px]. */
    private static final double AIR = 2;

    /** Within so many px of a symbol wires pass only where there is no other way. */
    private static final double NEAR = 8;

    private final double left;
    private final double top;
    private final int columns;
    private final int rows;
    private final int[] owners;
    private final int[] level;
    private final int[] upright;
    private final byte[] near;
    private final Boxes obstacles = new Boxes();

    /** A free sheet. */
    Maze(Box sheet) {
        left = Math.floor(sheet.x() / STEP) * STEP;
        top = Math.floor(sheet.y() / STEP) * STEP;
        columns = (int) Math.ceil((sheet.right() - left) / STEP) + 1;
        rows = (int) Math.ceil((sheet.bottom() - top) / STEP) + 1;
        owners = new int[columns * rows];
        level = new int[columns * rows];
        upright = new int[columns * rows];
        near = new byte[columns * rows];
        Arrays.fill(owners, FREE);
        Arrays.fill(level, FREE);
        Arrays.fill(upright, FREE);
    }

    int nodes() {
        return columns * rows;
    }

    /** Node at a place of the grid. */
    int node(double x, double y) {
        int column = (int) Math.round((x - left) / STEP);
        int row = (int) Math.round((y - top) / STEP);
        if (column < 0 || row < 0 || column >= columns || row >= rows) {
            throw new IllegalArgumentException("off the sheet: " + x + ", " + y);
        }
        return row * columns + column;
    }

    int column(int node) {
        return node % columns;
    }

    int row(int node) {
        return node / columns;
    }

    double x(int node) {
        return left + column(node) * (double) STEP;
    }

    double y(int node) {
        return top + row(node) * (double) STEP;
    }

    /** The node one step further, or -1 past the edge. */
    int beside(int node, Side side) {
        int column = column(node) + side.stepX();
        int row = row(node) + side.stepY();
        return column < 0 || row < 0 || column >= columns || row >= rows ? -1 : row * columns + column;
    }

    /** Who has the edge on a side of a node. */
    int edge(int node, Side side) {
        return switch (side) {
            case RIGHT -> level[node];
            case DOWN -> upright[node];
            case LEFT -> column(node) == 0 ? BLOCKED : level[node - 1];
            case UP -> row(node) == 0 ? BLOCKED : upright[node - columns];
        };
    }

    /** Gives the edge on a side of a node to a net. */
    void lay(int node, Side side, int net) {
        switch (side) {
            case RIGHT -> level[node] = net;
            case DOWN -> upright[node] = net;
            case LEFT -> level[node - 1] = net;
            case UP -> upright[node - columns] = net;
        }
    }

    int owner(int node) {
        return owners[node];
    }

    /** Whether passing here is close to a symbol. */
    boolean near(int node) {
        return near[node] > 0;
    }

    /** Keeps a node for one net. */
    void keep(int node, int net) {
        owners[node] = net;
    }

    /** Keeps what is around a node for one net, where it is free or another's of that net. */
    void keepAround(int node, int net, int before) {
        for (int dx = -1; dx <= 1; dx++) {
            for (int dy = -1; dy <= 1; dy++) {
                int column = column(node) + dx;
                int row = row(node) + dy;
                if (column >= 0 && row >= 0 && column < columns && row < rows) {
                    int other = row * columns + column;
                    owners[other] = owners[other] == FREE || owners[other] == before ? net : owners[other];
                }
            }
        }
    }

    /** How many wires of a net meet at a node. */
    int degree(int node, int net) {
        int degree = 0;
        for (Side side : Side.values()) {
            degree += edge(node, side) == net ? 1 : 0;
        }
        return degree;
    }

    /** Whether wires of another net run through a node. */
    boolean foreign(int node, int net) {
        for (Side side : Side.values()) {
            int who = edge(node, side);
            if (who >= 0 && who != net) {
                return true;
            }
        }
        return false;
    }

    /** Whether a net may go straight over a node along a side: what else is there runs straight across. */
    boolean crossable(int node, Side along, int net) {
        Side across = along.clockwise();
        int one = edge(node, across);
        int ahead = edge(node, along);
        int behind = edge(node, along.opposite());
        return one >= 0
                && one == edge(node, across.opposite())
                && (ahead < 0 || ahead == net)
                && (behind < 0 || behind == net);
    }

    /** A symbol, or a text: nobody passes. */
    void block(Box box, boolean symbol) {
        obstacles.add(box);
        Box hard = symbol ? box.grown(-0.5) : box.grown(AIR);
        each(box.grown(STEP + NEAR), node -> {
            double x = x(node);
            double y = y(node);
            if (hard.holds(x, y) && owners[node] == FREE) {
                owners[node] = BLOCKED;
            }
            if (symbol && box.grown(NEAR).holds(x, y)) {
                near[node] = 1;
            }
            if (level[node] == FREE && hard.meets(new Box(x, y - 0.01, STEP, 0.02))) {
                level[node] = BLOCKED;
            }
            if (upright[node] == FREE && hard.meets(new Box(x - 0.01, y, 0.02, STEP))) {
                upright[node] = BLOCKED;
            }
        });
    }

    /** What texts and flags must keep off, though wires need not. */
    void shade(Box box) {
        obstacles.add(box);
    }

    /** Whether a text or a flag of a net finds room: nothing else there, no wire, no end of another's lead. */
    boolean clear(Box box, int net) {
        return clear(box, net, false);
    }

    /** Whether a ring on a net's own wire finds room. */
    boolean clearButForOwnWires(Box box, int net) {
        return clear(box, net, true);
    }

    private boolean clear(Box box, int net, boolean ownWires) {
        if (x(0) > box.x() || y(0) > box.y() || x(nodes() - 1) < box.right() || y(nodes() - 1) < box.bottom()) {
            return false;
        }
        if (obstacles.anyMeets(box)) {
            return false;
        }
        boolean[] clear = {true};
        Box wide = box.grown(AIR);
        each(box.grown(STEP), node -> {
            boolean taken = owners[node] >= 0 && owners[node] != net && wide.holds(x(node), y(node));
            boolean crossed = counts(level[node], net, ownWires)
                    && crosses(level[node] == net ? box : wide, x(node), y(node), true);
            boolean cut = counts(upright[node], net, ownWires)
                    && crosses(upright[node] == net ? box : wide, x(node), y(node), false);
            clear[0] &= !(taken || crossed || cut);
        });
        return clear[0];
    }

    private static boolean counts(int who, int net, boolean ownWires) {
        return who >= 0 && !(ownWires && who == net);
    }

    private static boolean crosses(Box box, double x, double y, boolean isLevel) {
        return box.meets(isLevel ? new Box(x, y - 0.01, STEP, 0.02) : new Box(x - 0.01, y, 0.02, STEP));
    }

    /** How many obstacles lie in a box. */
    int obstaclesIn(Box box) {
        return obstacles.countMeeting(box);
    }

    private void each(Box box, IntConsumer what) {
        int firstColumn = Math.max(0, (int) Math.floor((box.x() - left) / STEP));
        int lastColumn = Math.min(columns - 1, (int) Math.ceil((box.right() - left) / STEP));
        int firstRow = Math.max(0, (int) Math.floor((box.y() - top) / STEP));
        int lastRow = Math.min(rows - 1, (int) Math.ceil((box.bottom() - top) / STEP));
        for (int row = firstRow; row <= lastRow; row++) {
            for (int column = firstColumn; column <= lastColumn; column++) {
                what.accept(row * columns + column);
            }
        }
    }

    /** Wires of a net, each as long as it goes straight; broken where others of the net meet it. */
    List<Segment> wires(int net, int[] nodes) {
        List<Segment> wires = new ArrayList<>();
        for (int node : nodes) {
            run(wires, node, Side.RIGHT, net);
            run(wires, node, Side.DOWN, net);
        }
        return wires;
    }

    private void run(List<Segment> wires, int node, Side side, int net) {
        boolean begins = edge(node, side) == net && (edge(node, side.opposite()) != net || degree(node, net) > 2);
        if (!begins) {
            return;
        }
        int end = beside(node, side);
        while (edge(end, side) == net && degree(end, net) == 2) {
            end = beside(end, side);
        }
        wires.add(new Segment(x(node), y(node), x(end), y(end)));
    }
}
