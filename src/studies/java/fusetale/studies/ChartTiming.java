package fusetale.studies;

import fusetale.desk.Answers;
import fusetale.desk.kit.Faces;
import fusetale.desk.kit.Palette;
import fusetale.desk.strip.HowFarView;
import fusetale.desk.waves.WaveRow;
import fusetale.explore.Outcome;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.stage.Stage;

/**
 * How long strip and small waves take from new values to a painted picture, as while a value is dragged: 300 changes between
 * outcomes of one capacitor drying out, the first 60 not counted. Argument: a shipped circuit and a capacitor, such as
 * {@code night-ferry C203}.
 */
public final class ChartTiming {
    private ChartTiming() {}

    /** Prints medians and 95th percentiles in milliseconds. */
    public static void main(String[] circuitAndPart) {
        Application.launch(Window.class, circuitAndPart);
    }

    /** The window that is painted in. */
    public static final class Window extends Application {
        private static final int CHANGES = 300;
        private static final int WARM_UP = 60;

        @Override
        public void start(Stage stage) {
            Faces.load();
            String circuit = getParameters().getRaw().get(0);
            String part = getParameters().getRaw().get(1);
            List<Outcome> outcomes = new ArrayList<>();
            for (int left = 5; left <= 80; left += 15) {
                outcomes.add(Answers.outcome(Answers.circuit(circuit), true, part + "=dried-out:" + left + "%"));
            }
            HowFarView strip = new HowFarView();
            strip.setMinWidth(560);
            WaveRow waves = new WaveRow();
            HBox.setHgrow(waves, Priority.ALWAYS);
            HBox both = new HBox(40, strip, waves);
            both.getStyleClass().add("desk");
            both.setStyle(Palette.LIGHT.style());
            Scene scene = new Scene(both, 1240, 168);
            scene.getStylesheets()
                    .add(Objects.requireNonNull(Palette.class.getResource("/fusetale/desk/kit/desk.css"))
                            .toExternalForm());
            stage.setScene(scene);
            stage.show();
            double[] set = new double[CHANGES];
            double[] cpu = new double[CHANGES];
            double[] paint = new double[CHANGES];
            WritableImage image = scene.snapshot(null);
            for (int k = 0; k < WARM_UP + CHANGES; k++) {
                Outcome next = outcomes.get(k % outcomes.size());
                long startCpu = cpuNanos();
                long start = System.nanoTime();
                strip.setOutcomes(List.of(next));
                waves.setOutcome(next);
                both.applyCss();
                both.layout();
                long laidCpu = cpuNanos();
                long laid = System.nanoTime();
                scene.snapshot(image);
                long painted = System.nanoTime();
                if (k >= WARM_UP) {
                    set[k - WARM_UP] = (laid - start) / 1e6;
                    cpu[k - WARM_UP] = (laidCpu - startCpu) / 1e6;
                    paint[k - WARM_UP] = (painted - laid) / 1e6;
                }
            }
            PrintStream out = System.out;
            out.printf("%s %s, %d rows%n", circuit, part, strip.rows().rows().size());
            out.printf("set values, style, lay out: %s%n", figures(set));
            out.printf("the same, processor time of its thread: %s%n", figures(cpu));
            out.printf("paint: %s%n", figures(paint));
            Platform.exit();
        }

        private static long cpuNanos() {
            return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        }

        private static String figures(double[] milliseconds) {
            double[] sorted = milliseconds.clone();
            Arrays.sort(sorted);
            return String.format(
                    "median %.1f ms, 95th percentile %.1f ms",
                    sorted[sorted.length / 2], sorted[(int) (0.95 * sorted.length)]);
        }
    }
}
