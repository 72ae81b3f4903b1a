package fusetale.desk;

import java.util.List;
import java.util.Optional;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/**
 * Everything a key does: one table from key to command; its label stands in the texts under {@code command.NAME}. Letters are for
 * outside text fields.
 */
enum Command {
    SUPPOSE("S", KeyCode.S),
    PUT_BACK_ALL("B", KeyCode.B),
    OHMS("1", KeyCode.DIGIT1),
    DIODE_TEST("2", KeyCode.DIGIT2),
    DC_VOLTS("3", KeyCode.DIGIT3),
    AC_VOLTS("4", KeyCode.DIGIT4),
    METER("M", KeyCode.M),
    POWER("O", KeyCode.O),
    LEADS("L", KeyCode.L),
    SWAP_LEADS("X", KeyCode.X),
    READING("R", KeyCode.R),
    CANNOT_REACH("U", KeyCode.U),
    WAVES("V", KeyCode.V),
    BARS("C", KeyCode.C),
    AFTERMATH("H", KeyCode.H),
    DRAWING_ONLY("D", KeyCode.D),
    FIT("F", KeyCode.F),
    ZOOM_IN("+", KeyCode.PLUS, KeyCode.ADD, KeyCode.EQUALS),
    ZOOM_OUT("-", KeyCode.MINUS, KeyCode.SUBTRACT),
    FIND("/", KeyCode.SLASH, KeyCode.DIVIDE),
    SHEET("P", KeyCode.P),
    EXPORT("E", KeyCode.E),
    UNDO("Z", KeyCode.Z),
    REDO("Shift+Z"),
    AGAIN("A", KeyCode.A),
    KEYS("?"),
    PREFERENCES(",", KeyCode.COMMA),
    OPEN("Ctrl+O"),
    COPY("Ctrl+C"),
    TEXT_LARGER("Ctrl +"),
    TEXT_SMALLER("Ctrl -"),
    TEXT_AS_DRAWN("Ctrl 0"),
    STOP("Esc");

    private final String keys;
    private final List<KeyCode> codes;

    Command(String keys, KeyCode... codes) {
        this.keys = keys;
        this.codes = List.of(codes);
    }

    /** As the key strip and the page of all keys show it. */
    String keys() {
        return keys;
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
        for (Command command : values()) {
            if (command.codes.contains(code)) {
                return Optional.of(command);
            }
        }
        return Optional.empty();
    }

    private static Optional<Command> withControl(KeyEvent event, KeyCode code) {
        return Optional.ofNullable(
                switch (code) {
                    case O -> OPEN;
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
