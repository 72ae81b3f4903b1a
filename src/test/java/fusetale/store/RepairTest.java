package fusetale.store;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RepairTest {
    private static final Instant TIME = Instant.parse("2026-11-25T07:31:00Z");
    private static final Repair REPAIR = new Repair(
            "Night Ferry, \"blows F201\"",
            "../circuits/night-ferry.yaml",
            "Suppose BR201 leg 1 is shorted and F201 holds a 25 A fuse. Power on, meter on AC volts.",
            List.of("Suppose nothing.", "Suppose BR201 leg 1 is shorted."),
            List.of("TP4 32.4 V dc", "TP2 OL ohms", "F201 4.7 kΩ, 3 μF: \\ #7\tno\nsecond line"),
            TIME);

    @TempDir
    Path folder;

    private Path written(String text) throws IOException {
        return Files.writeString(folder.resolve("a.repair.yaml"), text);
    }

    @Test
    void whatIsWrittenIsReadAgain() throws IOException {
        Kept<Repair> read = Repair.read(written(REPAIR.text())).orElseThrow();

        assertThat(read.lost()).isEmpty();
        assertThat(read.value()).isEqualTo(REPAIR);
    }

    /** jackson-dataformat-yaml reads with another parser (SnakeYAML) than the program does. */
    @Test
    void anIndependentReaderOfYamlFindsTheSameTexts() throws IOException {
        JsonNode root = new YAMLMapper().readTree(REPAIR.text());

        assertThat(root.path("sentence").asText()).isEqualTo(REPAIR.sentence());
        assertThat(root.path("readings").path(2).asText())
                .isEqualTo(REPAIR.readings().get(2));
        assertThat(root.path("undo")).hasSize(2);
    }

    @Test
    void anySignsComeBackAsTheyWere() throws IOException {
        Random random = new Random(7);
        for (int i = 0; i < 300; i++) {
            String odd = random.ints(20, 0, 0x1_1000)
                    .filter(c -> c < 0xD800 || c > 0xDFFF)
                    .filter(Character::isValidCodePoint)
                    .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                    .toString();
            Repair repair = new Repair(odd, odd, odd, List.of(odd), List.of(odd), TIME);

            Kept<Repair> read = Repair.read(written(repair.text())).orElseThrow();

            assertThat(read.lost()).isEmpty();
            assertThat(read.value()).isEqualTo(repair);
        }
    }

    @Test
    void theLastTwoHundredSentencesStay() {
        List<String> many = IntStream.range(0, 250).mapToObj(Integer::toString).toList();

        assertThat(new Repair("", "", "", many, List.of(), TIME).undo())
                .hasSize(200)
                .startsWith("50")
                .endsWith("249");
    }

    @Test
    void ofAFileCutOffAnywhereWhatStandsAboveIsReadAndTheLossIsSaid() throws IOException {
        byte[] whole = REPAIR.text().getBytes(StandardCharsets.UTF_8);
        for (int length = 0; length < whole.length - "...\n".length(); length++) {
            Path file = folder.resolve("a.repair.yaml");
            Files.write(file, Arrays.copyOf(whole, length));

            Kept<Repair> read = Repair.read(file).orElseThrow();

            assertThat(read.whole()).as("cut after %s bytes", length).isFalse();
        }
    }

    @Test
    void nothingInAFileStopsTheProgram() throws IOException {
        String signs = "aformt:1\"'-[]{}#&*!|>%@`,?~ \n\t\u0000\uFEFF";
        Random random = new Random(11);
        for (int i = 0; i < 3000; i++) {
            String odd = random.ints(random.nextInt(40), 0, signs.length())
                    .mapToObj(c -> signs.substring(c, c + 1))
                    .collect(Collectors.joining());

            assertThat(Repair.read(written(odd)).orElseThrow().lost()).as(odd).isNotEmpty();
        }
    }

    @Test
    void whatIsAboveTheDamageIsKept() throws IOException {
        Path file = written(REPAIR.text().replace("undo:", "undo: }"));

        Kept<Repair> read = Repair.read(file).orElseThrow();

        assertThat(read.value().readings()).isEqualTo(REPAIR.readings());
        assertThat(read.lost()).first().asString().contains("a.repair.yaml:");
    }

    @Test
    void aFileOfANewerProgramIsNotTakenForWhole() throws IOException {
        Path file = written(REPAIR.text().replace("format: \"1\"", "format: \"2\"\nphotos: []"));

        Kept<Repair> read = Repair.read(file).orElseThrow();

        assertThat(read.lost()).hasSize(2).anyMatch(l -> l.contains("photos"));
        assertThat(read.value().sentence()).isEqualTo(REPAIR.sentence());
    }

    @Test
    void theCircuitIsFoundFromTheRepairsOwnFolder() {
        assertThat(REPAIR.circuitFile(Path.of("/srv/repairs/a.repair.yaml")))
                .contains(Path.of("/srv/circuits/night-ferry.yaml"));
        assertThat(Repair.begun("a", "", TIME).circuitFile(Path.of("/srv/a"))).isEmpty();
    }

    @Test
    void thereIsNothingWhereThereIsNoFile() {
        assertThat(Repair.read(folder.resolve("none.yaml"))).isEmpty();
    }
}
