package fusetale.desk;

import fusetale.desk.kit.SideBySide;
import javafx.geometry.Insets;
import javafx.scene.layout.Region;

/** Strip and waveforms: side by side, or one below the other where the window is narrow or everything is large. */
final class Figures extends SideBySide {
    private static final double GAP = 28;
    private static final Insets MARGIN = new Insets(8, 20, 4, 20);

    private final Region strip;
    private final Region waves;

    Figures(Region strip, Region waves) {
        this.strip = strip;
        this.waves = waves;
        getChildren().addAll(strip, waves);
    }

    @Override
    protected double computePrefHeight(double width) {
        double around = MARGIN.getTop() + MARGIN.getBottom();
        double one = strip.minHeight(-1);
        double two = waves.minHeight(-1);
        return around + (narrow(width) ? one + two + 8 : Math.max(one, two));
    }

    @Override
    protected void layoutChildren() {
        double width = getWidth() - MARGIN.getLeft() - MARGIN.getRight();
        double height = getHeight() - MARGIN.getTop() - MARGIN.getBottom();
        if (narrow(getWidth())) {
            double each = (height - 8) / 2;
            strip.resizeRelocate(MARGIN.getLeft(), MARGIN.getTop(), width, each);
            waves.resizeRelocate(MARGIN.getLeft(), MARGIN.getTop() + each + 8, width, each);
            return;
        }
        double half = (width - GAP) / 2;
        strip.resizeRelocate(MARGIN.getLeft(), MARGIN.getTop(), half, height);
        waves.resizeRelocate(MARGIN.getLeft() + half + GAP, MARGIN.getTop(), half, height);
    }
}
