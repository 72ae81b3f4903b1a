package fusetale.desk.kit;

import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.stage.Window;
import org.testfx.api.FxRobot;
import org.testfx.robot.KeyboardRobot;
import org.testfx.util.WaitForAsyncUtils;

/**
 * Quick hands on the keyboard: the library's own wait five times for the window's thread after every key that goes down and after every
 * one that comes up, which is most of the time of a test that types a lot.
 */
public final class Hands {
    /** So often the window's thread is waited for, 10 ms apart: long enough for a pulse, which lays out and paints. */
    private static final int ROUNDS = 3;

    private Hands() {}

    /** Presses keys together and lets go of them, the last one first. */
    public static void push(FxRobot robot, KeyCode... codes) {
        KeyboardRobot keyboard = robot.robotContext().getKeyboardRobot();
        keyboard.pressNoWait(codes);
        for (int k = codes.length - 1; k >= 0; k--) {
            keyboard.releaseNoWait(codes[k]);
        }
        WaitForAsyncUtils.waitForFxEvents(ROUNDS);
    }

    /** Presses keys one after the other. */
    public static void pushEach(FxRobot robot, KeyCode... codes) {
        for (KeyCode code : codes) {
            push(robot, code);
        }
    }

    /** Types letters into whatever has the keyboard, which each of them may move. */
    public static void type(FxRobot robot, String text) {
        text.chars().forEach(letter -> {
            Scene scene = focused(robot).getScene();
            robot.robotContext().getBaseRobot().typeKeyboard(scene, KeyCode.UNDEFINED, Character.toString(letter));
            WaitForAsyncUtils.waitForFxEvents(1);
        });
        WaitForAsyncUtils.waitForFxEvents(ROUNDS);
    }

    private static Window focused(FxRobot robot) {
        return robot.listWindows().stream()
                .filter(Window::isFocused)
                .findFirst()
                .orElseGet(robot::targetWindow);
    }
}
