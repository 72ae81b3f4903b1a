package fusetale.report.drawing;

import fusetale.circuit.Stand;

/** Takes the points of a symbol to where its part stands. */
final class Placement {
    /** Side of a square of the file [px]. */
    static final int SQUARE = 10;

    private Placement() {}

    /** Moves. */
    static Outline.Place by(double byX, double byY) {
        return (x, y) -> new double[] {x + byX, y + byY};
    }

    /** Mirrors, turns and moves as a stand says. */
    static Outline.Place of(Stand stand) {
        double middleX = stand.square().column() * (double) SQUARE;
        double middleY = stand.square().row() * (double) SQUARE;
        return (x, y) -> {
            double from = stand.mirrored() ? -x : x;
            return switch (stand.turn()) {
                case NONE -> new double[] {middleX + from, middleY + y};
                case RIGHT -> new double[] {middleX - y, middleY + from};
                case HALF -> new double[] {middleX - from, middleY - y};
                case LEFT -> new double[] {middleX + y, middleY - from};
            };
        };
    }
}
