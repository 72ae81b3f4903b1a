package fusetale.desk.kit;

import java.util.Objects;
import javafx.application.Platform;
import javafx.beans.value.ChangeListener;
import javafx.geometry.Bounds;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/**
 * A page that lies over the window: heading, body that scrolls, one line for what happened, row of buttons. Esc leaves it. What
 * gets the keyboard is scrolled into view.
 */
public final class Page extends VBox {
    private static final double MARGIN = 28;
    private static final double GAP = 12;
    private static final double SCROLL_MARGIN = 16;

    /** Room around what scrolls, for the ring of what has the keyboard. */
    private static final double RING = 4;

    private final VBox body = new VBox(GAP);
    private final ScrollPane scroll = new ScrollPane(body);
    private final Label said = new Label();
    private final FlowPane foot = new FlowPane(GAP, GAP);
    /** Taken from the scene when the page goes, or the scene would keep every page there ever was. */
    private final ChangeListener<Node> following = (of, before, now) -> follow(now);

    private @Nullable Node first;

    /**
     * An empty page.
     *
     * @param heading what it is
     * @param leave what Esc does
     */
    public Page(String heading, Runnable leave) {
        getStylesheets()
                .add(Objects.requireNonNull(Page.class.getResource("/fusetale/desk/kit/page.css"))
                        .toExternalForm());
        getStyleClass().add("page");
        setSpacing(GAP);
        setPadding(new Insets(MARGIN - 8, MARGIN, MARGIN - 8, MARGIN));
        Label title = new Label(heading);
        title.getStyleClass().add("page-heading");
        title.setMinHeight(USE_PREF_SIZE);
        body.setPadding(new Insets(RING));
        // what does not scroll stands in line with what does
        Insets inLine = new Insets(0, RING, 0, RING);
        title.setPadding(inLine);
        said.setPadding(inLine);
        foot.setPadding(inLine);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setAccessibleText(heading);
        VBox.setVgrow(scroll, Priority.ALWAYS);
        said.getStyleClass().add("page-said");
        said.setWrapText(true);
        said.setMinHeight(USE_PREF_SIZE);
        said.managedProperty().bind(said.textProperty().isNotEmpty());
        foot.setAlignment(Pos.CENTER_LEFT);
        foot.setMinHeight(USE_PREF_SIZE);
        getChildren().addAll(title, scroll, said, foot);
        addEventHandler(KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == KeyCode.ESCAPE) {
                e.consume();
                leave.run();
            }
        });
        sceneProperty().addListener((of, before, now) -> {
            if (before != null) {
                before.focusOwnerProperty().removeListener(following);
            }
            if (now != null) {
                now.focusOwnerProperty().addListener(following);
                Platform.runLater(this::begin);
            }
        });
    }

    /** What has the keyboard when the page appears, instead of the first thing that can. */
    public void setFirst(Node node) {
        first = node;
    }

    private void begin() {
        Scene scene = getScene();
        if (scene == null || (scene.getFocusOwner() != null && isWithin(scene.getFocusOwner(), this))) {
            return;
        }
        Node node = first == null ? firstIn(this) : first;
        if (node != null) {
            node.requestFocus();
        }
    }

    private static @Nullable Node firstIn(Node node) {
        if (node.isFocusTraversable() && node.isVisible() && !node.isDisabled()) {
            return node;
        }
        if (node instanceof Parent parent) {
            for (Node child : parent.getChildrenUnmodifiable()) {
                Node found = firstIn(child);
                if (found != null) {
                    return found;
                }
            }
        }
        return null;
    }

    /** Where its contents go. */
    public VBox body() {
        return body;
    }

    /** Whether the body itself takes the keyboard, so that arrow keys scroll it; for pages without controls in it. */
    public void setScrolledByKeys(boolean keys) {
        scroll.setFocusTraversable(keys);
    }

    /** Gives the body all the height there is, for pages with something in it that grows. */
    public void setFilled() {
        scroll.setFitToHeight(true);
    }

    /** Adds a button to the row at the foot. */
    public Button button(String text, Runnable pressed) {
        Button button = new Button(text);
        button.setAccessibleText(text);
        button.setMinWidth(USE_PREF_SIZE);
        button.setOnAction(e -> pressed.run());
        foot.getChildren().add(button);
        return button;
    }

    /** Says what happened, in words, and to a screen reader. */
    public void say(String text) {
        said.setText(text);
        said.setAccessibleText(text);
    }

    /** What was said last. */
    public String said() {
        return said.getText();
    }

    /** A paragraph in the body. */
    public static Label text(String text, String... styleClasses) {
        Label label = new Label(text);
        label.getStyleClass().add("page-text");
        label.getStyleClass().addAll(styleClasses);
        label.setWrapText(true);
        label.setMinHeight(USE_PREF_SIZE);
        return label;
    }

    private void follow(@Nullable Node focused) {
        if (focused != null && isWithin(focused, body)) {
            // after the layout that a new page still needs
            Platform.runLater(() -> show(focused));
        }
    }

    private static boolean isWithin(Node node, Node around) {
        for (Node at = node; at != null; at = at.getParent()) {
            if (at == around) {
                return true;
            }
        }
        return false;
    }

    private void show(Node node) {
        if (node.getScene() == null) {
            return;
        }
        Bounds place = body.sceneToLocal(node.localToScene(node.getBoundsInLocal()));
        double room = scroll.getViewportBounds().getHeight();
        double more = body.getHeight() - room;
        if (more <= 0) {
            return;
        }
        double top = scroll.getVvalue() * more;
        if (place.getMinY() - SCROLL_MARGIN < top) {
            scroll.setVvalue(Math.max(0, place.getMinY() - SCROLL_MARGIN) / more);
        } else if (place.getMaxY() + SCROLL_MARGIN > top + room) {
            scroll.setVvalue(Math.min(more, place.getMaxY() + SCROLL_MARGIN - room) / more);
        }
    }
}
