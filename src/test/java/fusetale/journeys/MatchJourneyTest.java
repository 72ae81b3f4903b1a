package fusetale.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import fusetale.bench.Meter;
import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitReader;
import fusetale.match.ReadingsFile;
import fusetale.match.ReadingsReader;
import fusetale.match.ReadingsWriter;
import fusetale.store.Store;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Readings as they come from the bench, typed at the command. */
class MatchJourneyTest {
    static Stream<Path> shipped() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("circuits"))) {
            return files.filter(f -> f.toString().endsWith(".csv")).sorted().toList().stream();
        }
    }

    /** {@code night-ferry-blown.csv} belongs to {@code night-ferry.yaml}. */
    private static Path board(Path readings) throws IOException {
        try (Stream<Path> files = Files.list(Path.of("circuits"))) {
            return files.filter(f -> f.toString().endsWith(".yaml"))
                    .filter(f -> readings.toString().startsWith(f.toString().replace(".yaml", "")))
                    .findFirst()
                    .orElseThrow();
        }
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void shippedReadingsAreUnderstoodAndSayThatTheyAreInvented(Path file) throws IOException {
        Circuit circuit = Objects.requireNonNull(
                CircuitReader.withShippedParts().read(board(file)).circuit());
        ReadingsFile read = new ReadingsReader(circuit).read(file);

        assertThat(read.problems()).isEmpty();
        assertThat(read.findings().size()).isGreaterThan(3);
        assertThat(read.findings().evidence().get(0).note()).contains("invented");
        Meter meter = read.meters().get(0);
        ReadingsFile again =
                new ReadingsReader(circuit).read("again.csv", new ReadingsWriter(circuit).text(read.findings(), meter));
        assertThat(again.findings()).isEqualTo(read.findings());
    }

    /** The readings are those that {@code suppose} computes for this fault, and so the fault is known. */
    @Test
    void theFaultThatTheReadingsWereMadeOfLeads(@TempDir Path data) throws IOException {
        System.setProperty(Store.PROPERTY, data.toString());
        try {
            Typed typed =
                    Typed.in("match", "circuits/first-light.yaml", "circuits/first-light-dark.csv", "--next", "--json");
            JsonNode answer = new ObjectMapper().readTree(typed.out());

            assertThat(typed.code()).isZero();
            assertThat(answer.at("/candidates/0/repair/0").asText()).isEqualTo("R2");
            assertThat(answer.at("/candidates/0/repair")).hasSize(1);
            assertThat(answer.at("/candidates/0/suppositions/0/supposition/0").asText())
                    .startsWith("R2=");
            assertThat(answer.at("/candidates/0/fits").asInt()).isEqualTo(6);
            assertThat(answer.at("/howFar/complete").asBoolean()).isTrue();
            assertThat(answer.at("/next/verdict").asText()).isNotEmpty();

            Path whole = data.resolve("whole-lamp.csv");
            Files.writeString(whole, """
                    function,from,to,value,unit
                    lamp,E1,,dark,
                    d.c. volts,TP1,gnd,16.84,V
                    d.c. volts,TP2,gnd,14.41,V
                    ohms,TP2,gnd,6.0,ohm
                    """);
            assertThat(Typed.in("match", "circuits/first-light.yaml", whole.toString())
                            .out())
                    .contains("E1, lamp: dark (line 2) does not fit the rest. Look again");

            Typed text = Typed.in("match", "circuits/first-light.yaml", "circuits/first-light-dark.csv", "--next");
            assertThat(text.out()).contains("What fits", "Change R2. Fits 6 of 6.", "R2 is open", "Measure next");
            assertThat(text.out().lines()).allMatch(l -> l.length() <= 100);
        } finally {
            System.clearProperty(Store.PROPERTY);
        }
    }

    @Test
    void helpTellsWhatAFileOfReadingsIs() {
        Typed help = Typed.in("match", "--help");

        assertThat(help.code()).isZero();
        assertThat(help.out())
                .contains(
                        "arrangement,function,from,to,value,unit,meter,note", "--next", "--out-of-reach", "Exit codes");
        assertThat(help.out().lines()).allMatch(l -> l.length() <= 100);
    }

    @Test
    void aFileThatCannotBeUsedEndsBeforeAnythingIsWorkedOut() {
        Typed typed = Typed.in("match", "circuits/first-light.yaml", "circuits/night-ferry-blown.csv");

        assertThat(typed.code()).isEqualTo(2);
        assertThat(typed.err()).contains("circuits/night-ferry-blown.csv:2: from, cell C2: ", "F201");
        assertThat(typed.out()).isEmpty();
        assertThat(Typed.in("match", "circuits/first-light.yaml").code()).isEqualTo(2);
    }
}
