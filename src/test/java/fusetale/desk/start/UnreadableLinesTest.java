package fusetale.desk.start;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.circuit.CircuitReader;
import fusetale.circuit.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is shown of a circuit file that cannot be used. */
class UnreadableLinesTest {
    @TempDir
    Path folder;

    @Test
    void everyProblemStandsAtItsLine() throws IOException {
        String good = Files.readString(Path.of("circuits/first-light.yaml"));
        String text = good.replace("is: fuse", "is: fusse").replace("value: 1 kohm", "value: much");
        Path file = Files.writeString(folder.resolve("first-light.yaml"), text);
        List<Problem> problems = CircuitReader.withShippedParts().read(file).problems();

        List<UnreadableView.Line> lines = UnreadableView.lines(file, text, problems);

        assertThat(problems).hasSizeGreaterThan(1);
        assertThat(String.join(
                        "\n", lines.stream().map(UnreadableView.Line::text).toList()))
                .isEqualTo(text);
        assertThat(lines.stream().flatMap(l -> l.problems().stream()).toList())
                .containsExactlyInAnyOrderElementsOf(problems);
        assertThat(lines)
                .allSatisfy(l -> assertThat(l.problems())
                        .allSatisfy(p -> assertThat(p.line()).isEqualTo(l.number())));
        assertThat(lines.stream().filter(l -> l.text().contains("fusse")))
                .first()
                .satisfies(l -> assertThat(l.spoken()).contains("'fusse'"));
    }
}
