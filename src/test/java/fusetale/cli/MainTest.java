package fusetale.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What stands in for the window where there is no display. */
class MainTest {
    private static final String FIRST_LIGHT = "circuits/first-light.yaml";

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "power off | readings",
                "Power off, F1 pulled, meter on ohms. | readings",
                "R2 is open | suppose",
                "Suppose R2 is open. Power off. | suppose",
                "R77 is open | suppose",
                "gibberish | suppose"
            })
    void aSentenceAboutTheBenchAloneAsksForReadings(String sentence, String command) {
        assertThat(Main.instead(Optional.of(FIRST_LIGHT), List.of(sentence)))
                .containsExactly(command, FIRST_LIGHT, sentence);
    }

    @Test
    void whatIsLackingIsAskedForByTheCommand() {
        assertThat(Main.instead(Optional.empty(), List.of())).containsExactly("--help");
        assertThat(Main.instead(Optional.of(FIRST_LIGHT), List.of())).containsExactly("readings", FIRST_LIGHT);
        assertThat(Main.instead(Optional.of("none.yaml"), List.of("power off"))).startsWith("suppose", "none.yaml");
    }
}
