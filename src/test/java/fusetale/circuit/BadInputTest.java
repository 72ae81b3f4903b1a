package fusetale.circuit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a repairer is told about a file that is no circuit at all. */
class BadInputTest {
    @TempDir
    Path folder;

    private List<String> told(String name) {
        CircuitFile file = CircuitReader.withShippedParts().read(folder.resolve(name));
        assertThat(file.circuit()).isNull();
        String place = Includes.name(folder) + "/";
        return file.problems().stream()
                .map(p -> p.toString().replace(place, ""))
                .toList();
    }

    private List<String> toldOf(byte[] bytes) throws IOException {
        Files.write(folder.resolve("bad.yaml"), bytes);
        return told("bad.yaml");
    }

    private List<String> toldOf(String text) throws IOException {
        return toldOf(text.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void missingFileIsToldWithItsNeighbour() throws IOException {
        Files.writeString(folder.resolve("night-ferry.yaml"), "");

        assertThat(told("nightferry.yaml"))
                .containsExactly("nightferry.yaml: there is no such file; nearest: 'night-ferry.yaml'.");
    }

    @Test
    void folderIsToldApartFromAFile() throws IOException {
        Files.createDirectory(folder.resolve("circuits"));

        assertThat(told("circuits")).containsExactly("circuits: this is a folder, not a file.");
    }

    @Test
    void emptyFileIsTold() throws IOException {
        assertThat(toldOf(" \n"))
                .containsExactly("bad.yaml: the file is empty. Allowed: format: 1, then name, mains, parts.");
    }

    @Test
    void fileOfCommentsIsTold() throws IOException {
        assertThat(toldOf("# to do\n")).containsExactly("bad.yaml: the file holds nothing but comments.");
    }

    @Test
    void fiftyMegabytesAreRefusedBySize() throws IOException {
        try (RandomAccessFile file =
                new RandomAccessFile(folder.resolve("big.yaml").toFile(), "rw")) {
            file.setLength(50L << 20);
        }

        assertThat(told("big.yaml"))
                .containsExactly("big.yaml: the file is 50 MiB large; none of ours is larger than 4 MiB.");
    }

    @Test
    void zeroBytesAreToldAsNoText() throws IOException {
        assertThat(toldOf(new byte[] {'f', '\n', 0, 7}))
                .containsExactly("bad.yaml:2: this is not a text file (it holds zero bytes)."
                        + " Allowed: a text file saved as UTF-8.");
    }

    @Test
    void otherEncodingIsToldWithItsLine() throws IOException {
        assertThat(toldOf("format: 1\nname: Münster\n".getBytes(StandardCharsets.ISO_8859_1)))
                .containsExactly(
                        "bad.yaml:2: a character on this line is not UTF-8." + " Allowed: a text file saved as UTF-8.");
    }

    @Test
    void controlCharacterIsToldWithItsLine() throws IOException {
        assertThat(toldOf("format: 1\nname: B\u0007\n"))
                .containsExactly("bad.yaml:2: an invisible character (U+0007) stands on this line; remove it.");
    }

    @Test
    void noiseNeverThrows() throws IOException {
        Random random = new Random(7);
        for (int i = 0; i < 200; i++) {
            byte[] noise = new byte[300];
            random.nextBytes(noise);
            assertThat(toldOf(noise)).isNotEmpty();
        }
    }

    /** Slips of the fingers: a character dropped, doubled, replaced, or a stretch moved. Seed fixed. */
    @Test
    void slipsOfTheFingersNeverThrow() {
        Random random = new Random(42);
        String keys = "{}[],:&*!#'\"\n -<>.±%0aV";
        for (int i = 0; i < 1500; i++) {
            StringBuilder slipped = new StringBuilder(Sample.TEXT);
            for (int slip = 0; slip <= random.nextInt(3); slip++) {
                int at = random.nextInt(slipped.length());
                int other = random.nextInt(slipped.length());
                switch (random.nextInt(4)) {
                    case 0 -> slipped.deleteCharAt(at);
                    case 1 -> slipped.setCharAt(at, keys.charAt(random.nextInt(keys.length())));
                    case 2 -> slipped.insert(at, keys.charAt(random.nextInt(keys.length())));
                    default -> slipped.insert(at, slipped.substring(other, Math.min(other + 20, slipped.length())));
                }
            }
            CircuitFile file = Sample.read(slipped.toString());

            assertThat(file.circuit() == null)
                    .as("%s%n%s", file.problems(), slipped)
                    .isEqualTo(!file.errors().isEmpty());
        }
    }

    @Test
    void everyCutOfAGoodFileIsToldOrRead() {
        for (int length = 0; length < Sample.TEXT.length(); length++) {
            CircuitFile cut = Sample.read(Sample.TEXT.substring(0, length));

            assertThat(cut.circuit() != null || !cut.errors().isEmpty())
                    .as("cut after %d characters", length)
                    .isTrue();
        }
    }

    @Test
    void cutInsideBracesIsToldWithWhereTheyOpen() {
        String cut = Sample.TEXT.substring(0, Sample.TEXT.indexOf("value: 47"));

        assertThat(Sample.read(cut).problems())
                .extracting(Problem::toString)
                .containsExactly(
                        "bench.yaml:7: the file ends in the middle of {...} or [...] that begins on line 7; is it cut short?");
    }

    @Test
    void listIsNoCircuit() throws IOException {
        assertThat(toldOf("- R1\n- R2\n"))
                .containsExactly("bad.yaml:1: a list stands where the file should be a table of keys."
                        + " Allowed: format: 1, then name, mains, parts.");
    }

    @Test
    void mereTextIsNoCircuit() throws IOException {
        assertThat(toldOf("Night Ferry\n"))
                .containsExactly("bad.yaml:1: a mere text stands where the file should be a table of keys."
                        + " Allowed: format: 1, then name, mains, parts.");
    }

    @Test
    void deepNestingIsToldWithoutDescending() throws IOException {
        assertThat(toldOf("format: 1\nname: " + "[".repeat(9_000) + "]".repeat(9_000)))
                .containsExactly("bad.yaml:2: values are nested more than 40 deep here.");
    }

    /** Nine levels of nine aliases each unfold to some 400 million values. */
    @Test
    void aliasBombIsToldWithoutUnfolding() throws IOException {
        StringBuilder bomb = new StringBuilder("format: 1\na: &a [x,x,x,x,x,x,x,x,x]\n");
        for (char c = 'b'; c <= 'i'; c++) {
            String before = "*" + (char) (c - 1);
            bomb.append(c).append(": &").append(c).append(" [");
            bomb.append(String.join(",", Collections.nCopies(9, before))).append("]\n");
        }

        assertThat(toldOf(bomb.toString()))
                .containsExactly("bad.yaml:7: the values from here on unfold to more than 400000;"
                        + " use fewer aliases (*name).");
    }

    @Test
    void aliasIntoItselfIsTold() throws IOException {
        assertThat(toldOf("format: 1\nparts: &p\n  R1: *p\n"))
                .containsExactly("bad.yaml:3: *p points to no finished &p above it.");
    }

    @Test
    void tabIsTold() throws IOException {
        assertThat(toldOf("parts:\n\tR1: {is: resistor}\n"))
                .containsExactly("bad.yaml:2: a tab stands here; indent with spaces.");
    }

    @Test
    void forgottenColonIsToldWhereItIs() throws IOException {
        assertThat(toldOf("format: 1\nname Bench\nground: gnd\n"))
                .containsExactly("bad.yaml:2: this line has no colon behind its key, or belongs to the line above and"
                        + " is indented too little.");
    }

    @Test
    void forgottenBracketIsToldWithWhereItOpens() throws IOException {
        assertThat(toldOf("format: 1\nparts:\n  R1: {is: resistor, between: [a, b\n  R2: {is: resistor}\n"))
                .containsExactly("bad.yaml:4: a comma or a closing bracket is missing in [...] that begins on line 3.");
    }

    @Test
    void forgottenQuoteIsToldWithWhereItOpens() throws IOException {
        assertThat(toldOf("format: 1\nname: \"Bench\nground: gnd\n"))
                .containsExactly("bad.yaml:4: the file ends in the middle of a text in quotes that begins on line 2;"
                        + " is it cut short?");
    }

    @Test
    void unevenIndentIsTold() throws IOException {
        assertThat(toldOf("mains:\n   volts: 120 V\n  hertz: 60 Hz\n"))
                .containsExactly("bad.yaml:3: this line is indented differently from the lines it belongs to,"
                        + " which begin on line 1.");
    }

    @Test
    void secondDocumentIsTold() throws IOException {
        assertThat(toldOf("format: 1\n---\nformat: 1\n"))
                .containsExactly("bad.yaml:3: a second document begins here (---); a file holds one.");
    }

    @Test
    void typedValuesAreTold() throws IOException {
        assertThat(toldOf("!!set {a, b}\n")).contains("bad.yaml:1: the tag '!!set' stands here; leave it out.");
    }

    @Test
    void aFloodOfProblemsIsCutOff() throws IOException {
        StringBuilder flood = new StringBuilder();
        for (int i = 0; i < 5000; i++) {
            flood.append("key").append(i).append(": 1\n");
        }

        assertThat(toldOf(flood.toString()))
                .hasSize(Findings.MOST + 1)
                .endsWith("bad.yaml: there are more than 200 problems; mend these first.");
    }

    @Test
    void endlessLineIsRefused() throws IOException {
        assertThat(toldOf("format: 1\nname: " + "1".repeat(3_000_000)))
                .containsExactly("bad.yaml:2: this line is longer than 20 000 characters; break it up.");
    }

    /** Patterns that try every way to part a text would take minutes over these. */
    @Test
    void longValuesAreAnsweredAtOnce() throws IOException {
        String text = Sample.with("value: 47 ohm", "value: " + "1".repeat(15_000))
                .replace("ground: gnd", "ground: " + "1".repeat(15_000));

        assertThat(toldOf(text))
                .containsExactly(
                        "bad.yaml:4: ground: '" + "1".repeat(57) + "...' cannot be a net's name. Allowed: letters,"
                                + " digits, + - and _ with a letter among them, such as raw or 5V.",
                        "bad.yaml:7: R1 value: '" + "1".repeat(57) + "...' is too long for an amount. Allowed: a"
                                + " resistance such as 4k7, 0R47 or 0.47 ohm, a tolerance may follow: ±10 %.");
    }
}
