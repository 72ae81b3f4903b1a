package fusetale.desk.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import fusetale.desk.kit.Hands;
import fusetale.desk.kit.OnScreen;
import fusetale.desk.kit.Palette;
import fusetale.store.Preferences;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javafx.print.Printer;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

@ExtendWith(ApplicationExtension.class)
class SheetViewTest {
    private final List<List<SheetPage>> printed = new ArrayList<>();
    private Printing.Result result = Printing.Result.SENT;
    private int saved;
    private @Nullable Stage stage;

    @Start
    void start(Stage shown) {
        stage = shown;
        List<SheetPage> pages =
                List.of(new SheetPage(SheetViewTest::png, "one"), new SheetPage(SheetViewTest::png, "two"));
        Printing printing = (of, title) -> {
            printed.add(of);
            return result;
        };
        OnScreen.show(
                Objects.requireNonNull(stage),
                new SheetView("Bench sheet", pages, printing, () -> saved++, () -> {}),
                Palette.LIGHT,
                1);
    }

    private static byte[] png(double scale) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            ImageIO.write(new BufferedImage(112, 79, BufferedImage.TYPE_BYTE_GRAY), "png", out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    private List<String> texts() {
        return OnScreen.on(
                () -> OnScreen.texts(Objects.requireNonNull(stage).getScene().getRoot()));
    }

    @Test
    void enterPrintsAllPages(FxRobot robot) {
        Hands.push(robot, KeyCode.ENTER);

        assertThat(printed).singleElement().satisfies(pages -> assertThat(pages).hasSize(2));
        assertThat(texts()).contains("Sent to the printer.");
    }

    @Test
    void whereThereIsNoPrinterThatIsSaidAndThePdfIsTheNextStep(FxRobot robot) {
        result = Printing.Result.NO_PRINTER;
        Hands.push(robot, KeyCode.ENTER);

        assertThat(texts()).anyMatch(t -> t.contains("no printer"));
        Node owner = OnScreen.on(() -> Objects.requireNonNull(stage).getScene().getFocusOwner());
        assertThat(((Button) owner).getText()).contains("PDF");
        Hands.push(robot, KeyCode.SPACE);
        assertThat(saved).isEqualTo(1);
    }

    @Test
    void aSystemWithoutPrintersSaysSo() {
        assumeThat(OnScreen.on(() -> Printer.getAllPrinters().isEmpty())).isTrue();

        assertThat(OnScreen.on(() -> new SystemPrinting(null, Preferences.Paper.A4).print(List.of(), "a sheet")))
                .isEqualTo(Printing.Result.NO_PRINTER);
    }
}
