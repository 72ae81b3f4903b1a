package fusetale.desk.kit;

import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;

/** Scrolls just as far as it takes to see a node whole. */
public final class Reveal {
    private Reveal() {}

    /** Brings a node into sight that lies within a scroll pane; does nothing where it lies in none. */
    public static void whole(Node node) {
        whole(node, node);
    }

    /** The same for whatever scrolls around a node that has the other in it. */
    public static void whole(Node outer, Node node) {
        for (Node around = outer.getParent(); around != null; around = around.getParent()) {
            if (around instanceof ScrollPane scroll) {
                in(scroll, node);
                return;
            }
        }
    }

    private static void in(ScrollPane scroll, Node node) {
        Node content = scroll.getContent();
        double room = scroll.getViewportBounds().getHeight();
        double hidden = content.getLayoutBounds().getHeight() - room;
        if (hidden <= 0) {
            return;
        }
        Bounds bounds = content.sceneToLocal(node.localToScene(node.getLayoutBounds()));
        double top = scroll.getVvalue() * hidden;
        if (bounds.getMinY() < top) {
            scroll.setVvalue(bounds.getMinY() / hidden);
        } else if (bounds.getMaxY() > top + room) {
            scroll.setVvalue(Math.min(1, (bounds.getMaxY() - room) / hidden));
        }
    }
}
