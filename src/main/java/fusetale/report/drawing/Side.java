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
        return values()[(ordinal() + 2) % 4];
    }

    /** As a part that stands like this has it. */
    Side on(Stand stand) {
        Side seen = stand.mirrored() && level() ? opposite() : this;
        return values()[(seen.ordinal() + stand.turn().ordinal()) % 4];
    }
}
