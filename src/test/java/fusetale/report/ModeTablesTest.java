package fusetale.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitReader;
import fusetale.fault.Catalogue;
import fusetale.fault.FaultForm;
import fusetale.fault.Supposition;
import fusetale.sentence.SentenceException;
import fusetale.sentence.SentenceParser;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Lists of failures of every part of every machine shipped. */
class ModeTablesTest {
    private static Circuit read(String machine) {
        return Objects.requireNonNull(CircuitReader.withShippedParts()
                .read(Path.of("circuits", machine + ".yaml"))
                .circuit());
    }

    private static Stream<List<Mode>> parts(Circuit circuit) {
        return Catalogue.designators(circuit).stream().map(part -> Mode.of(circuit, part));
    }

    @ParameterizedTest
    @ValueSource(strings = {"first-light", "fog-bell", "night-ferry"})
    void everyFailureIsToldInTwoLinesEach(String machine) {
        for (FaultForm form : Catalogue.possible(read(machine))) {
            assertThat(List.of(
                            form.telling().happened(),
                            form.telling().confirmation(),
                            form.prior().source()))
                    .allSatisfy(text -> {
                        assertThat(text).isNotBlank();
                        assertThat(Paragraph.lines(text, TextTable.WIDTH)).hasSizeLessThanOrEqualTo(2);
                    });
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"first-light", "fog-bell", "night-ferry"})
    void everyListFitsAHundredColumns(String machine) {
        Circuit circuit = read(machine);

        assertThat(parts(circuit).flatMap(modes -> ModeTables.part(circuit, modes, Emphasis.NONE).stream()))
                .hasSizeGreaterThan(100)
                .allMatch(line -> Paragraph.length(line) <= TextTable.WIDTH);
        assertThat(ModeTables.circuit(circuit, Emphasis.NONE))
                .hasSize(3 + Catalogue.designators(circuit).size())
                .allMatch(line -> Paragraph.length(line) <= TextTable.WIDTH);
    }

    @ParameterizedTest
    @ValueSource(strings = {"first-light", "fog-bell", "night-ferry"})
    void whatIsListedCanBeTyped(String machine) throws SentenceException {
        Circuit circuit = read(machine);
        SentenceParser parser = new SentenceParser(circuit);
        for (Mode mode : (Iterable<Mode>) parts(circuit).flatMap(List::stream)::iterator) {
            Supposition meant = new Supposition(List.of(mode.form().usual()));

            assertThat(parser.parse(mode.typed())).isEqualTo(meant);
            assertThat(parser.parse(mode.sentence())).isEqualTo(meant);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"first-light", "fog-bell", "night-ferry"})
    void sharesOfAPartAreTheWholeLikeliestFirst(String machine) {
        assertThat(parts(read(machine))).allSatisfy(modes -> {
            assertThat(modes.stream().mapToDouble(Mode::shareRatio).sum()).isCloseTo(1, within(1e-9));
            assertThat(modes.stream().map(m -> -m.shareRatio())).isSorted();
        });
    }

    @ParameterizedTest
    @ValueSource(strings = {"first-light", "fog-bell", "night-ferry"})
    void everyFailureOfAPartIsInItsTable(String machine) {
        Circuit circuit = read(machine);
        for (String part : Catalogue.designators(circuit)) {
            List<String> lines = ModeTables.part(circuit, Mode.of(circuit, part), Emphasis.NONE);

            assertThat(Catalogue.possible(circuit, part))
                    .allSatisfy(form -> assertThat(lines)
                            .anyMatch(line -> line.startsWith(
                                    form.target() + "=" + form.mode().compact() + " ")));
        }
    }
}
