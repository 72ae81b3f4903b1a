package fusetale.desk.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.ref.WeakReference;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** A page that comes and goes. */
@ExtendWith(ApplicationExtension.class)
class PageTest {
    private final StackPane root = new StackPane();

    @Start
    void start(Stage stage) {
        stage.setScene(new Scene(root, 600, 400));
        stage.show();
    }

    /** The scene stays as long as the program runs. */
    @Test
    void aPageThatWasLeftIsForgotten(FxRobot robot) throws InterruptedException {
        List<WeakReference<Page>> pages = new ArrayList<>();
        for (int k = 0; k < 5; k++) {
            robot.interact(() -> {
                Page page = new Page("Heading", () -> {});
                Button button = new Button("A button");
                page.body().getChildren().add(button);
                pages.add(new WeakReference<>(page));
                root.getChildren().setAll(page);
                button.requestFocus();
            });
            WaitForAsyncUtils.waitForFxEvents();
            robot.interact(() -> root.getChildren().setAll(new Button("Another")));
            WaitForAsyncUtils.waitForFxEvents();
        }
        for (int k = 0; k < 50 && left(pages) > 1; k++) {
            System.gc();
            Thread.sleep(20);
        }

        // the last one may still be known to whatever painted it
        assertThat(left(pages)).isLessThanOrEqualTo(1);
    }

    private static long left(List<WeakReference<Page>> pages) {
        return pages.stream().filter(p -> !p.refersTo(null)).count();
    }
}
