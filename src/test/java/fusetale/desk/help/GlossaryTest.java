package fusetale.desk.help;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitReader;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class GlossaryTest {
    private static final Glossary ALL = Glossary.all(Map.of());

    private static Circuit circuit(String name) {
        return Objects.requireNonNull(CircuitReader.withShippedParts()
                .read(Path.of("circuits", name + ".yaml"))
                .circuit());
    }

    private static List<String> titles(List<Glossary.Entry> entries) {
        return entries.stream().map(Glossary.Entry::title).toList();
    }

    @Test
    void everyWordIsFoundByItsBeginnings() {
        assertThat(ALL.entries()).hasSizeGreaterThan(40);
        for (Glossary.Entry entry : ALL.entries()) {
            for (String name : entry.names()) {
                for (int length = 1; length <= name.length(); length++) {
                    assertThat(ALL.startingWith(name.substring(0, length))).contains(entry);
                }
            }
        }
    }

    @ParameterizedTest
    @CsvSource({
        "rect,'Rectifier, bridge'",
        "BRID,'Rectifier, bridge'",
        "tp,'Test point, TP'",
        "capac,'Filter capacitor, reservoir capacitor'"
    })
    void aBeginningFindsItsWord(String typed, String title) {
        assertThat(titles(ALL.startingWith(typed))).contains(title);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "R2 is open;Open",
                "meter on d.c. volts;Meter|D.c. volts, DC volts",
                "F1 holds a 25 A fuse;Fuse",
                "can't tell;Too close to tell, too close, can't tell",
                "opener;"
            })
    void theWordsOfATextAreFoundInTheirOrder(String text, String titles) {
        assertThat(String.join("|", titles(ALL.in(text)))).isEqualTo(titles == null ? "" : titles);
    }

    @Test
    void whatIsNoWordFindsNothing() {
        assertThat(ALL.startingWith("xylo")).isEmpty();
    }

    /** Figures come from the board alone. */
    @Test
    void noFigureStandsInTheWordsThemselves() {
        assertThat(ALL.entries())
                .allSatisfy(e -> assertThat(e.says()).isNotBlank().doesNotContainPattern("\\d"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"first-light", "night-ferry", "fog-bell"})
    void whatIsOnTheBoardIsNamedFromItsFile(String name) {
        Circuit circuit = circuit(name);
        Map<String, String> here = OnThisBoard.of(circuit);

        assertThat(here.get("test-point")).contains(circuit.points().get(0).name());
        assertThat(here.get("ground")).contains(circuit.ground().name());
        // each of these is the key of a word, so that somebody sees it
        assertThat(Glossary.all(here).entries().stream()
                        .filter(e -> !e.here().isEmpty())
                        .count())
                .isEqualTo(here.size());
    }

    @Test
    void fusesComeWithTheirRating() {
        assertThat(OnThisBoard.of(circuit("night-ferry")).get("fuse")).contains("F201 6 A");
    }
}
