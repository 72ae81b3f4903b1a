package fusetale.desk.kit;

import java.util.ArrayDeque;
import java.util.Deque;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ScrollPane;

/** A scroll pane for what changes more often than it is scrolled. */
public final class Scrolling {
    /** How deep below the pane JavaFX's own panes lie: viewport, then what holds the content. */
    private static final int OWN = 2;

    private Scrolling() {}

    /**
     * A scroll pane around something. JavaFX has it keep a picture of all that it shows, and paint that picture as a whole whenever
     * a figure in it changes; this one does not.
     */
    public static ScrollPane around(Node content) {
        ScrollPane pane = new ScrollPane(content);
        pane.skinProperty().addListener(changed -> uncache(pane));
        return pane;
    }

    private static void uncache(ScrollPane pane) {
        Deque<Node> level = new ArrayDeque<>(pane.getChildrenUnmodifiable());
        for (int depth = 0; depth < OWN; depth++) {
            Deque<Node> below = new ArrayDeque<>();
            for (Node node : level) {
                node.setCache(false);
                if (node instanceof Parent parent) {
                    below.addAll(parent.getChildrenUnmodifiable());
                }
            }
            level = below;
        }
    }
}
