package fusetale.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SheetJourneyTest {
    private static final String BOARD = "circuits/first-light.yaml";

    @TempDir
    Path folder;

    private String file(String name) {
        return folder.resolve(name).toString();
    }

    @Test
    void aSheetIsWrittenAndTheDangerToldFirst() throws IOException {
        Typed typed = Typed.in(
                "sheet", BOARD, "BR1.leg1=short", "F1=wrong-rating:10A", "--to", file("a.pdf"), "--draws", "2");

        assertThat(typed.code()).isZero();
        assertThat(typed.out()).startsWith("DO NOT POWER UP").contains("Bench sheet: First Light", "a.pdf");
        assertThat(typed.out().lines()).allMatch(l -> l.length() <= 100 || l.startsWith("Written"));
        assertThat(new String(Files.readAllBytes(folder.resolve("a.pdf")), StandardCharsets.ISO_8859_1))
                .startsWith("%PDF-");
    }

    @Test
    void picturesAreOneAPage() throws IOException {
        Typed typed = Typed.in("sheet", BOARD, "--to", file("a.png"), "--paper", "letter", "--draws", "2", "--json");
        JsonNode answer = new ObjectMapper().readTree(typed.out());

        assertThat(typed.code()).isZero();
        assertThat(answer.path("files")).hasSize(answer.path("pages").asInt());
        // 11 by 8.5 inches (ANSI/ASME Y14.1) at 150 in an inch
        assertThat(ImageIO.read(folder.resolve("a.png").toFile()).getWidth()).isEqualTo(1650);
        assertThat(answer.path("doNotPowerUp").asBoolean()).isFalse();
        assertThat(answer.path("powerOff")).isNotEmpty();
        assertThat(answer.path("powerOn").path(0).path("healthy").asText()).isNotBlank();
    }

    @Test
    void helpShowsOnlyWhatASheetHasAPlaceFor() {
        Typed typed = Typed.in("sheet", "--help");

        assertThat(typed.out())
                .contains("--between", "--series-lamp")
                .doesNotContain("--power", "--charged", "--function", "--amps", "--every-pair", "--observations");
    }

    @Test
    void whatCannotBeIsRefusedInWords() {
        Typed ending = Typed.in("sheet", BOARD, "--to", file("a.doc"));
        assertThat(ending.code()).isEqualTo(2);
        assertThat(ending.err()).contains("a.doc", ".pdf");

        for (String[] given : List.of(
                new String[] {"--power", "on"},
                new String[] {"--charged", "C1:30 V"},
                new String[] {"--function", "ohms"},
                new String[] {"--amps", "F1"},
                new String[] {"--every-pair", "BR1"},
                new String[] {"--observations", "all"})) {
            Typed noPlace = Typed.in("sheet", BOARD, "--to", file("a.pdf"), given[0], given[1]);
            assertThat(noPlace.code()).as(given[0]).isEqualTo(2);
            assertThat(noPlace.err()).contains("leave " + given[0] + " out");
        }

        Typed folderless = Typed.in("sheet", BOARD, "--to", file("none/a.pdf"), "--draws", "2");
        assertThat(folderless.code()).isEqualTo(2);
        assertThat(folderless.err()).contains("none");
        assertThat(folder).isEmptyDirectory();
    }
}
