package fusetale.report.drawing;

import fusetale.circuit.Stand;

/** A direction on the sheet. */
public enum Side {
    /** To the right. */
    RIGHT(1, 0),
    /** Downwards. */
    DOWN(0, 1),
    /** To the left. */
    LEFT(-1, 0),
    /** Upwards. */
    UP(0, -1);

    private final int stepX;
    private final int stepY;

    Side(int stepX, int stepY) {
        this.stepX = stepX;
        this.stepY = stepY;
    }

    /** -1, 0 or 1. */
    public int stepX() {
        return stepX;
    }

    /** -1, 0 or 1; down is positive. */
    public int stepY() {
        return stepY;
    }

    /** Whether it is to the left or right. */
    public boolean level() {
        return stepY == 0;
    }

    /** The other way. */
    public Side opposite() {
        return switch (this) {
            case RIGHT -> LEFT;
            case DOWN -> UP;
            case LEFT -> RIGHT;
            case UP -> DOWN;
        };
    }

    /** A quarter turn clockwise. */
    public Side clockwise() {
        return switch (this) {
            case RIGHT -> DOWN;
            case DOWN -> LEFT;
            case LEFT -> UP;
            case UP -> RIGHT;
        };
    }

    /** Its number, clockwise from 0 for the right. */
    int number() {
        return switch (this) {
            case RIGHT -> 0;
            case DOWN -> 1;
            case LEFT -> 2;
            case UP -> 3;
        };
    }

    /** The side of a number. */
    static Side numbered(int number) {
        return switch (number) {
            case 0 -> RIGHT;
            case 1 -> DOWN;
            case 2 -> LEFT;
            default -> UP;
        };
    }

    /** As a part that stands like this has it. */
    Side on(Stand stand) {
        Side seen = stand.mirrored() && level() ? opposite() : this;
        return switch (stand.turn()) {
            case NONE -> seen;
            case RIGHT -> seen.clockwise();
            case HALF -> seen.opposite();
            case LEFT -> seen.clockwise().opposite();
        };
    }
}
