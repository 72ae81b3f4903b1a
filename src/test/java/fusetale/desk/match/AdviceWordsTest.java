package fusetale.desk.match;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.bench.Arrangement;
import fusetale.bench.Observation;
import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitReader;
import fusetale.match.Ask;
import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class AdviceWordsTest {
    private static final Circuit BOARD = Objects.requireNonNull(CircuitReader.withShippedParts()
            .read(Path.of("circuits/first-light.yaml"))
            .circuit());

    @ParameterizedTest
    @EnumSource
    void whateverIsLookedAtHasATitle(Observation.Aspect aspect) {
        assertThat(AdviceWords.title(BOARD, new Ask.Noticed(Arrangement.unpowered(), "F1", aspect)))
                .contains("F1")
                .hasSizeGreaterThan(6);
    }
}
