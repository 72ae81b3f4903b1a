package fusetale.match;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitReader;
import fusetale.fault.Supposition;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** The list of what may be wrong. */
class HypothesesTest {
    private static List<Supposition> list(String text) {
        var read = CircuitReader.withShippedParts().readText("board.yaml", text);
        Circuit circuit =
                Objects.requireNonNull(read.circuit(), () -> read.problems().toString());
        return Hypotheses.of(circuit).stream().map(Hypothesis::usual).toList();
    }

    /** A fuse has no direction: which of its clips a file names first changes nothing of what it protects. */
    @Test
    void theOrderOfAFusesClipsDoesNotMatter() throws Exception {
        String text = Files.readString(Path.of("circuits/first-light.yaml"));
        String turned = text.replace("between: [s1, ac1]", "between: [ac1, s1]");

        assertThat(turned).isNotEqualTo(text);
        assertThat(list(turned)).containsExactlyInAnyOrderElementsOf(list(text));
    }
}
