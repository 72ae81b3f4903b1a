package fusetale.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;

/** The look is judged by eye; here only what a broken picture would break. */
class SupposePictureTest {
    private static final SupposePicture PICTURE = new SupposePicture(
            Made.shortedLeg(),
            List.of("BR201 leg 1 is shorted", "F201 holds a 25 A fuse"),
            "Made Up. Power on, mains 120 V.");

    @Test
    void pngHasBothHandsOnPaper() throws IOException {
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(PictureFile.PNG.bytes(PICTURE)));

        Map<Integer, Integer> pixels = new HashMap<>();
        for (int x = 0; x < image.getWidth(); x++) {
            for (int y = 0; y < image.getHeight(); y++) {
                pixels.merge(image.getRGB(x, y) & 0xFFFFFF, 1, Integer::sum);
            }
        }
        assertThat(pixels).as("ink, marker, paper of the palette").containsKeys(0x22303C, 0x9A3B06, 0xFCF9F0);
    }

    @Test
    void svgSaysInWordsWhatItShows() throws Exception {
        Document svg = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(PictureFile.SVG.bytes(PICTURE)));

        assertThat(svg.getElementsByTagName("title").item(0).getTextContent())
                .isEqualTo("Suppose BR201 leg 1 is shorted and F201 holds a 25 A fuse.");
        assertThat(svg.getElementsByTagName("desc").item(0).getTextContent())
                .contains("TP4 to gnd, d.c. volts: 45.53 V as built, 11.20 V as supposed");
    }

    @Test
    void svgIsTheSameEveryTime() {
        byte[] first = PictureFile.SVG.bytes(PICTURE);

        assertThat(PictureFile.SVG.bytes(PICTURE)).isEqualTo(first);
    }

    @Test
    void powerOffOutcomeWithoutWaveformsCanBePainted() {
        SupposePicture off = new SupposePicture(Made.powerOff(), List.of("D1 is shorted"), "Made Up. Power off.");

        assertThat(PictureFile.PNG.bytes(off)).isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"a.jpg", "a", "png", "a.svgz"})
    void otherEndingsAreNoPicture(String name) {
        assertThat(PictureFile.of(Path.of(name))).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"a.png", "dir/a.PNG", "b.Svg"})
    void endingsCountInAnyCase(String name) {
        assertThat(PictureFile.of(Path.of(name))).isPresent();
    }
}
