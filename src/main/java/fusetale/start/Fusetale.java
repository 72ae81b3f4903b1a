package fusetale.start;

import fusetale.cli.Main;
import fusetale.desk.DeskApp;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Where the program begins: a circuit file or nothing opens the window, anything else is a command. */
public final class Fusetale {
    private Fusetale() {}

    /** Opens the window, or runs a command and ends the program with its exit code. */
    public static void main(String[] arguments) {
        boolean wantsWindow = arguments.length == 0 || isCircuitFile(arguments[0]);
        if (!wantsWindow) {
            Main.main(arguments);
            return;
        }
        if (!DeskApp.open(arguments)) {
            Optional<String> file = Arrays.stream(arguments).findFirst();
            List<String> sentence = Arrays.stream(arguments).skip(1).toList();
            Main.withoutDisplay(file, sentence);
        }
    }

    private static boolean isCircuitFile(String argument) {
        String name = argument.toLowerCase(Locale.ROOT);
        return name.endsWith(".yaml") || name.endsWith(".yml");
    }
}
