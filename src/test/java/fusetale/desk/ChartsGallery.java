package fusetale.desk;

import fusetale.circuit.Circuit;
import fusetale.circuit.MeterFunction;
import fusetale.desk.aftermath.AftermathView;
import fusetale.desk.bars.BarsView;
import fusetale.desk.kit.Faces;
import fusetale.desk.kit.Palette;
import fusetale.desk.kit.Scaled;
import fusetale.desk.strip.HowFarView;
import fusetale.desk.waves.WaveRow;
import fusetale.desk.waves.WaveView;
import fusetale.explore.Outcome;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.image.PixelReader;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import javax.imageio.ImageIO;

/**
 * Paints every view of strip, waves, bars and aftermath from real circuits, in light, dark and at 150 %, to look at.
 * Argument: the folder for the pictures.
 */
public final class ChartsGallery {
    private ChartsGallery() {}

    /** Paints all. */
    public static void main(String[] folder) {
        Application.launch(Window.class, folder);
    }

    /** The window that is painted in. */
    public static final class Window extends Application {
        private record Machine(String name, List<Outcome> outcomes) {}

        @Override
        public void start(Stage stage) {
            Faces.load();
            Path folder = Path.of(getParameters().getRaw().get(0));
            Circuit light = Answers.circuit("first-light");
            Circuit ferry = Answers.circuit("night-ferry");
            List<Machine> machines = List.of(
                    new Machine(
                            "first-light",
                            List.of(Answers.outcome(light, true, "R2=open"), Answers.outcome(light, false, "R2=open"))),
                    new Machine(
                            "shorted-leg",
                            List.of(Answers.outcome(light, true, "BR1.leg1=short", "F1=wrong-rating:10A"))),
                    new Machine(
                            "night-ferry",
                            List.of(
                                    Answers.outcome(ferry, true, "BR201.leg1=short", "F201=wrong-rating:25A"),
                                    Answers.outcome(ferry, false, "BR201.leg1=short", "F201=wrong-rating:25A"))));
            for (Machine machine : machines) {
                for (boolean dark : new boolean[] {false, true}) {
                    for (double factor : new double[] {1, 1.5}) {
                        if (!dark || factor == 1) {
                            String tail = machine.name() + (dark ? "-dark" : "") + (factor > 1 ? "-150" : "");
                            paint(stage, folder, tail, machine.outcomes(), dark ? Palette.DARK : Palette.LIGHT, factor);
                        }
                    }
                }
            }
            Platform.exit();
        }

        private static void paint(
                Stage stage, Path folder, String tail, List<Outcome> outcomes, Palette palette, double factor) {
            HowFarView strip = new HowFarView();
            strip.setOutcomes(outcomes);
            WaveRow waves = new WaveRow();
            waves.setOutcome(outcomes.get(0));
            HBox both = new HBox(40, strip, waves);
            both.setStyle("-fx-padding: 8 20 8 20;");
            HBox.setHgrow(waves, Priority.ALWAYS);
            strip.setMinWidth(560);
            snap(stage, folder.resolve("strip-" + tail), both, palette, factor, 1280 * factor, 184 * factor);
            WaveView large = new WaveView();
            large.setModels(waves.models());
            if (!waves.models().isEmpty()) {
                large.setCursor(waves.models().get(0).seconds() * 0.3);
            }
            snap(stage, folder.resolve("waves-" + tail), large, palette, factor, 1280, 560);
            if (waves.models().size() > 1) {
                WaveView two = new WaveView();
                two.setModels(waves.models());
                two.showBeside(waves.models().get(waves.models().size() - 1));
                two.setCursor(waves.models().get(0).seconds() * 0.3);
                snap(stage, folder.resolve("waves2-" + tail), two, palette, factor, 1280, 560);
            }
            for (MeterFunction function : List.of(MeterFunction.DC_VOLTS, MeterFunction.OHMS)) {
                BarsView bars = new BarsView();
                bars.setOutcomes(outcomes);
                bars.show(function);
                snap(stage, folder.resolve("bars-" + function.name() + "-" + tail), bars, palette, factor, 1280, 560);
            }
            AftermathView aftermath = new AftermathView();
            aftermath.setOutcome(outcomes.get(0));
            aftermath.stepOn();
            snap(stage, folder.resolve("aftermath-" + tail), aftermath, palette, factor, 1280, 560);
        }

        private static void snap(
                Stage stage, Path file, Region view, Palette palette, double factor, double width, double height) {
            Scaled scaled = new Scaled(view);
            scaled.factorProperty().set(factor);
            StackPane root = new StackPane(scaled);
            root.getStyleClass().add("desk");
            root.setStyle(palette.style());
            Scene scene = new Scene(root, width, height);
            scene.getStylesheets()
                    .add(Objects.requireNonNull(Window.class.getResource("/fusetale/desk/kit/desk.css"))
                            .toExternalForm());
            stage.setScene(scene);
            stage.show();
            root.applyCss();
            root.layout();
            root.layout();
            WritableImage image = scene.snapshot(null);
            // a second pass: charts settle their axes in the first
            root.applyCss();
            root.layout();
            image = scene.snapshot(image);
            write(image, file.resolveSibling(file.getFileName() + ".png"));
            root.getChildren().clear();
        }

        private static void write(WritableImage image, Path file) {
            int width = (int) image.getWidth();
            int height = (int) image.getHeight();
            BufferedImage buffered = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
            PixelReader pixels = image.getPixelReader();
            for (int y = 0; y < height; y++) {
                for (int x = 0; x < width; x++) {
                    buffered.setRGB(x, y, pixels.getArgb(x, y));
                }
            }
            try {
                Files.createDirectories(Objects.requireNonNull(file.getParent()));
                ImageIO.write(buffered, "png", file.toFile());
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }
}
