package fusetale.desk.kit;

import javafx.scene.AccessibleAction;
import javafx.scene.layout.Region;

/** What is announced as a button, or as one of a choice, and is none of the toolkit's: a screen reader can press it too. */
public abstract class Pressable extends Region {
    private Runnable fired = () -> {};

    /** What a press of a screen reader does: the same as one with the pointer, or as Enter. */
    public final void setOnFired(Runnable deed) {
        fired = deed;
    }

    @Override
    public void executeAccessibleAction(AccessibleAction action, Object... parameters) {
        if (action == AccessibleAction.FIRE) {
            fired.run();
        } else {
            super.executeAccessibleAction(action, parameters);
        }
    }
}
