package fusetale.desk.drawing;

import fusetale.desk.help.Explained;
import fusetale.report.drawing.Box;
import fusetale.report.drawing.DrawnPart;
import javafx.scene.AccessibleAction;
import javafx.scene.AccessibleRole;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.shape.Rectangle;
import javafx.scene.text.Text;

/** A part on the drawing that can have the keyboard. Its target is as large as its symbol and labels, and never too small. */
final class PartNode extends Group implements Explained {
    /** Least side of what can be pressed, on the sheet [px]. */
    private static final double LEAST = 44;

    private final DrawnPart part;
    private final Runnable chosen;

    /**
     * A part.
     *
     * @param chosen what a press does, that of a screen reader too
     */
    PartNode(DrawnPart part, String spoken, Runnable chosen) {
        this.part = part;
        this.chosen = chosen;
        setOnMousePressed(e -> requestFocus());
        setOnMouseClicked(e -> {
            if (e.isStillSincePress()) {
                chosen.run();
            }
        });
        getStyleClass().add("part");
        Box extent = part.extent();
        double growX = Math.max(3, (LEAST - extent.width()) / 2);
        double growY = Math.max(3, (LEAST - extent.height()) / 2);
        Rectangle target = new Rectangle(
                extent.x() - growX, extent.y() - growY, extent.width() + 2 * growX, extent.height() + 2 * growY);
        target.getStyleClass().add("part-target");
        Rectangle ring = new Rectangle(extent.x() - 4, extent.y() - 4, extent.width() + 8, extent.height() + 8);
        ring.getStyleClass().add("part-ring");
        ring.setMouseTransparent(true);
        getChildren().addAll(target, ring);
        for (Node stroke : Nodes.strokes(part.strokes())) {
            stroke.setMouseTransparent(true);
            getChildren().add(stroke);
        }
        part.labels().forEach(l -> {
            Text text = Nodes.label(l);
            text.setMouseTransparent(true);
            text.getStyleClass().add("label-" + l.role().name().toLowerCase(java.util.Locale.ROOT));
            getChildren().add(text);
        });
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.BUTTON);
        setAccessibleText(spoken);
    }

    DrawnPart part() {
        return part;
    }

    @Override
    public void executeAccessibleAction(AccessibleAction action, Object... parameters) {
        if (action == AccessibleAction.FIRE) {
            chosen.run();
        } else {
            super.executeAccessibleAction(action, parameters);
        }
    }

    @Override
    public String words() {
        return part.kind();
    }

    void say(String spoken) {
        setAccessibleText(spoken);
    }
}
