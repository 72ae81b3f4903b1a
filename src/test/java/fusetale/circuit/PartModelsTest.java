package fusetale.circuit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The part models that come with the program: how many, where their figures are from, what is refused in them. */
class PartModelsTest {
    private static final Path FOLDER = Path.of("shared/parts");

    /** Words that are no figures: which way round, how quick. */
    private static final Set<String> NO_FIGURES = Set.of("polarity", "channel", "speed");

    private static final Pattern AMOUNT = Pattern.compile(
            "([a-z][a-z -]*): (\\d[\\d.]*) ?([fpnumkMG]?(?:A²s|K/W|J/K|mm²|°C|dB|ohm|[AVFWJHsmg%])|)(?=[,}\\]]| ±|$)");

    static List<String> files() {
        return PartFiles.SHIPPED;
    }

    private static List<String> lines(String file) throws IOException {
        return Files.readAllLines(FOLDER.resolve(file));
    }

    @Test
    void thereAreSixtyModelsAndMore() {
        int count = PartLibrary.shipped().names().values().stream()
                .mapToInt(List::size)
                .sum();

        assertThat(count).isGreaterThanOrEqualTo(60);
    }

    @Test
    void everySectionHasModels() {
        assertThat(PartLibrary.shipped().names().keySet())
                .contains("diodes", "bridges", "zeners", "transistors", "darlingtons", "mosfets", "regulators")
                .contains("fuses", "clips", "connectors", "wires", "traces", "lamps", "coils")
                .contains("electrolytics", "capacitors");
    }

    /** Every key of every model, also inside Darlingtons, is named in a source; 'ratings' names all of those at once. */
    @ParameterizedTest
    @MethodSource("files")
    void everyFigureHasASource(String file) throws IOException {
        Located root =
                Objects.requireNonNull(YamlTree.parse(Files.readString(FOLDER.resolve(file)), file, new Findings()));
        List<String> unsourced = new ArrayList<>();
        for (Located.Entry section : table(root).entries()) {
            if (!section.key().text().equals("format")) {
                table(section.value()).entries().forEach(model -> unsourced.addAll(unsourced(model)));
            }
        }

        assertThat(unsourced).isEmpty();
    }

    private static Located.Table table(Located value) {
        assertThat(value).isInstanceOf(Located.Table.class);
        return (Located.Table) value;
    }

    private static List<String> unsourced(Located.Entry model) {
        List<String> keys = new ArrayList<>();
        String sources = "";
        for (Located.Entry entry : table(model.value()).entries()) {
            String key = entry.key().text();
            switch (key) {
                case "sources" -> sources = texts(entry.value());
                case "ratings", "first", "second" ->
                    table(entry.value())
                            .entries()
                            .forEach(e -> keys.add(
                                    key.equals("ratings")
                                            ? "ratings/" + e.key().text()
                                            : e.key().text()));
                default -> keys.add(key);
            }
        }
        String all = sources.toLowerCase(Locale.ROOT);
        return keys.stream()
                .filter(key -> !NO_FIGURES.contains(key))
                .filter(key -> !all.contains(key.replace("ratings/", ""))
                        && !(key.startsWith("ratings/") && all.contains("ratings")))
                .map(key -> model.key().text() + ": " + key)
                .toList();
    }

    private static String texts(Located value) {
        assertThat(value).isInstanceOf(Located.Row.class);
        StringBuilder all = new StringBuilder();
        ((Located.Row) value)
                .items()
                .forEach(i -> all.append(((Located.Text) i).text()).append('|'));
        return all.toString();
    }

    /** Every key with a number, once for each section: file, line, key, its text, and texts far below and far above. */
    static Stream<Arguments> amounts() throws IOException {
        List<Arguments> rows = new ArrayList<>();
        for (String file : PartFiles.SHIPPED) {
            Set<String> seen = new HashSet<>();
            List<String> lines = lines(file);
            String section = "";
            for (int i = 0; i < lines.size(); i++) {
                String line = lines.get(i);
                if (line.matches("[a-z]+:")) {
                    section = line;
                }
                if (line.startsWith("#")
                        || line.startsWith("format")
                        || line.strip().startsWith("- ")) {
                    continue;
                }
                Matcher amount = AMOUNT.matcher(line);
                while (amount.find()) {
                    String key = amount.group(1).strip();
                    if (seen.add(section + head(line) + key) && !key.equals("class")) {
                        String written = amount.group(1) + ": " + amount.group(2) + between(amount);
                        rows.add(Arguments.of(file, i + 1, key, written, amount.group(3)));
                    }
                }
            }
        }
        return rows.stream();
    }

    /** What stands before the first colon of a line. */
    private static String head(String line) {
        return line.substring(0, line.indexOf(':')).strip();
    }

    /** The unit with the space before it, as it stands in the line. */
    private static String between(Matcher amount) {
        String whole = amount.group();
        return whole.substring(whole.indexOf(amount.group(2), amount.group(1).length())
                + amount.group(2).length());
    }

    private static List<Problem> problems(String file, int line, String written, String instead) throws IOException {
        List<String> lines = new ArrayList<>(lines(file));
        String old = lines.get(line - 1);
        assertThat(old).contains(written);
        lines.set(line - 1, old.replace(written, instead));
        return PartFiles.read(Map.of(file, String.join("\n", lines) + "\n")).problems();
    }

    private static String bare(String unit) {
        return unit.matches("[fpnumkMG](A|V|ohm|F|W|J|H|s|m|g)") ? unit.substring(1) : unit;
    }

    @ParameterizedTest
    @MethodSource("amounts")
    void figureFarAboveItsBoundIsToldWithItsLine(String file, int line, String key, String written, String unit)
            throws IOException {
        String much = unit.isEmpty() ? (key.equals("gauge") ? "99" : "999999999") : "1e30 " + bare(unit);

        assertThat(problems(file, line, written, key + ": " + much)).anySatisfy(p -> {
            assertThat(p.line()).isEqualTo(line);
            assertThat(p.key()).endsWith(key);
            assertThat(p.found()).containsAnyOf("is out of bounds", "is out of range");
            assertThat(p.allowed()).containsPattern("from .* to ");
        });
    }

    @ParameterizedTest
    @MethodSource("amounts")
    void figureFarBelowItsBoundIsToldWithItsLine(String file, int line, String key, String written, String unit)
            throws IOException {
        String little = unit.isEmpty() ? (key.equals("gauge") ? "-1" : "0.000000001") : "1e-30 " + bare(unit);

        assertThat(problems(file, line, written, key + ": " + little)).anySatisfy(p -> {
            assertThat(p.line()).isEqualTo(line);
            assertThat(p.key()).endsWith(key);
            assertThat(p.found()).containsAnyOf("is out of bounds", "is not a whole number");
        });
    }

    @Test
    void everyKindOfFigureIsAmongThoseTried() throws IOException {
        assertThat(amounts()).hasSizeGreaterThan(90);
    }

    private static List<String> problemsOf(String yaml) {
        return PartFiles.read(Map.of("models.yaml", "format: 1\n" + yaml)).problems().stream()
                .map(Problem::toString)
                .toList();
    }

    @Test
    void fuseRowOutOfBoundsIsTold() {
        assertThat(problemsOf(
                        "fuses:\n  slow: {standard: IEC 60127, speed: slow, size: 5x20, rows: [[1 A, 1 kohm], [1 kA, 1 ohm]],"
                                + " sources: [from memory]}\n"))
                .singleElement()
                .asString()
                .contains("models.yaml:3: slow rows: '1 kA' is out of bounds", "from 10 mA to 100 A");
    }

    @Test
    void lampColderThanItCanBeIsTold() {
        assertThat(problemsOf(
                        "lamps:\n  l: {volts: 6 V, current: 1 A, cold resistance: 7 ohm, sources: [from memory]}\n"))
                .singleElement()
                .asString()
                .contains("no lamp has more resistance cold than hot");
    }

    @Test
    void coilThatHoldsWithMoreThanItPullsInIsTold() {
        assertThat(
                        problemsOf(
                                "coils:\n  c: {ohms: 4 ohm, inductance: 9 mH, pull-in: 1 A, hold: 2 A, sources: [from memory]}\n"))
                .singleElement()
                .asString()
                .contains("c hold: a plunger needs more current to be pulled in than to be held");
    }

    @Test
    void tarnishedClipsBetterThanBrightOnesAreTold() {
        assertThat(problemsOf("clips:\n  c: {ohms: 5 mohm, tarnished: 1 mohm, accepts: 4 W, sources: [from memory]}\n"))
                .singleElement()
                .asString()
                .contains("tarnished clips are never better than bright ones");
    }

    @Test
    void caseFurtherFromTheJunctionThanTheAirIsTold() {
        assertThat(
                        problemsOf(
                                "regulators:\n  r: {output: 5 V, tolerance: ±4 %, output resistance: 10 mohm, dropout: 2 V,"
                                        + " quiescent current: 4 mA, current limit: 2 A, ripple rejection: 60 dB,"
                                        + " ratings: {junction to air: 50 K/W, junction to case: 60 K/W}, sources: [from memory]}\n"))
                .singleElement()
                .asString()
                .contains("r ratings junction to case: heat cannot reach the case worse than the air around it");
    }

    @Test
    void wireModelWithoutThicknessIsTold() {
        assertThat(problemsOf("wires:\n  w: {amps: 5 A, sources: [from memory]}\n"))
                .singleElement()
                .asString()
                .contains("how thick the wire is, is not said");
    }

    @Test
    void wireAndTraceOfOneNameAreTold() {
        assertThat(problemsOf(
                        "wires:\n  w: {gauge: 18, sources: [gauge]}\ntraces:\n  w: {width: 1 mm, sources: [width]}\n"))
                .singleElement()
                .asString()
                .contains("models.yaml:5: w: a wire has this name already");
    }
}
