package fusetale.desk;

import java.util.List;
import java.util.Locale;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Application;
import javafx.stage.Stage;

/** The program with a window. */
public final class DeskApp extends Application {
    /**
     * Opens the window, and comes back when it is closed.
     *
     * @param arguments a circuit file and what is supposed of it; none for the first screen
     * @return false where there is no display to open one on
     */
    public static boolean open(String[] arguments) {
        if (!mayHaveDisplay()) {
            return false;
        }
        // the libraries lie beside the jar on the class path, which is all that this library warns of
        Logger.getLogger("javafx").setLevel(Level.SEVERE);
        try {
            Application.launch(DeskApp.class, arguments);
            return true;
        } catch (UnsupportedOperationException noDisplay) {
            return false;
        }
    }

    /** On Linux a display has a name; elsewhere there is one. */
    private static boolean mayHaveDisplay() {
        boolean linux =
                System.getProperty("os.name", "").toLowerCase(Locale.ROOT).contains("linux");
        boolean inMemory = System.getProperty("glass.platform") != null;
        return !linux || inMemory || named("DISPLAY") || named("WAYLAND_DISPLAY");
    }

    private static boolean named(String variable) {
        String value = System.getenv(variable);
        return value != null && !value.isBlank();
    }

    @Override
    public void start(Stage stage) {
        List<String> arguments = getParameters().getRaw();
        new Program(stage).begin(arguments);
    }
}
