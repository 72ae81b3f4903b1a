package fusetale.desk;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/**
 * Everything a key does: one table from key to command; its label stands in the texts under {@code command.NAME}. Letters are for
 * outside text fields.
 */
enum Command {
    PLACE_READ("Ctrl+1"),
    PLACE_MATCH("Ctrl+2"),
    NEXT_PLACE("Ctrl+Tab"),
    SUPPOSE("S"),
    PUT_BACK_ALL("B"),
    OHMS("1"),
    DIODE_TEST("2"),
    DC_VOLTS("3"),
    AC_VOLTS("4"),
    METER("M"),
    POWER("O"),
    LEADS("L"),
    SWAP_LEADS("X"),
    READING("R"),
    WHAT_NEXT("N"),
    SEEN("I"),
    CANNOT_REACH("U"),
    WAVES("V"),
    BARS("C"),
    AFTERMATH("H"),
    DRAWING_ONLY("D"),
    FIT("F"),
    FOLD("G"),
    ZOOM_IN("+"),
    ZOOM_OUT("-"),
    FIND("/"),
    SHEET("P"),
    EXPORT("E"),
    UNDO("Z"),
    REDO("Shift+Z"),
    AGAIN("A"),
    KEYS("?"),
    PREFERENCES(","),
    OPEN("Ctrl+O"),
    OPEN_READINGS("Ctrl+R"),
    SAVE_READINGS("Ctrl+S"),
    COPY("Ctrl+C"),
    TEXT_LARGER("Ctrl +"),
    TEXT_SMALLER("Ctrl -"),
    TEXT_AS_DRAWN("Ctrl 0"),
    STOP("Esc");

    private static final Map<KeyCode, Command> BY_KEY = Map.ofEntries(
            Map.entry(KeyCode.S, SUPPOSE),
            Map.entry(KeyCode.B, PUT_BACK_ALL),
            Map.entry(KeyCode.DIGIT1, OHMS),
            Map.entry(KeyCode.DIGIT2, DIODE_TEST),
            Map.entry(KeyCode.DIGIT3, DC_VOLTS),
            Map.entry(KeyCode.DIGIT4, AC_VOLTS),
            Map.entry(KeyCode.M, METER),
            Map.entry(KeyCode.O, POWER),
            Map.entry(KeyCode.L, LEADS),
            Map.entry(KeyCode.X, SWAP_LEADS),
            Map.entry(KeyCode.R, READING),
            Map.entry(KeyCode.N, WHAT_NEXT),
            Map.entry(KeyCode.I, SEEN),
            Map.entry(KeyCode.U, CANNOT_REACH),
            Map.entry(KeyCode.V, WAVES),
            Map.entry(KeyCode.C, BARS),
            Map.entry(KeyCode.H, AFTERMATH),
            Map.entry(KeyCode.D, DRAWING_ONLY),
            Map.entry(KeyCode.F, FIT),
            Map.entry(KeyCode.G, FOLD),
            Map.entry(KeyCode.PLUS, ZOOM_IN),
            Map.entry(KeyCode.ADD, ZOOM_IN),
            Map.entry(KeyCode.EQUALS, ZOOM_IN),
            Map.entry(KeyCode.MINUS, ZOOM_OUT),
            Map.entry(KeyCode.SUBTRACT, ZOOM_OUT),
            Map.entry(KeyCode.SLASH, FIND),
            Map.entry(KeyCode.DIVIDE, FIND),
            Map.entry(KeyCode.P, SHEET),
            Map.entry(KeyCode.E, EXPORT),
            Map.entry(KeyCode.Z, UNDO),
            Map.entry(KeyCode.A, AGAIN),
            Map.entry(KeyCode.COMMA, PREFERENCES));

    /** What does the same in every place. */
    private static final Set<Command> EVERYWHERE = Set.of(
            UNDO,
            REDO,
            KEYS,
            PREFERENCES,
            OPEN,
            OPEN_READINGS,
            SAVE_READINGS,
            COPY,
            TEXT_LARGER,
            TEXT_SMALLER,
            TEXT_AS_DRAWN);

    private final String keys;

    Command(String keys) {
        this.keys = keys;
    }

    /** As the key strip and the page of all keys show it. */
    String keys() {
        return keys;
    }

    /** Whether it does the same in every place. */
    boolean everywhere() {
        return EVERYWHERE.contains(this);
    }

    /** Whether it changes the size of all text, as it does on pages too. */
    boolean sizesText() {
        return this == TEXT_LARGER || this == TEXT_SMALLER || this == TEXT_AS_DRAWN;
    }

    /**
     * The command of a key; empty where it is none.
     *
     * @param letters whether single letters are commands; where not, they are together with Alt
     */
    static Optional<Command> of(KeyEvent event, boolean letters) {
        KeyCode code = event.getCode();
        if (event.isShortcutDown()) {
            return withControl(event, code);
        }
        if (code == KeyCode.ESCAPE) {
            return Optional.of(STOP);
        }
        if (event.isAltDown() == letters) {
            return Optional.empty();
        }
        if (code == KeyCode.Z && event.isShiftDown()) {
            return Optional.of(REDO);
        }
        if ("?".equals(event.getText()) || (code == KeyCode.SLASH && event.isShiftDown())) {
            return Optional.of(KEYS);
        }
        return Optional.ofNullable(BY_KEY.get(code));
    }

    private static Optional<Command> withControl(KeyEvent event, KeyCode code) {
        return Optional.ofNullable(
                switch (code) {
                    case DIGIT1, NUMPAD1 -> PLACE_READ;
                    case DIGIT2, NUMPAD2 -> PLACE_MATCH;
                    case TAB -> NEXT_PLACE;
                    case O -> OPEN;
                    case R -> OPEN_READINGS;
                    case S -> SAVE_READINGS;
                    case C -> COPY;
                    case Z -> event.isShiftDown() ? REDO : UNDO;
                    case Y -> REDO;
                    case P -> SHEET;
                    case F -> FIND;
                    case PLUS, ADD, EQUALS -> TEXT_LARGER;
                    case MINUS, SUBTRACT -> TEXT_SMALLER;
                    case DIGIT0, NUMPAD0 -> TEXT_AS_DRAWN;
                    default -> null;
                });
    }
}
