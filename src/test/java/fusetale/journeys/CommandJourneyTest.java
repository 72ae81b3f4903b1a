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
import org.junit.jupiter.params.provider.CsvSource;
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
    @ValueSource(strings = {"inspect", "readings", "suppose", "modes", "match", "sheet"})
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
    void helpShowsHowToListAmounts() {
        assertThat(Typed.in("suppose", "--help").out()).contains("--charged=C:VOLTS[,C:VOLTS...]");
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

    @ParameterizedTest
    @ValueSource(strings = {"power off, ohms", "ohms"})
    void everyPairIsMeasuredAsTheSentenceSays(String bench) {
        Typed typed = Typed.in("readings", FIRST_LIGHT, bench, "--every-pair=BR1", "--draws=2");

        assertThat(typed.out())
                .containsPattern("BR1.minus to BR1.plus +ohms")
                .doesNotContainPattern("BR1.* +diode test");
    }

    @Test
    void everyPairIsMeasuredAsTheOptionSays() {
        Typed off = Typed.in("readings", FIRST_LIGHT, "--every-pair=BR1", "--function=ohms,diode test", "--draws=2");
        Typed on = Typed.in("readings", FIRST_LIGHT, "--every-pair=BR1", "--function=d.c. volts", "--draws=2");

        assertThat(off.out()).contains("Power off, plug out").containsPattern("BR1.minus to BR1.plus +ohms");
        assertThat(off.out()).containsPattern("BR1.minus to BR1.plus +diode test");
        assertThat(on.out()).contains("Power on").containsPattern("BR1.plus to BR1.minus +d\\.c\\. volts");
    }

    @Test
    void aSentenceThatSaysPowerOnIsNotOverruled() {
        Typed pairs = Typed.in("readings", FIRST_LIGHT, "power on", "--every-pair=BR1", "--draws=2");
        Typed charged = Typed.in("readings", FIRST_LIGHT, "Power on.", "--charged=C1:5V", "--draws=2");

        assertThat(pairs.code()).isEqualTo(2);
        assertThat(pairs.err()).contains("not with the power on");
        assertThat(charged.code()).isEqualTo(2);
        assertThat(charged.err()).contains("power");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--charged=C1:4,5 | C1 charged to 4.5 V",
                "--charged=C1:4,5 V | C1 charged to 4.5 V",
                "--pulse=E1:0,04 | pulsed for 40 ms"
            })
    void anAmountMayHaveADecimalComma(String option, String told) {
        String file = option.startsWith("--pulse") ? "circuits/night-ferry.yaml" : FIRST_LIGHT;
        Typed typed = Typed.in("readings", file, option.replace("E1", "L201"), "--between=gnd,gnd", "--draws=2");

        assertThat(typed.err()).isEmpty();
        assertThat(typed.out()).contains(told);
    }

    @Test
    void severalAmountsArePartedByCommas() {
        Typed typed = Typed.in(
                "readings",
                "circuits/night-ferry.yaml",
                "--charged=C101:4,5,C102:10 V",
                "--between=TP4,gnd",
                "--draws=2");

        assertThat(typed.out()).contains("C101 charged to 4.5 V", "C102 charged to 10 V");
    }

    @Test
    void tablesForASpreadsheetWarnBesideTheAnswer() {
        Typed typed = Typed.in("suppose", FIRST_LIGHT, "BR1.leg1=short", "F1=wrong-rating:10A", "--csv", "--draws=2");

        assertThat(typed.err()).startsWith("DO NOT POWER UP: F1 holds a 10 A link");
        assertThat(typed.err().lines()).allMatch(line -> line.length() <= 100);
        assertThat(typed.out()).startsWith("arrangement,").doesNotContain("DO NOT POWER UP");
        assertThat(Typed.in("readings", FIRST_LIGHT, "--csv", "--draws=2").err())
                .isEmpty();
    }

    @Test
    void withThePowerOffNothingFollows() {
        Typed typed = Typed.in("suppose", FIRST_LIGHT, "R2=open", "--power=off", "--aftermath", "--draws=2");

        assertThat(typed.out()).contains("Aftermath: what follows if nobody switches off\nNothing: the power is off.");
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
