package fusetale.desk;

import java.util.Optional;
import javafx.geometry.BoundingBox;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import org.jspecify.annotations.Nullable;

/** What lies over the window for a moment: one thing at a time. Closing it gives the keyboard back to whoever had it. */
final class Overlay extends Pane {
    private static final double MARGIN = 20;
    /** The key strip stays in sight. */
    private static final double FOOT = 38;

    private @Nullable Region open;
    private @Nullable Node before;
    private Region beside = new Region();
    private Side side = Side.MIDDLE;
    private Bounds place = new BoundingBox(0, 0, 0, 0);

    /** Where it lies. */
    enum Side {
        /** Along the right edge. */
        RIGHT,
        /** In the middle. */
        MIDDLE,
        /** Under the sentence, as wide as the window. */
        BELOW,
        /** Beside a place in the window. */
        AT
    }

    Overlay() {
        setPickOnBounds(false);
        setVisible(false);
    }

    /** Lays something over the window, below a part of it. */
    void open(Region node, Side where, Region below) {
        Node had = getScene() == null ? null : getScene().getFocusOwner();
        close();
        before = had;
        open = node;
        beside = below;
        side = where;
        getChildren().setAll(node);
        setVisible(true);
        // what lies inside a scroll pane can have the keyboard only once that has its skin
        node.applyCss();
        requestLayout();
    }

    /** Lays something just below a place in the window, or above it where there is no room below, and never over one part of it. */
    void openAt(Region node, Bounds inScene, Region uncovered) {
        place = inScene;
        open(node, Side.AT, uncovered);
    }

    /** Takes it away; gives whether there was anything. */
    boolean close() {
        if (open == null) {
            return false;
        }
        open = null;
        getChildren().clear();
        setVisible(false);
        Node back = before;
        before = null;
        if (back != null && back.getScene() != null && back.isVisible()) {
            back.requestFocus();
        }
        return true;
    }

    /** What lies there. */
    Optional<Region> showing() {
        return Optional.ofNullable(open);
    }

    @Override
    protected void layoutChildren() {
        Region node = open;
        if (node == null) {
            return;
        }
        double top = beside.getParent() == null
                ? MARGIN
                : sceneToLocal(beside.localToScene(0, beside.getHeight())).getY() + 2;
        double width = switch (side) {
            case BELOW -> getWidth() - 2 * MARGIN;
            case RIGHT, MIDDLE, AT -> Math.min(getWidth() - 2 * MARGIN, node.prefWidth(-1));
        };
        if (side == Side.AT) {
            besidePlace(node, width);
            return;
        }
        double wanted = node.prefHeight(width);
        double foot = getHeight() - FOOT;
        // where the window is low, better over the line than with no room for what is to be read
        top = Math.max(0, Math.min(top, foot - Math.min(wanted, node.minHeight(width))));
        double height = Math.min(foot - top, wanted);
        double x = side == Side.RIGHT ? getWidth() - width - MARGIN : (getWidth() - width) / 2;
        node.resizeRelocate(Math.rint(x), Math.rint(top), width, height);
    }

    private void besidePlace(Region node, double width) {
        Bounds here = sceneToLocal(place);
        double height = Math.min(getHeight() - 2 * MARGIN, node.prefHeight(width));
        boolean below = here.getMaxY() + 6 + height <= getHeight() - MARGIN;
        double y = below ? here.getMaxY() + 6 : Math.max(MARGIN, here.getMinY() - 6 - height);
        Bounds kept = sceneToLocal(beside.localToScene(beside.getLayoutBounds()));
        if (y < kept.getMaxY() && y + height > kept.getMinY()) {
            y = kept.getMaxY() + 2;
        }
        double x = Math.max(MARGIN, Math.min(here.getMinX(), getWidth() - MARGIN - width));
        node.resizeRelocate(Math.rint(x), Math.rint(y), width, height);
    }
}
