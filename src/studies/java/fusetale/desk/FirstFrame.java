package fusetale.desk;

import fusetale.store.Store;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.util.List;
import java.util.Locale;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.layout.Pane;
import javafx.stage.Stage;

/**
 * Time from the start of the Java machine to the first laid-out frame, and memory after many suppositions. Argument: {@code empty}
 * for a window with nothing in it, or a circuit file, then perhaps how many suppositions to ask one after the other.
 */
public final class FirstFrame {
    private FirstFrame() {}

    /** Measures. */
    public static void main(String[] arguments) {
        Application.launch(Frame.class, arguments);
    }

    /** Opens a window and prints how long that took. */
    public static final class Frame extends Application {
        private int asked;

        @Override
        public void start(Stage stage) throws IOException {
            List<String> arguments = getParameters().getRaw();
            int suppositions = arguments.size() > 1 ? Integer.parseInt(arguments.get(1)) : 0;
            System.setProperty(
                    Store.PROPERTY, Files.createTempDirectory("fusetale-frame").toString());
            Program program = new Program(stage);
            if (arguments.get(0).equals("empty")) {
                stage.setScene(new Scene(new Pane(), 1280, 720));
                stage.show();
            } else {
                program.begin(arguments.subList(0, 1));
            }
            stage.getScene().addPostLayoutPulseListener(new Runnable() {
                private boolean told;

                @Override
                public void run() {
                    if (!told) {
                        told = true;
                        long started = ManagementFactory.getRuntimeMXBean().getStartTime();
                        System.out.printf(Locale.ROOT, "first frame %d ms%n", System.currentTimeMillis() - started);
                        if (suppositions == 0) {
                            Platform.exit();
                        } else {
                            Platform.runLater(() -> ask(program.opened().orElseThrow(), suppositions));
                        }
                    }
                }
            });
        }

        private void ask(OpenRepair repair, int count) {
            repair.model().workingProperty().addListener((property, before, now) -> {
                if (!now.busy()) {
                    Platform.runLater(() -> next(repair, count));
                }
            });
            // the board itself may have been answered before its window was painted
            if (!repair.model().workingProperty().get().busy()) {
                next(repair, count);
            }
        }

        private void next(OpenRepair repair, int count) {
            if (asked % 100 == 0) {
                System.gc();
                long used = Runtime.getRuntime().totalMemory()
                        - Runtime.getRuntime().freeMemory();
                System.out.printf(Locale.ROOT, "%d suppositions, %.0f MB in use%n", asked, used / 1e6);
            }
            if (asked == count) {
                Platform.exit();
                return;
            }
            asked++;
            repair.window().commands().say("r1 drifted x" + String.format(Locale.ROOT, "%.3f", 1.1 + 0.001 * asked));
        }
    }
}
