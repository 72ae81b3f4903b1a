package fusetale.desk;

import fusetale.store.Store;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.util.List;
import java.util.Locale;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.layout.Pane;
import javafx.stage.Stage;

/**
 * Time from the start of the Java machine to the first laid-out frame, to the first with the board's drawing, and to the first
 * with its readings; and memory after many suppositions. Argument: {@code empty} for a window with nothing in it, or a circuit
 * file, then perhaps how many suppositions to ask one after the other.
 */
public final class FirstFrame {
    private final int suppositions;
    private int asked;

    private FirstFrame(int suppositions) {
        this.suppositions = suppositions;
    }

    /** Measures. */
    public static void main(String[] arguments) throws IOException {
        System.setProperty(
                Store.PROPERTY, Files.createTempDirectory("fusetale-frame").toString());
        if (arguments[0].equals("empty")) {
            Platform.startup(FirstFrame::empty);
        } else {
            FirstFrame study = new FirstFrame(arguments.length > 1 ? Integer.parseInt(arguments[1]) : 0);
            DeskApp.start(List.of(arguments[0]), study::watch);
        }
    }

    private static void empty() {
        Stage stage = new Stage();
        stage.setScene(new Scene(new Pane(), 1280, 720));
        stage.show();
        stage.getScene().addPostLayoutPulseListener(() -> {
            say("first frame");
            Platform.runLater(Platform::exit);
        });
    }

    private static void say(String what) {
        long started = ManagementFactory.getRuntimeMXBean().getStartTime();
        System.out.printf(
                Locale.ROOT,
                "%-28s %6d ms, of which the window's thread worked %d ms%n",
                what,
                System.currentTimeMillis() - started,
                ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() / 1_000_000);
    }

    private void watch(Program program) {
        program.scene().addPostLayoutPulseListener(new Runnable() {
            private int told;

            @Override
            public void run() {
                if (told == 0) {
                    told = 1;
                    say("first frame");
                }
                OpenRepair repair = program.opened().orElse(null);
                if (told == 1
                        && repair != null
                        && !repair.window().board().drawing().empty()) {
                    told = 2;
                    say("first with the drawing");
                }
                if (told == 2
                        && repair != null
                        && repair.model().shownProperty().get().isPresent()) {
                    told = 3;
                    say("first with readings");
                    if (suppositions == 0) {
                        Platform.runLater(Platform::exit);
                    } else {
                        Platform.runLater(() -> ask(repair));
                    }
                }
            }
        });
    }

    private void ask(OpenRepair repair) {
        repair.model().workingProperty().addListener((property, before, now) -> {
            if (!now.busy()) {
                Platform.runLater(() -> next(repair));
            }
        });
        // the board itself may have been answered before its window was painted
        if (!repair.model().workingProperty().get().busy()) {
            next(repair);
        }
    }

    private void next(OpenRepair repair) {
        if (asked % 100 == 0) {
            System.gc();
            long used =
                    Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
            System.out.printf(Locale.ROOT, "%d suppositions, %.0f MB in use%n", asked, used / 1e6);
        }
        if (asked == suppositions) {
            Platform.exit();
            return;
        }
        asked++;
        repair.window().commands().say("r1 drifted x" + String.format(Locale.ROOT, "%.3f", 1.1 + 0.001 * asked));
    }
}
