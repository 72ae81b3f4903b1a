package fusetale.desk;

import fusetale.store.Preferences;
import fusetale.store.Store;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Platform;
import javafx.stage.Stage;

/** The program with a window. */
public final class DeskApp {
    private DeskApp() {}

    /**
     * Opens the window. The program goes on until it is closed.
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
            start(List.of(arguments), begun -> {});
            return true;
        } catch (UnsupportedOperationException noDisplay) {
            return false;
        }
    }

    /** Reads the file while JavaFX starts; both take about as long. Tells, on the window's thread, of the program once it has begun. */
    static void start(List<String> arguments, Consumer<Program> begun) {
        Supplier<Opened> read = reading(arguments);
        Platform.startup(() -> {
            Program program = new Program(new Stage());
            program.begin(arguments, read);
            begun.accept(program);
        });
    }

    private static Supplier<Opened> reading(List<String> arguments) {
        if (arguments.isEmpty()) {
            return () -> {
                throw new IllegalStateException("nothing was asked for");
            };
        }
        Path file = Path.of(arguments.get(0));
        Preferences liked = Store.here().preferences().value();
        return CompletableFuture.supplyAsync(() -> Opened.read(file, liked), Opened::away)::join;
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
}
