package fusetale.start;

import fusetale.cli.Main;

/** Where the program begins. */
public final class Fusetale {
    private Fusetale() {}

    /** Runs a command. */
    public static void main(String[] arguments) {
        Main.main(arguments);
    }
}
