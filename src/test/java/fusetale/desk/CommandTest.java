package fusetale.desk;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.explore.Words;
import java.util.Arrays;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.junit.jupiter.api.Test;

/** One table from key to command. */
class CommandTest {
    private static KeyEvent key(KeyCode code, String text, boolean shift, boolean control, boolean alt) {
        return new KeyEvent(KeyEvent.KEY_PRESSED, text, text, code, shift, control, alt, false);
    }

    @Test
    void noTwoCommandsShareAKey() {
        assertThat(Arrays.stream(Command.values()).map(Command::keys)).doesNotHaveDuplicates();
    }

    @Test
    void everyCommandSaysWhatItDoes() {
        Words words = Words.of(Command.class);

        assertThat(Command.values()).allSatisfy(c -> assertThat(words.say("command." + c)).isNotBlank());
    }

    @Test
    void lettersAreCommandsAndCanBeTurnedOff() {
        assertThat(Command.of(key(KeyCode.S, "s", false, false, false), true)).contains(Command.SUPPOSE);
        assertThat(Command.of(key(KeyCode.S, "s", false, false, false), false)).isEmpty();
        assertThat(Command.of(key(KeyCode.S, "s", false, false, true), false)).contains(Command.SUPPOSE);
        assertThat(Command.of(key(KeyCode.DIGIT4, "4", false, false, false), true)).contains(Command.AC_VOLTS);
        assertThat(Command.of(key(KeyCode.ESCAPE, "", false, false, false), false)).contains(Command.STOP);
    }

    @Test
    void undoAndRedoGoByLetterAndByControl() {
        assertThat(Command.of(key(KeyCode.Z, "z", false, false, false), true)).contains(Command.UNDO);
        assertThat(Command.of(key(KeyCode.Z, "Z", true, false, false), true)).contains(Command.REDO);
        assertThat(Command.of(key(KeyCode.Z, "", false, true, false), true)).contains(Command.UNDO);
        assertThat(Command.of(key(KeyCode.Y, "", false, true, false), true)).contains(Command.REDO);
        assertThat(Command.of(key(KeyCode.SLASH, "?", true, false, false), true)).contains(Command.KEYS);
        assertThat(Command.of(key(KeyCode.SLASH, "/", false, false, false), true)).contains(Command.FIND);
    }
}
