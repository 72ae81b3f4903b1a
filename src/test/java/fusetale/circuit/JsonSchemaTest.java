package fusetale.circuit;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** The schemas in the repository, checked with an independent implementation of JSON Schema draft 2020-12. */
class JsonSchemaTest {
    private static final Path FOLDER = Path.of("shared/reference/schema");
    private static final SchemaRegistry REGISTRY =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);

    private static final Map<String, Schema> SCHEMAS = JsonSchema.files().entrySet().stream()
            .collect(Collectors.toMap(Map.Entry::getKey, e -> REGISTRY.getSchema(e.getValue())));

    static Set<String> schemas() {
        return JsonSchema.files().keySet();
    }

    /** {@code mvn test -Dtest=JsonSchemaTest -Dfusetale.schema.write=true} writes the files anew. */
    @ParameterizedTest
    @MethodSource("schemas")
    void repositoryHoldsTheSchemaThatTheReaderDescribes(String file) throws IOException {
        String described = JsonSchema.files().get(file);
        if (Boolean.getBoolean("fusetale.schema.write")) {
            Files.createDirectories(FOLDER);
            Files.writeString(FOLDER.resolve(file), described);
        }

        assertThat(FOLDER.resolve(file)).hasContent(described);
    }

    @ParameterizedTest
    @MethodSource("schemas")
    void schemaKeepsToTheMetaSchemaOfItsDraft(String file) {
        Schema meta = REGISTRY.getSchema(SchemaLocation.of(SpecificationVersion.DRAFT_2020_12.getDialectId()));

        assertThat(meta.validate(JsonSchema.files().get(file), InputFormat.JSON))
                .isEmpty();
    }

    static Stream<Path> circuits() throws IOException {
        return yaml("circuits");
    }

    static Stream<Path> blocks() throws IOException {
        return yaml("circuits/blocks");
    }

    static Stream<Path> partFiles() throws IOException {
        return yaml("shared/parts");
    }

    private static Stream<Path> yaml(String folder) throws IOException {
        try (Stream<Path> files = Files.list(Path.of(folder))) {
            return files.filter(p -> p.toString().endsWith(".yaml")).sorted().toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("circuits")
    void shippedCircuitKeepsToItsSchema(Path file) throws IOException {
        assertThat(complaints("circuit.schema.json", Files.readString(file))).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("blocks")
    void shippedBlockKeepsToItsSchema(Path file) throws IOException {
        assertThat(complaints("block.schema.json", Files.readString(file))).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("partFiles")
    void shippedPartModelsKeepToTheirSchema(Path file) throws IOException {
        assertThat(complaints("part-models.schema.json", Files.readString(file)))
                .isEmpty();
    }

    @Test
    void sampleKeepsToItsSchema() {
        assertThat(complaints("circuit.schema.json", Sample.TEXT)).isEmpty();
    }

    /** Each row spoils the sample in one place. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "format: 1|format: 2",
                "format: 1|fromat: 1",
                "name: Bench|title: Bench",
                "ground: gnd|ground: 12",
                "hertz: 60 Hz|hertz: 60",
                "hertz: 60 Hz|hertz: 60 V",
                "volts: 120 V, hertz|volts: 120 V, range: 110 V, hertz",
                "is: resistor|is: resister",
                "is: resistor,|",
                "is: resistor|is: [resistor]",
                "between: [out, gnd], value: 47|between: [out], value: 47",
                "between: [out, gnd], value: 47|between: [out, gnd, raw], value: 47",
                "between: [out, gnd], value: 47|between: out, value: 47",
                "between: [out, gnd], value: 47|value: 47",
                "value: 47 ohm|value: 47",
                "value: 47 ohm|value: 47 V",
                "value: 47 ohm|value: -47 ohm",
                "value: 47 ohm|value: forty-seven ohm",
                "tolerance: ±10 %|toleranse: ±10 %",
                "tolerance: ±10 %|tolerance: 10",
                "tolerance: ±10 %|watts: 500 ohm",
                "tolerance: ±10 %|mounting: ceiling",
                "value: 100 nF|value: 100 nX",
                "label: output|",
                "label: output|label: output, access: roof",
                "label: output|label: output, expect: {volts: 3 V}",
                "label: output|label: output, expect: {d.c. volts: 3}",
                "board: out, harness: raw|board: out",
                "{board: out, harness: raw}|[board: out]",
                "power on: {power: on}|power on: {power: yes}",
                "power on: {power: on}|power on: {pulled: [F1]}",
                "power on: {power: on}|power on: on",
                "clips: [[TP1, gnd]]|clips: [[TP1]]",
                "clips: [[TP1, gnd]]|switches: {S1: shut}",
                "R1: {square: [1, 0]}|R1: {square: [1]}",
                "R1: {square: [1, 0]}|R1: {square: [a, b]}",
                "R1: {square: [1, 0]}|R1: [1, 0]",
                "R1: {square: [1, 0]}|R..1: {square: [1, 0]}",
                "drawing:|picture:",
                "drawing:|include: blocks/a.yaml\\ndrawing:",
                "sec: {pins: [raw, gnd], volts: 12 V, ohms: 1 ohm}|sec: {pins: [raw, gnd], volts: 12 V}",
                "regulation: 12 %|regulation: 12 V",
            })
    void schemaAndReaderRefuseTheSameFiles(String old, String fresh) {
        String spoilt = Sample.with(old, fresh == null ? "" : fresh.replace("\\n", "\n"));

        assertThat(Sample.read(spoilt).errors()).as("reader").isNotEmpty();
        assertThat(complaints("circuit.schema.json", spoilt)).as("schema").isNotEmpty();
    }

    /** Spellings of IEC 60062 and of the bench, for a resistor. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "4k7",
                "4K7",
                "0R47",
                "R47",
                "47R",
                "47 ohm",
                "47ohm",
                "4.7 kohm",
                "4.7 kΩ",
                "1 Mohm",
                "1M",
                "470 mohm",
                "4k7 ±5 %",
                "47 ohm ±10%",
                "47 ohm -20..+50 %",
                "1e3 ohm",
                "10 000 ohm",
            })
    void schemaAndReaderTakeTheSameResistances(String written) {
        String text = Sample.with("value: 47 ohm, tolerance: ±10 %", "value: " + written);

        assertThat(Sample.read(text).errors()).as("reader").isEmpty();
        assertThat(complaints("circuit.schema.json", text)).as("schema").isEmpty();
    }

    @Test
    void modelWithoutSourcesIsRefusedBySchemaAndReader() throws IOException {
        String zeners = Files.readString(Path.of("shared/parts/zeners.yaml")).replaceFirst("sources:", "origin:");

        assertThat(complaints("part-models.schema.json", zeners)).isNotEmpty();
        assertThat(PartFiles.read(Map.of("zeners.yaml", zeners)).problems()).isNotEmpty();
    }

    private static List<String> complaints(String schemaFile, String yaml) {
        LoadSettings settings = LoadSettings.builder().build();
        JsonNode tree = new ObjectMapper().valueToTree(new Load(settings).loadFromString(yaml));
        return Objects.requireNonNull(SCHEMAS.get(schemaFile)).validate(tree).stream()
                .map(e -> e.getInstanceLocation() + ": " + e.getMessage())
                .toList();
    }
}
