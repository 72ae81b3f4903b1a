package fusetale;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import fusetale.aftermath.Strain;
import fusetale.bench.Observation;
import fusetale.circuit.MeterFunction;
import fusetale.circuit.Mounting;
import fusetale.cli.Main;
import fusetale.explore.FuseFate;
import fusetale.explore.SwapFigure;
import fusetale.fault.FailureMode;
import fusetale.fault.Replacements;
import fusetale.report.Emphasis;
import fusetale.sentence.Sentences;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The product's words are those of {@code src/site/markdown/vocabulary.md}, which says where each comes from. */
class VocabularyTest {
    private static final Set<String> LISTED = listed();

    private static final Pattern OPTION = Pattern.compile("--[a-z][a-z-]*");

    @Test
    void everyWordSaysWhereItComesFrom() throws IOException {
        assertThat(rows())
                .hasSizeGreaterThan(50)
                .allSatisfy(row -> assertThat(row)
                        .hasSize(3)
                        .allSatisfy(cell -> assertThat(cell).isNotBlank()));
    }

    /** Of two texts under one name the latter is told, and the first forgotten. */
    @Test
    void noTextIsThereTwice() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("src/main/resources"))) {
            assertThat(files.filter(f -> f.toString().endsWith(".properties")))
                    .allSatisfy(file -> assertThat(Files.readAllLines(file).stream()
                                    .filter(line -> !line.startsWith("#") && line.contains("="))
                                    .map(line -> line.substring(0, line.indexOf('='))))
                            .doesNotHaveDuplicates());
        }
    }

    @Test
    void failureWordsAreListed() {
        assertThat(Arrays.stream(FailureMode.values()).map(FailureMode::compact))
                .isSubsetOf(LISTED);
    }

    @Test
    void meterFunctionsAreListed() {
        assertThat(Arrays.stream(MeterFunction.values()).map(MeterFunction::words))
                .isSubsetOf(LISTED);
    }

    @Test
    void fatesOfFusesAreListed() {
        assertThat(Arrays.stream(FuseFate.State.values()).map(FuseFate.State::words))
                .isSubsetOf(LISTED);
    }

    @Test
    void whatIsSeenWithoutAMeterIsListed() {
        assertThat(Arrays.stream(Observation.Aspect.values()).map(Observation.Aspect::words))
                .isSubsetOf(LISTED);
        // a comma parts words on the page
        assertThat(Arrays.stream(Observation.Sight.values())
                        .flatMap(s -> Arrays.stream(s.words().split(", "))))
                .isSubsetOf(LISTED);
    }

    @Test
    void wordsThatALineBeginsWithAreListed() {
        assertThat(Sentences.verbs()).hasSizeGreaterThan(30).isSubsetOf(LISTED);
    }

    @Test
    void stressesAreListed() {
        assertThat(Arrays.stream(Strain.values()).map(Strain::words)).isSubsetOf(LISTED);
    }

    @Test
    void figuresOfSwapsAreListed() {
        assertThat(Arrays.stream(SwapFigure.values()).map(SwapFigure::words)).isSubsetOf(LISTED);
    }

    @Test
    void mountingsAreListed() {
        assertThat(Arrays.stream(Mounting.values()).map(Replacements::compact)).isSubsetOf(LISTED);
    }

    @Test
    void headingsOfTablesAreListed() throws IOException {
        Properties words = new Properties();
        try (InputStream in = Main.class.getResourceAsStream("/fusetale/report/words.properties")) {
            words.load(new InputStreamReader(Objects.requireNonNull(in), StandardCharsets.UTF_8));
        }
        List<String> headings = words.stringPropertyNames().stream()
                .filter(key -> key.startsWith("head.") || key.startsWith("fuse.") || key.startsWith("buzzer."))
                .map(words::getProperty)
                .filter(text -> !text.contains("%"))
                .toList();

        assertThat(headings).hasSizeGreaterThan(15).isSubsetOf(LISTED);
    }

    /** What keys do, hints of the key strip, buttons and headings of the window; whole sentences have no row of their own. */
    @Test
    void labelsOfTheWindowAreListed() throws IOException {
        Properties words = new Properties();
        try (InputStream in = Main.class.getResourceAsStream("/fusetale/desk/words.properties")) {
            words.load(new InputStreamReader(Objects.requireNonNull(in), StandardCharsets.UTF_8));
        }
        List<String> labels = words.stringPropertyNames().stream()
                .filter(key -> !key.equals("brand"))
                .map(words::getProperty)
                .filter(VocabularyTest::isLabel)
                // a comma parts words on the page
                .flatMap(text -> Arrays.stream(text.split(", ")))
                .map(VocabularyTest::asListed)
                .toList();

        assertThat(labels).hasSizeGreaterThan(60).isSubsetOf(LISTED);
    }

    /** Whole sentences, and what holds a place for something else, are no labels. */
    private static boolean isLabel(String text) {
        return !text.endsWith(".") && !text.contains("%") && !text.contains(": ");
    }

    /** Without the dots of buttons and bullets; with a small first letter unless the page has a capital. */
    private static String asListed(String text) {
        String bare = text.replaceAll("[\u2026\u00b7]", "").strip();
        return LISTED.contains(bare) ? bare : bare.substring(0, 1).toLowerCase(Locale.ROOT) + bare.substring(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"inspect", "readings", "suppose", "match", "modes", "sheet"})
    void commandsAndTheirOptionsAreListed(String command) {
        StringWriter help = new StringWriter();
        Main.run(new PrintWriter(help), new PrintWriter(help), Emphasis.NONE, command, "--help");
        Set<String> options = OPTION.matcher(help.toString())
                .results()
                .map(MatchResult::group)
                .collect(Collectors.toCollection(TreeSet::new));

        assertThat(options).contains("--json").isSubsetOf(LISTED);
        assertThat(LISTED).contains(command);
    }

    @ParameterizedTest
    @ValueSource(strings = {"circuit", "block", "part-models"})
    void keysAndChoicesOfFilesAreListed(String schema) throws IOException {
        JsonNode root = new ObjectMapper()
                .readTree(Path.of("shared/reference/schema", schema + ".schema.json")
                        .toFile());
        Set<String> words = new TreeSet<>();
        collect(root, words);

        assertThat(words).hasSizeGreaterThan(40).isSubsetOf(LISTED);
    }

    private static void collect(JsonNode node, Set<String> words) {
        JsonNode properties = node.path("properties");
        if (properties.isObject()) {
            properties.fieldNames().forEachRemaining(words::add);
        }
        for (JsonNode word : node.path("enum")) {
            if (word.isTextual()
                    && !word.asText().contains(" 60127")
                    && !word.asText().contains(" 248")) {
                words.add(word.asText());
            }
        }
        node.forEach(child -> collect(child, words));
    }

    private static Set<String> listed() {
        try {
            return rows().stream()
                    .flatMap(row -> Arrays.stream(row.get(0).split(", ")))
                    .map(word -> word.replace("`", ""))
                    .collect(Collectors.toCollection(TreeSet::new));
        } catch (IOException e) {
            throw new IllegalStateException("the page of words cannot be read", e);
        }
    }

    /** Rows of the page's tables, without heads and rules. */
    private static List<List<String>> rows() throws IOException {
        List<List<String>> rows = new ArrayList<>();
        for (String line : Files.readAllLines(Path.of("src/site/markdown/vocabulary.md"))) {
            if (line.startsWith("| ") && !line.startsWith("| word ")) {
                String cells = line.substring(1, line.lastIndexOf('|'));
                rows.add(Arrays.stream(cells.split("\\|")).map(String::strip).toList());
            }
        }
        return rows;
    }
}
