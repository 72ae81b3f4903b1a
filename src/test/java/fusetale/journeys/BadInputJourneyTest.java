package fusetale.journeys;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever is put in, the answer is a sentence and exit code 2, never a stack trace. */
class BadInputJourneyTest {
    private static final String FIRST_LIGHT = "circuits/first-light.yaml";

    @TempDir
    private Path folder = Path.of("");

    @Test
    void misspeltKeyIsNamedWithItsLineAndTheNearestSpelling() throws IOException {
        Typed typed = changed("tolerance: -20..+50 %", "toleranse: -20..+50 %");

        assertRefused(typed);
        assertThat(typed.err()).contains("machine.yaml:").contains("toleranse").contains("nearest: 'tolerance'");
    }

    @Test
    void wrongUnitIsNamed() throws IOException {
        Typed typed = changed("volts: 25 V", "volts: 25 ohm");

        assertRefused(typed);
        assertThat(typed.err()).contains("25 ohm");
    }

    @Test
    void bareNumberWhereAUnitBelongsIsNamed() throws IOException {
        assertRefused(changed("volts: 25 V", "volts: 25"));
    }

    @Test
    void testPointOnANetThatDoesNotExistIsNamed() throws IOException {
        Typed typed = changed("TP2: {at: lamp,", "TP2: {at: lampp,");

        assertRefused(typed);
        assertThat(typed.err()).contains("lampp");
    }

    @Test
    void floatingSectionIsNamed() throws IOException {
        String text = Files.readString(Path.of(FIRST_LIGHT))
                .replaceFirst(
                        "  R1:",
                        "  R8: {is: resistor, between: [adrift, astray], value: 1 kohm}\n"
                                + "  R9: {is: resistor, between: [adrift, astray], value: 1 kohm}\n  R1:")
                .replaceFirst("drawing:", "drawing:\n  R8: {square: [0, 30]}\n  R9: {square: [1, 30]}");
        Typed typed = Typed.in("readings", written(text));

        assertRefused(typed);
        assertThat(typed.err())
                .contains("R8: nothing joins this section to ground 'gnd': nets adrift, astray")
                .doesNotContain("drawing");
    }

    /** A ring of sources cannot be written: the reader asks of every source a resistance above zero. */
    @Test
    void sourceWithoutResistanceIsNamed() throws IOException {
        Typed typed = changed("  R1:", "  B1: {is: battery, plus: raw, minus: gnd, volts: 9 V, ohms: 0 ohm}\n  R1:");

        assertRefused(typed);
        assertThat(typed.err()).contains("B1 ohms: '0 ohm' is not above zero");
    }

    @Test
    void emptyFileIsRefused() throws IOException {
        assertRefused(Typed.in("suppose", written(""), "R1=open"));
    }

    @Test
    void binaryFileIsRefused() throws IOException {
        byte[] bytes = new byte[4096];
        for (int k = 0; k < bytes.length; k++) {
            bytes[k] = (byte) (k * 37 + 128);
        }
        Path file = folder.resolve("machine.yaml");
        Files.write(file, bytes);

        assertRefused(Typed.in("readings", file.toString()));
    }

    @Test
    void fileOfFiftyMegabytesIsRefused() throws IOException {
        Path file = folder.resolve("machine.yaml");
        try (RandomAccessFile large = new RandomAccessFile(file.toFile(), "rw")) {
            large.setLength(50L << 20);
        }

        assertRefused(Typed.in("inspect", file.toString()));
    }

    @Test
    void aliasBombIsRefused() throws IOException {
        StringBuilder bomb = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x, x]\n");
        for (int k = 1; k < 12; k++) {
            String aliases = String.join(", ", Collections.nCopies(10, "*a" + (k - 1)));
            bomb.append("a")
                    .append(k)
                    .append(": &a")
                    .append(k)
                    .append(" [")
                    .append(aliases)
                    .append("]\n");
        }

        assertRefused(Typed.in("inspect", written(bomb.toString())));
    }

    @ParameterizedTest
    @ValueSource(strings = {"no/such/file.yaml", "circuits"})
    void whatIsNoFileIsRefused(String file) {
        assertRefused(Typed.in("readings", file));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "R99=open | R99",
                "BR1.leg9=short | leg9",
                "C1=blown | blown",
                "C1=dried-out:40ohm | 40ohm",
                "nonsense | nonsense"
            })
    void faultThatDoesNotFitIsNamed(String fault, String named) {
        Typed typed = Typed.in("suppose", FIRST_LIGHT, fault);

        assertRefused(typed);
        assertThat(typed.err()).contains(named);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--arrangement=F1 outt | nearest: 'F1 out'",
                "--pull=F9 | no fuse F9",
                "--lift=BR1.ac9 | ac9",
                "--clip=raw | --clip takes two names",
                "--clip=raw,gnt | gnt",
                "--mains=loud | loud",
                "--mains=-5 V | -5",
                "--between=TP3,TP77 | TP77",
                "--every-pair=BR7 | BR7",
                "--meter=vacuum | true rms",
                "--switch=S1=ajar | ajar",
                "--power=maybe | maybe",
                "--draws=0 | --draws",
                "--draws=1001 | --draws takes 2 to 1000",
                "--draws=many | no whole number",
                "--mains=-5 | above 0",
                "--mains=1e6 | at most 1000 V",
                "--meter= | true rms",
                "--no-such-option | --no-such-option"
            })
    void optionThatDoesNotFitIsNamed(String option, String named) {
        Typed typed = Typed.in("readings", FIRST_LIGHT, option);

        assertRefused(typed);
        assertThat(typed.err()).contains(named);
    }

    @Test
    void pictureOfUnknownKindIsRefusedBeforeAnyWork() {
        Typed typed = Typed.in("suppose", "no-such-file.yaml", "R1=open", "--picture", "a.jpg");

        assertRefused(typed);
        assertThat(typed.err()).contains("a .png or a .svg");
    }

    @Test
    void pictureIntoAFolderThatDoesNotExistIsRefused() {
        Typed typed = Typed.in(
                "suppose",
                FIRST_LIGHT,
                "R1=open",
                "--draws=2",
                "--picture",
                folder.resolve("none/a.png").toString());

        assertThat(typed.code()).isEqualTo(2);
        assertThat(typed.err()).contains("make it first");
    }

    @Test
    void pictureThatCannotBeWrittenLeavesNoAnswerBehind() {
        Typed typed = Typed.in(
                "suppose",
                FIRST_LIGHT,
                "R1=open",
                "--draws=2",
                "--json",
                "--picture",
                folder.resolve("none/a.png").toString());

        assertThat(typed.out()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "  ", ";", "nothing"})
    void supposingNothingAsksForAFault(String fault) {
        Typed typed = Typed.in("suppose", FIRST_LIGHT, fault);

        assertRefused(typed);
        assertThat(typed.err()).contains("say what is wrong");
    }

    @ParameterizedTest
    @CsvSource({"readings,", "suppose, R1=open"})
    void jsonAndCsvAtOnceAreRefused(String command, @Nullable String fault) {
        Typed typed = fault == null
                ? Typed.in(command, FIRST_LIGHT, "--json", "--csv")
                : Typed.in(command, FIRST_LIGHT, fault, "--json", "--csv");

        assertRefused(typed);
        assertThat(typed.err()).contains("keep one of them");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--staged --stress --aftermath | leave --stress, --aftermath out",
                "--staged --json --stress | leave --stress out",
                "--staged --observations=all | leave --observations out",
                "--staged --csv | leave --csv out",
                "--staged --picture=a.svg --drawing=b.svg | leave --picture, --drawing out",
                "--csv --stress --aftermath | leave --stress, --aftermath out",
                "--csv --observations=all | leave --observations out",
                "--picture=a.svg --drawing=./a.svg | name two files",
                "--symbols=iec | add --drawing FILE",
                "--amps=F1 --function=ohms | leave --function out",
            })
    void optionWithoutAPlaceIsRefusedInsteadOfDropped(String options, String named) {
        List<String> typed = new ArrayList<>(List.of("suppose", FIRST_LIGHT, "R1=open"));
        typed.addAll(List.of(options.split(" ", -1)));
        Typed refused = Typed.in(typed.toArray(String[]::new));

        assertRefused(refused);
        assertThat(refused.err()).contains(named);
    }

    @ParameterizedTest
    @ValueSource(strings = {"--csv", "--staged"})
    void healthyReadingsHaveNoPlaceForSightsEither(String option) {
        Typed refused = Typed.in("readings", FIRST_LIGHT, option, "--observations=all");

        assertRefused(refused);
        assertThat(refused.err()).contains("leave --observations out");
    }

    @Test
    void filesOfModelsAreNotDrawn() {
        Path file = folder.resolve("a.svg");
        Typed refused = Typed.in("inspect", "shared/parts/lamps.yaml", "--drawing", file.toString());

        assertRefused(refused);
        assertThat(refused.err()).contains("lamps.yaml holds part models").contains("leave --drawing out");
        assertThat(file).doesNotExist();
    }

    /** The library of the command line would put the file's lines in the argument's place and print them. */
    @Test
    void argumentThatBeginsLikeAFileOfArgumentsIsNotOpened() throws IOException {
        Typed typed = Typed.in("inspect", "@" + written("--nobody-should-read-this"));

        assertRefused(typed);
        assertThat(typed.err()).contains("no such file").doesNotContain("nobody-should-read-this");
    }

    @Test
    void emptyFileNameIsRefused() {
        assertRefused(Typed.in("inspect", ""));
    }

    /** CSI 2 J clears a terminal (ECMA-48). */
    @ParameterizedTest
    @ValueSource(strings = {"\"First \\e[2J Light\"", "\"First \\u202E Light\""})
    void nameThatATerminalWouldObeyIsRefused(String name) throws IOException {
        Typed typed = changed("name: First Light", "name: " + name);

        assertRefused(typed);
        assertThat(typed.err()).contains("cannot be shown");
    }

    @Test
    void fileWithoutAnEndIsRefused() throws IOException {
        Path endless = Path.of("/dev/zero");
        assumeThat(endless).exists();

        assertRefused(Typed.in("inspect", endless.toString()));
    }

    @Test
    void circuitOfTooManyPartsIsRefused() throws IOException {
        StringBuilder parts = new StringBuilder();
        StringBuilder drawing = new StringBuilder();
        for (int k = 0; k < 1000; k++) {
            parts.append("  X").append(k).append(": {is: resistor, between: [raw, gnd], value: 1 Mohm}\n");
            drawing.append("  X")
                    .append(k)
                    .append(": {square: [")
                    .append(k % 100)
                    .append(", ")
                    .append(10 + k / 100)
                    .append("]}\n");
        }
        String text = Files.readString(Path.of(FIRST_LIGHT));
        Typed typed = Typed.in("inspect", written(text.replace("parts:\n", "parts:\n" + parts) + drawing));

        assertRefused(typed);
        assertThat(typed.err()).contains("1007 parts").contains("at most 1000");
    }

    @Test
    void ohmsWithThePowerOnAreRefusedInOneSentence() {
        Typed typed = Typed.in("readings", FIRST_LIGHT, "--every-pair=BR1", "--power=on");

        assertRefused(typed);
        assertThat(typed.err().lines()).hasSize(1);
    }

    /** Behind the fuse of no machine: what remains on the rails then is the house wiring's, not a reading. */
    @Test
    void mainsThatIsShortedIsToldBeforeItsReadings() {
        Typed typed = Typed.in("readings", FIRST_LIGHT, "--clip=line,neutral", "--draws=2");

        assertThat(typed.out()).contains("DO NOT POWER UP").contains("breaker");
    }

    @Test
    void supposeWithoutAFaultAsksForOne() {
        assertRefused(Typed.in("suppose", FIRST_LIGHT));
    }

    private Typed changed(String from, String to) throws IOException {
        String text = Files.readString(Path.of(FIRST_LIGHT));
        assertThat(text).contains(from);
        return Typed.in("readings", written(text.replace(from, to)));
    }

    private String written(String text) throws IOException {
        Path file = folder.resolve("machine.yaml");
        Files.writeString(file, text, StandardCharsets.UTF_8);
        return file.toString();
    }

    private static void assertRefused(Typed typed) {
        assertThat(typed.code()).as("exit code; said: %s", typed.err()).isEqualTo(2);
        assertThat(typed.out()).isEmpty();
        assertThat(typed.err()).isNotBlank();
        assertThat(Arrays.stream(typed.err().split("\n", -1)))
                .as("lines of a stack trace")
                .noneMatch(line -> line.strip().startsWith("at ") || line.contains("Exception"));
    }
}
