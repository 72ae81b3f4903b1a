package fusetale.desk.match;

import fusetale.desk.kit.SideBySide;
import javafx.scene.Node;
import javafx.scene.layout.Region;

/** What fits and what to measure next: side by side, or one below the other where there is little room. */
final class MatchBody extends SideBySide {
    private static final double MARGIN = 20;
    private static final double GAP = 16;
    private static final double TAG_SHARE = 0.302;
    private static final double TAG_LEAST = 370;
    private static final double TAG_MOST = 470;
    private static final double LOWEST = 300;

    private Region left;
    private final Region tag;

    MatchBody(Region left, Region tag) {
        this.left = left;
        this.tag = tag;
        getChildren().addAll(left, tag);
    }

    /** Puts something else at the left. */
    void left(Region other) {
        Node before = left;
        if (before != other) {
            left = other;
            getChildren().setAll(other, tag);
        }
        requestLayout();
    }

    @Override
    protected double computePrefHeight(double width) {
        if (!narrow(width)) {
            return LOWEST;
        }
        double room = width - 2 * MARGIN;
        return left.prefHeight(room) + GAP + tag.prefHeight(room) + 12;
    }

    @Override
    protected void layoutChildren() {
        double room = getWidth() - 2 * MARGIN;
        double height = getHeight() - 10;
        if (narrow(getWidth())) {
            double below = tag.prefHeight(room);
            left.resizeRelocate(MARGIN, 0, room, height - below - GAP);
            tag.resizeRelocate(MARGIN, height - below, room, below);
            return;
        }
        double side = Math.rint(Math.max(TAG_LEAST, Math.min(TAG_MOST, getWidth() * TAG_SHARE)));
        left.resizeRelocate(MARGIN, 0, room - side - GAP, height);
        tag.resizeRelocate(MARGIN + room - side, 0, side, height);
    }
}
