package fusetale.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whole commands on the teaching board. */
class CommandJourneyTest {
    private static final String FIRST_LIGHT = "circuits/first-light.yaml";

    @TempDir
    private Path folder = Path.of("");

    @Test
    void withoutACommandItTellsWhatToTypeFirst() {
        Typed typed = Typed.in();

        assertThat(typed.code()).isZero();
        assertThat(typed.out()).contains("suppose circuits/night-ferry.yaml BR201.leg1=short");
    }

    @ParameterizedTest
    @ValueSource(strings = {"inspect", "readings", "suppose"})
    void everyCommandHasHelpWithoutUnfilledTexts(String command) {
        Typed typed = Typed.in(command, "--help");

        assertThat(typed.code()).isZero();
        assertThat(typed.out()).contains("Usage: fusetale " + command).doesNotContain("%%", "${");
    }

    @Test
    void helpFitsAHundredColumns() {
        assertThat(Typed.in("suppose", "--help").out().lines()).allMatch(line -> line.length() <= 100);
    }

    @Test
    void inspectCountsWhatIsInTheFile() {
        Typed typed = Typed.in("inspect", FIRST_LIGHT);

        assertThat(typed.code()).isZero();
        assertThat(typed.out()).contains("First Light").contains("7 parts").contains("5 test points");
    }

    @Test
    void inspectFitsAHundredColumns() {
        Typed typed = Typed.in("inspect", "circuits/night-ferry.yaml");

        assertThat(typed.out().lines()).isNotEmpty().allMatch(line -> line.length() <= 100);
    }

    @Test
    void inspectTellsWhatModelsAreInAFileOfThem() {
        Typed typed = Typed.in("inspect", "shared/parts/darlingtons.yaml");

        assertThat(typed.code()).isZero();
        assertThat(typed.out())
                .contains("darlingtons (3): TIP102, 2N6045, 2N6059")
                .contains("nothing wrong");
    }

    @Test
    void inspectOfModelsFitsAHundredColumns() {
        assertThat(Typed.in("inspect", "shared/parts/zeners.yaml", "shared/parts/connectors.yaml")
                        .out()
                        .lines())
                .hasSizeGreaterThan(5)
                .allMatch(line -> line.length() <= 100);
    }

    @Test
    void inspectTellsWhereAModelIsWrong() throws IOException {
        Path file = folder.resolve("mine.yaml");
        Files.writeString(
                file,
                "format: 1\nlamps:\n  lamp-44: {volts: 63 kV, current: 0.25 A, cold resistance: 2 ohm, sources: [mine]}\n");
        Typed typed = Typed.in("inspect", file.toString());

        assertThat(typed.code()).isEqualTo(2);
        assertThat(typed.err())
                .contains("mine.yaml:3: lamp-44 volts: '63 kV' is out of bounds.")
                .contains("from 500 mV to 2 kV");
    }

    @Test
    void inspectListsModelsInJson() throws IOException {
        String json = Typed.in("inspect", "--json", "shared/parts/clips.yaml").out();

        assertThat(new com.fasterxml.jackson.databind.ObjectMapper()
                        .readTree(json)
                        .at("/files/0/models/clips/0")
                        .asText())
                .isEqualTo("clips-6.3");
    }

    @Test
    void inspectGoesOnAfterAFileThatCannotBeUsed() {
        Typed typed = Typed.in("inspect", "no-such-file.yaml", FIRST_LIGHT);

        assertThat(typed.code()).isEqualTo(2);
        assertThat(typed.out()).contains("First Light");
        assertThat(typed.err()).contains("no-such-file.yaml");
    }

    @Test
    void supposeJsonHasTheDocumentedKeysInOrder() throws IOException {
        String json = Typed.in("suppose", FIRST_LIGHT, "C1=dried-out:40%", "--draws=2", "--json")
                .out();

        assertThat(keys(json, 1))
                .startsWith("circuit", "arrangement", "supposition", "readings", "fuses", "notes", "solver");
        assertThat(keys(json, 3))
                .startsWith("from", "to", "function", "unit", "asBuilt", "asSupposed", "low", "high", "shows", "moved");
        assertThat(keys(json, 3)).containsSubsequence("part", "state", "seconds");
        assertThat(keys(json, 2)).containsSubsequence("method", "passes", "milliseconds", "residual");
    }

    @Test
    void supposeJsonNamesTheFaultCompactly() {
        assertThat(Typed.in("suppose", FIRST_LIGHT, "BR1 leg 1 is shorted", "--draws=2", "--json")
                        .out())
                .contains("\"supposition\" : [ \"BR1.leg1=short\" ]");
    }

    /** TP1 stands on the plus of the bridge: red on minus conducts, red on plus does not. */
    @Test
    void overRangeIsNullInJson() {
        Typed typed = Typed.in("readings", FIRST_LIGHT, "--every-pair=BR1", "--lift=BR1.plus", "--draws=2", "--json");

        assertThat(typed.out()).contains("\"asBuilt\" : null").contains("\"shows\" : \"OL\"");
    }

    @Test
    void readingsCsvHasALinePerReadingAndAHeading() {
        Typed typed = Typed.in("readings", FIRST_LIGHT, "--draws=2", "--csv");

        assertThat(typed.out().split("\r\n")).hasSize(1 + 5 * 2);
    }

    @ParameterizedTest
    @ValueSource(strings = {"a.png", "a.svg"})
    void supposeWritesThePictureItIsAskedFor(String name) throws IOException {
        Path file = folder.resolve(name);

        Typed typed = Typed.in("suppose", FIRST_LIGHT, "BR1.leg1=short", "--draws=2", "--picture", file.toString());

        assertThat(typed.code()).isZero();
        assertThat(Files.size(file)).isGreaterThan(10_000);
    }

    @Test
    void pulledFuseIsToldAndItsRailIsGone() {
        Typed typed = Typed.in("readings", FIRST_LIGHT, "--pull=F1", "--draws=2");

        assertThat(typed.out()).contains("F1 pulled").containsPattern("TP1 +d\\.c\\. volts +0\\.0 mV");
    }

    @Test
    void mainsVoltageTakesAUnitOrNone() {
        assertThat(Typed.in("readings", FIRST_LIGHT, "--mains=110", "--draws=2").out())
                .isEqualTo(Typed.in("readings", FIRST_LIGHT, "--mains=110 V", "--draws=2")
                        .out());
    }

    @Test
    void everyPairSetsThePowerOffByItself() {
        Typed typed = Typed.in("readings", FIRST_LIGHT, "--every-pair=BR1", "--draws=2");

        assertThat(typed.out()).contains("Power off, plug out").contains("BR1.minus to BR1.plus");
    }

    @Test
    void everyPairWithThePowerOnIsRefused() {
        Typed typed = Typed.in("readings", FIRST_LIGHT, "--every-pair=BR1", "--power=on");

        assertThat(typed.code()).isEqualTo(2);
        assertThat(typed.err()).contains("not with the power on");
    }

    @Test
    void sameQuestionGivesTheSameAnswerEveryTime() {
        String first = Typed.in("suppose", FIRST_LIGHT, "C1=dried-out:40%").out();

        assertThat(Typed.in("suppose", FIRST_LIGHT, "C1=dried-out:40%").out()).isEqualTo(first);
    }

    /** Keys at a depth of nested objects and arrays, in their order. */
    private static List<String> keys(String json, int depth) throws IOException {
        List<String> keys = new ArrayList<>();
        int level = 0;
        try (JsonParser parser = new JsonFactory().createParser(json)) {
            for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
                level += token.isStructStart() ? 1 : token.isStructEnd() ? -1 : 0;
                if (token == JsonToken.FIELD_NAME && level == depth) {
                    keys.add(parser.currentName());
                }
            }
        }
        return keys;
    }
}
