package fusetale.desk;

import javafx.scene.input.KeyEvent;

/** Keys with which a reading can begin. */
final class MeterKeys {
    private MeterKeys() {}

    /** Whether a key types a figure, a point or a minus before one, on either row of figures; a plain comma opens the preferences. */
    static boolean begins(KeyEvent event) {
        return event.getCode().isDigitKey()
                || switch (event.getCode()) {
                    case DECIMAL, PERIOD, MINUS, SUBTRACT -> true;
                    default -> false;
                };
    }
}
