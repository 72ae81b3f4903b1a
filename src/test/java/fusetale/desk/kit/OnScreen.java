package fusetale.desk.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Predicate;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.layout.Region;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import org.testfx.util.WaitForAsyncUtils;

/** A view in a window as the product shows it. */
public final class OnScreen {
    private OnScreen() {}

    /** Shows a view at 1280 by 720. */
    public static void show(Stage stage, Region view, Palette palette, double factor) {
        Faces.load();
        Scaled scaled = new Scaled(view);
        scaled.factorProperty().set(factor);
        scaled.getStyleClass().add("root");
        scaled.setStyle(palette.style());
        Scene scene = new Scene(scaled, 1280, 720);
        scene.getStylesheets()
                .add(Objects.requireNonNull(OnScreen.class.getResource("/fusetale/desk/kit/desk.css"))
                        .toExternalForm());
        stage.setScene(scene);
        stage.show();
        scaled.applyCss();
        scaled.layout();
    }

    /** Does something on the window's own thread and waits for it and what follows from it. */
    public static <T> T on(Callable<T> work) {
        try {
            T result = WaitForAsyncUtils.asyncFx(work).get(30, TimeUnit.SECONDS);
            WaitForAsyncUtils.waitForFxEvents();
            return result;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        } catch (ExecutionException | TimeoutException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Everything within that fits. */
    public static List<Node> all(Node root, Predicate<Node> fits) {
        List<Node> found = new ArrayList<>();
        gather(root, fits, found);
        return found;
    }

    private static void gather(Node node, Predicate<Node> fits, List<Node> found) {
        if (!node.isVisible()) {
            return;
        }
        if (fits.test(node)) {
            found.add(node);
        }
        if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(child -> gather(child, fits, found));
        }
    }

    /** The texts that are shown. */
    public static List<String> texts(Node root) {
        return all(root, Text.class::isInstance).stream()
                .map(n -> ((Text) n).getText())
                .toList();
    }
}
