package fusetale.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The schematic as a picture, healthy and with what is supposed. */
class DrawingJourneyTest {
    private static final String FIRST_LIGHT = "circuits/first-light.yaml";
    private static final String FERRY = "circuits/night-ferry.yaml";

    @TempDir
    Path folder;

    @Test
    void inspectDrawsTheMachineAsBuilt() throws IOException {
        Path file = folder.resolve("first-light.svg");

        Typed typed = Typed.in("inspect", FIRST_LIGHT, "--drawing", file.toString(), "--symbols", "iec");

        assertThat(typed.code()).isZero();
        assertThat(typed.err()).contains("Picture: " + file);
        assertThat(Files.readString(file))
                .contains("<title>First Light</title>")
                .contains("As built. Symbols of IEC 60617, from memory of the standard.")
                .contains("C1, electrolytic, 4700 μF, between BR1, R1, R2 and ground gnd");
    }

    @Test
    void supposeDrawsWhatIsSupposedAndWhatComesOfIt() throws IOException {
        Path file = folder.resolve("first-light.svg");

        Typed typed = Typed.in(
                "suppose",
                FIRST_LIGHT,
                "BR1.leg1=short",
                "F1=wrong-rating:10A",
                "--draws=2",
                "--drawing",
                file.toString());

        assertThat(typed.code()).isZero();
        assertThat(Files.readString(file))
                .contains("<title>Suppose BR1 leg 1 is shorted and F1 holds a 10 A fuse. Power on.</title>")
                .contains("F1, fuse, 2 A slow, between J1.1 and BR1: 10 A fitted, drawing says 2 A");
    }

    @Test
    void drawingOfTheTableGameIsAsLargeAsItsPlanTwice() throws IOException {
        Path file = folder.resolve("night-ferry.png");

        Typed typed = Typed.in("inspect", FERRY, "--drawing", file.toString());

        assertThat(typed.code()).isZero();
        BufferedImage image = ImageIO.read(file.toFile());
        assertThat(image.getWidth()).isBetween(3000, 4000);
    }

    @Test
    void whatCannotBeDrawnIsRefusedBeforeAnyWork() {
        assertThat(Typed.in("inspect", FIRST_LIGHT, "--drawing", "a.jpg").err())
                .contains("A picture is a .png or a .svg file, not 'a.jpg'.");
        assertThat(Typed.in("suppose", FIRST_LIGHT, "R1=open", "--drawing", "a.png", "--symbols", "din")
                        .err())
                .contains("'din' is not known here: --symbols iec or --symbols ieee.");
        assertThat(Typed.in("inspect", FIRST_LIGHT, FERRY, "--drawing", "a.png").err())
                .contains("--drawing draws one circuit: name one file.");
    }
}
