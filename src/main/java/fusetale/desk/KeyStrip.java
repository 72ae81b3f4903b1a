package fusetale.desk;

import java.util.List;
import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;

/** Status on the left, keys on the right: as many as fit, the last one always. */
final class KeyStrip extends Region {
    private static final double HEIGHT = 32;
    private static final double GAP = 4;
    private static final Insets MARGIN = new Insets(0, 20, 0, 20);

    private final HBox told;
    private final List<? extends Region> hints;

    KeyStrip(List<Label> told, List<? extends Region> hints) {
        this.told = new HBox(GAP);
        this.told.getChildren().addAll(told);
        this.told.setAlignment(javafx.geometry.Pos.CENTER_LEFT);
        this.hints = List.copyOf(hints);
        getStyleClass().add("key-strip");
        getChildren().add(this.told);
        getChildren().addAll(hints);
        setMinHeight(HEIGHT);
        setPrefHeight(HEIGHT);
        setMinWidth(0);
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
    protected void layoutChildren() {
        double left = MARGIN.getLeft();
        double right = getWidth() - MARGIN.getRight();
        double words = Math.min(told.prefWidth(-1), right - left);
        told.resizeRelocate(left, 1, words, HEIGHT - 2);
        double room = right - left - words - 3 * GAP;
        Region last = hints.get(hints.size() - 1);
        double needed = last.prefWidth(-1);
        int fit = 0;
        for (Region hint : hints.subList(0, hints.size() - 1)) {
            needed += hint.prefWidth(-1) + GAP;
            if (needed > room) {
                break;
            }
            fit++;
        }
        for (Node hint : hints) {
            hint.setVisible(false);
        }
        double x = right;
        x = place(last, x);
        for (int k = fit - 1; k >= 0; k--) {
            x = place(hints.get(k), x - GAP);
        }
    }

    private static double place(Region hint, double right) {
        double width = hint.prefWidth(-1);
        hint.setVisible(true);
        hint.resizeRelocate(right - width, 2, width, HEIGHT - 4);
        return right - width;
    }
}
