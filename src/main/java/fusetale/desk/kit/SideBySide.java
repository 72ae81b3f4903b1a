package fusetale.desk.kit;

import javafx.geometry.Orientation;
import javafx.scene.layout.Region;

/**
 * Two things side by side, or one below the other where the window is narrow or everything is large. As wide as it is given; it
 * asks for no width of its own, and for the height that it needs at the width it has.
 */
public abstract class SideBySide extends Region {
    private static final double NARROW = 1000;

    /** Nothing in it yet. */
    protected SideBySide() {
        setMinWidth(0);
    }

    /** Whether one stands below the other at a width [px]; a width below 0 is not known yet. */
    protected static boolean narrow(double width) {
        return width >= 0 && width < NARROW;
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected double computeMinWidth(double height) {
        return 0;
    }

    @Override
    protected double computePrefWidth(double height) {
        return 0;
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    /** What both need at a width [px]; below 0 where it is not known yet. */
    @Override
    protected abstract double computePrefHeight(double width);
}
