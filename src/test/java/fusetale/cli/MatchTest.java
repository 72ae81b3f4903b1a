package fusetale.cli;

import static fusetale.report.MatchAnswers.FERRY;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import fusetale.bench.Meter;
import fusetale.circuit.Circuit;
import fusetale.explore.Progress;
import fusetale.match.Findings;
import fusetale.match.NextReadings;
import fusetale.match.Ranking;
import fusetale.report.Emphasis;
import fusetale.report.MatchAnswers;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** The command with a matcher that answers what a test tells it to. */
class MatchTest {
    private static final String BOARD = "circuits/night-ferry.yaml";
    private static final String EXAMPLE = "circuits/night-ferry-blown.csv";
    private static final Ranking USUAL =
            MatchAnswers.ranking(List.of(MatchAnswers.bridge(0.9), MatchAnswers.healthy(0.05)), 0.03, List.of());

    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();
    private Findings findings = Findings.NONE;
    private Set<String> unreachable = Set.of();
    private String meter = "";

    private int type(Ranking ranking, Emphasis emphasis, String... arguments) {
        Match.Matching matching = (circuit, with) -> work(ranking, circuit, with);
        CommandLine line = new CommandLine(
                new Match(new Console(new PrintWriter(out, true), new PrintWriter(err, true), emphasis), matching));
        line.setExecutionExceptionHandler((problem, command, parsed) -> {
            err.append(String.valueOf(problem.getMessage()));
            return problem instanceof Refused refused ? refused.exitCode() : -1;
        });
        return line.execute(arguments);
    }

    private Match.Work work(Ranking ranking, Circuit circuit, Meter with) {
        assertThat(circuit.name()).isEqualTo(FERRY.name());
        meter = with.name();
        return new Match.Work() {
            @Override
            public Ranking rank(Findings found, Consumer<Ranking> sharper, Progress progress, BooleanSupplier stopped) {
                findings = found;
                sharper.accept(ranking);
                progress.at(640, 4576);
                return ranking;
            }

            @Override
            public NextReadings next(
                    Findings found, Set<String> outOfReach, Progress progress, BooleanSupplier stopped) {
                unreachable = outOfReach;
                progress.at(1, 2);
                return MatchAnswers.next(NextReadings.Verdict.GO_ON, "", MatchAnswers.advice());
            }
        };
    }

    private String file(String rows) throws IOException {
        return Files.writeString(folder.resolve("a.csv"), "function,from,value,meter\n" + rows)
                .toString();
    }

    /** Read with three readings, as the answers made by hand are. */
    private String three() throws IOException {
        return file("fuse,F201,blown,\ndc,TP4,17.4,\ndc,TP5,17.4,\n");
    }

    @Test
    void whatFitsIsPrintedAndTheExampleIsRead() throws IOException {
        int code = type(USUAL, Emphasis.NONE, BOARD, three());

        assertThat(code).isEqualTo(ExitCodes.DONE);
        assertThat(out.toString()).contains("What fits", "Change BR201").doesNotContain("Measure next");
        assertThat(err.toString()).isEmpty();
        assertThat(findings.size()).isEqualTo(3);
        assertThat(meter).isEqualTo(Meter.builtIn().get(0).name());
        assertThat(type(USUAL, Emphasis.NONE, BOARD, EXAMPLE, "--csv")).isZero();
        assertThat(findings.size()).isEqualTo(8);
    }

    @Test
    void nextIsToldWhereAskedFor() throws IOException {
        int code = type(USUAL, Emphasis.NONE, BOARD, three(), "--next", "--out-of-reach", "tp7,J1.1");

        assertThat(code).isEqualTo(ExitCodes.DONE);
        assertThat(out.toString()).contains("Measure next");
        assertThat(unreachable).containsExactlyInAnyOrder("TP7", "J1.1");
    }

    @Test
    void itAnswersNoWhereNothingInTheListExplainsTheReadings() throws IOException {
        Ranking unlisted = MatchAnswers.ranking(List.of(MatchAnswers.bridge(0.2)), 0.7, List.of());

        assertThat(type(unlisted, Emphasis.NONE, BOARD, three())).isEqualTo(ExitCodes.NO);
        assertThat(out.toString()).contains("Something not in the list");
    }

    @Test
    void anEmptyAnswerIsNone() throws IOException {
        Ranking none = new Ranking(
                List.of(), 0.03, false, List.of(), List.of(), List.of(), new Ranking.HowFar(0, 143, 0, 4576));

        assertThat(type(none, Emphasis.NONE, BOARD, three())).isEqualTo(ExitCodes.NO_ANSWER);
        assertThat(err.toString()).contains("no answer yet");
    }

    @Test
    void theTableForASpreadsheetWarnsBesideTheAnswer() throws IOException {
        Ranking danger = MatchAnswers.ranking(List.of(MatchAnswers.bridge(0.9)), 0.03, List.of("a short"));

        assertThat(type(danger, Emphasis.NONE, BOARD, three(), "--csv")).isEqualTo(ExitCodes.DONE);
        assertThat(err.toString()).isEqualTo("DO NOT POWER UP: a short\n");
        assertThat(out.toString()).startsWith("share,repair,");
    }

    @Test
    void progressIsToldOnATerminalAlone() throws IOException {
        type(USUAL, Emphasis.TERMINAL, BOARD, three());

        assertThat(err.toString()).contains("640 of 4576. So far: BR201, 90 of 100");
    }

    @Test
    void everyErrorOfTheReadingsIsToldAtOnce() throws IOException {
        String file = file("dc,TP44,1,\nfuse,F201,blwon,\n");

        assertThat(type(USUAL, Emphasis.NONE, BOARD, file)).isEqualTo(ExitCodes.UNUSABLE);
        assertThat(err.toString())
                .contains("a.csv:2: from, cell B2: ", "a.csv:3: value, cell C3: ", "nearest: 'blown'");
        assertThat(out.toString()).isEmpty();
    }

    @Test
    void whatCannotBeAskedIsRefusedInWords() throws IOException {
        String file = three();

        assertThat(type(USUAL, Emphasis.NONE, BOARD, file, "--json", "--csv")).isEqualTo(ExitCodes.UNUSABLE);
        assertThat(type(USUAL, Emphasis.NONE, BOARD, file, "--next", "--csv")).isEqualTo(ExitCodes.UNUSABLE);
        assertThat(type(USUAL, Emphasis.NONE, BOARD, file, "--out-of-reach", "TP4"))
                .isEqualTo(ExitCodes.UNUSABLE);
        assertThat(type(USUAL, Emphasis.NONE, BOARD, file, "--next", "--out-of-reach", "TP44"))
                .isEqualTo(ExitCodes.UNUSABLE);
        assertThat(type(USUAL, Emphasis.NONE, BOARD, file, "--meter", "guesswork"))
                .isEqualTo(ExitCodes.UNUSABLE);
        assertThat(type(USUAL, Emphasis.NONE, BOARD, folder.resolve("none.csv").toString()))
                .isEqualTo(ExitCodes.UNUSABLE);
        assertThat(type(USUAL, Emphasis.NONE, "circuits/none.yaml", file)).isEqualTo(ExitCodes.UNUSABLE);
        assertThat(err.toString()).contains("--out-of-reach: TP44", "guesswork", "no such file");
    }

    @Test
    void oneMeterReadsAll() throws IOException {
        assertThat(type(USUAL, Emphasis.NONE, BOARD, file("dc,TP4,1,average\ndc,TP5,1,\n")))
                .isZero();
        assertThat(meter).startsWith("average");
        String two = file("dc,TP4,1,average\ndc,TP5,1,basic\n");
        assertThat(type(USUAL, Emphasis.NONE, BOARD, two)).isEqualTo(ExitCodes.UNUSABLE);
        assertThat(type(USUAL, Emphasis.NONE, BOARD, two, "--meter", "basic")).isZero();
        assertThat(meter).startsWith("basic");
    }

    @Test
    void theJsonKeepsToItsSchema() throws IOException {
        Ranking danger = MatchAnswers.ranking(List.of(MatchAnswers.bridge(0.9)), 0.03, List.of("a short"));
        type(danger, Emphasis.NONE, BOARD, three(), "--json", "--next");
        JsonNode answer = new ObjectMapper().readTree(out.toString());
        SchemaRegistry registry = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
        String text = Files.readString(Path.of("shared/reference/schema/match.schema.json"));
        Schema schema = registry.getSchema(text);
        Schema meta = registry.getSchema(SchemaLocation.of(SpecificationVersion.DRAFT_2020_12.getDialectId()));

        assertThat(meta.validate(text, InputFormat.JSON)).isEmpty();
        assertThat(schema.validate(answer)).isEmpty();
        // the schema knows every key and asks for every key
        assertThat(schema.validate(new ObjectMapper().readTree(out.toString().replace("\"candidates\"", "\"x\""))))
                .isNotEmpty();
        assertThat(answer.path("doNotPowerUp").asBoolean()).isTrue();
        assertThat(answer.path("candidates").path(0).path("repair").path(0).asText())
                .isEqualTo("BR201");
        assertThat(answer.path("candidates").path(0).path("said").asText()).isEqualTo("90 of 100");
        assertThat(answer.path("findings")
                        .path(0)
                        .path("readings")
                        .path(1)
                        .path("value")
                        .asDouble())
                .isEqualTo(17.4);
        assertThat(answer.path("findings")
                        .path(0)
                        .path("readings")
                        .path(0)
                        .path("value")
                        .isNull())
                .isTrue();
        assertThat(answer.path("next").path("advice").path(0).path("function").asText())
                .isEqualTo("diode test");
        out.getBuffer().setLength(0);
        type(USUAL, Emphasis.NONE, BOARD, three(), "--json");
        JsonNode unasked = new ObjectMapper().readTree(out.toString());
        assertThat(unasked.path("next").isNull()).isTrue();
        assertThat(schema.validate(unasked)).isEmpty();
    }

    @Test
    void anInterruptionAsksAndWaitsUntilTheAnswerIsPrinted() throws InterruptedException {
        Thread system;
        try (Interruption interruption = Interruption.listening()) {
            assertThat(interruption.asked()).isFalse();
            system = new Thread(interruption::interrupt, "system");
            system.start();
            while (!interruption.asked()) {
                Thread.onSpinWait();
            }
            assertThat(system.isAlive()).isTrue();
        }
        system.join(5000);
        assertThat(system.isAlive()).isFalse();
    }
}
