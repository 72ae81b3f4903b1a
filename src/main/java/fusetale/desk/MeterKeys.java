package fusetale.desk;

import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/** Keys with which a reading can begin. */
final class MeterKeys {
    private MeterKeys() {}

    /** Whether a key types a figure, on either row of figures. */
    static boolean isFigure(KeyEvent event) {
        return event.getCode().isDigitKey() || event.getCode() == KeyCode.DECIMAL;
    }
}
