package fusetale.desk.help;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.desk.kit.OnScreen;
import fusetale.desk.kit.Palette;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import javafx.stage.Stage;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

@ExtendWith(ApplicationExtension.class)
class HelpViewTest {
    private @Nullable Stage stage;

    @Start
    void start(Stage shown) {
        stage = shown;
        List<KeyLine> keys = List.of(new KeyLine("S", "suppose"), new KeyLine("Z", "undo"));
        OnScreen.show(
                Objects.requireNonNull(stage), new HelpView(keys, Glossary.all(Map.of()), () -> {}), Palette.LIGHT, 1);
    }

    private List<String> texts() {
        return OnScreen.on(
                () -> OnScreen.texts(Objects.requireNonNull(stage).getScene().getRoot()));
    }

    @Test
    void firstLettersFindAKeyOrAWord(FxRobot robot) {
        assertThat(texts()).contains("suppose", "undo", "Regulator");

        robot.write("rec");
        assertThat(texts()).contains("Rectifier, bridge").doesNotContain("suppose", "undo", "Regulator");
    }

    @Test
    void whatIsNoWordIsSaid(FxRobot robot) {
        robot.write("xylo");

        assertThat(texts()).anyMatch(t -> t.contains("\"xylo\""));
    }
}
