package fusetale.desk;

import fusetale.circuit.CircuitFile;
import fusetale.circuit.CircuitReader;
import fusetale.desk.kit.Faces;
import fusetale.desk.kit.Palette;
import fusetale.desk.kit.Scaled;
import fusetale.desk.state.BenchState;
import fusetale.desk.state.DeskModel;
import fusetale.desk.state.Workers;
import fusetale.report.drawing.SymbolStyle;
import fusetale.store.Preferences;
import java.nio.file.Path;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.stage.Stage;

/** The program with a window. */
public final class DeskApp extends Application {
    @Override
    public void start(Stage stage) {
        Faces.load();
        Path file = Path.of(getParameters().getRaw().get(0));
        CircuitFile read = CircuitReader.withShippedParts().read(file);
        DeskModel model = new DeskModel(
                new Workers(Platform::runLater, e -> e.printStackTrace()),
                BenchState.atFirst(file, java.util.Objects.requireNonNull(read.circuit())));
        Window window = new Window(model, new Desk() {
            @Override
            public Preferences preferences() {
                return Preferences.USUAL;
            }

            @Override
            public SymbolStyle symbols() {
                return SymbolStyle.IEC_60617;
            }

            @Override
            public void take(Command command) {}
        });
        Scaled scaled = new Scaled(window);
        scaled.setStyle(Palette.LIGHT.style());
        Scene scene = new Scene(scaled, 1280, 720);
        scene.getStylesheets().add(Faces.class.getResource("desk.css").toExternalForm());
        stage.setScene(scene);
        stage.setTitle("Fusetale");
        stage.show();
    }
}
