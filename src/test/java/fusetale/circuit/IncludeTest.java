package fusetale.circuit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Shared blocks with parameters, and what a repairer is told when they do not fit. */
class IncludeTest {
    private static final String BLOCK = """
            format: 1
            parameters: [n, ohms]
            parts:
              R2<n>: {is: resistor, between: [out, gnd], value: <ohms>, note: "load <n>"}
            testpoints:
              TP2<n>: {at: out, label: "load <n>"}
            drawing:
              R2<n>: {square: [1, 2]}
            """;

    @TempDir
    Path folder;

    @BeforeEach
    void shareABlock() throws IOException {
        Files.createDirectories(folder.resolve("circuits/blocks"));
        block("load.yaml", BLOCK);
    }

    private void block(String name, String text) throws IOException {
        Files.writeString(folder.resolve("circuits/blocks").resolve(name), text);
    }

    private CircuitFile read(String includes) throws IOException {
        Path file = folder.resolve("circuits/bench.yaml");
        Files.writeString(file, Sample.with("parts:\n", "include:\n" + includes + "\nparts:\n"));
        return CircuitReader.withShippedParts().read(file);
    }

    private List<String> told(String includes) throws IOException {
        String place = Includes.name(folder) + "/circuits/";
        return read(includes).problems().stream()
                .map(p -> p.toString().replace(place, ""))
                .toList();
    }

    @Test
    void blockBecomesPartsWithItsParametersFilledIn() throws IOException {
        CircuitFile file = read("  - {file: blocks/load.yaml, with: {n: 1, ohms: 8 ohm}}\n"
                + "  - {file: blocks/load.yaml, with: {n: 2, ohms: 10 ohm}, at: [3, 4]}");

        Circuit circuit = Objects.requireNonNull(file.circuit(), file.problems()::toString);
        assertThat(circuit.part("R21").orElseThrow().about().note()).isEqualTo("load 1");
        assertThat(((Resistor) circuit.part("R22").orElseThrow()).ohms().si()).isEqualTo(10);
        assertThat(circuit.point("TP22").orElseThrow().label()).isEqualTo("load 2");
    }

    @Test
    void blockIsMovedOnTheDrawing() throws IOException {
        CircuitFile file = read("  - {file: blocks/load.yaml, with: {n: 1, ohms: 8 ohm}, at: [3, 4]}");

        assertThat(Objects.requireNonNull(file.circuit()).drawing().places())
                .containsEntry("R21", new Stand(new Square(4, 6)));
    }

    @Test
    void missingBlockIsToldWithTheNearest() throws IOException {
        assertThat(told("  - {file: blocks/lode.yaml}"))
                .containsExactly("bench.yaml:6: include: there is no file 'blocks/lode.yaml'; nearest: 'load.yaml'.");
    }

    @Test
    void missingAndUnknownParametersAreTold() throws IOException {
        assertThat(told("  - {file: blocks/load.yaml, with: {n: 1, ohm: 8 ohm}}"))
                .containsExactly(
                        "bench.yaml:6: include: 'with' lacks the parameter 'ohms' of blocks/load.yaml.",
                        "bench.yaml:6: include: 'ohm' is not a parameter of blocks/load.yaml; nearest: 'ohms'."
                                + " Allowed: n, ohms.");
    }

    @Test
    void parameterThatTheBlockDoesNotDeclareIsTold() throws IOException {
        block("load.yaml", BLOCK.replace("value: <ohms>", "value: <ohm>"));

        assertThat(told("  - {file: blocks/load.yaml, with: {n: 1, ohms: 8 ohm}}"))
                .containsExactly(
                        "blocks/load.yaml:2: warning: parameters: 'ohms' is declared, but <ohms> stands nowhere.",
                        "blocks/load.yaml:4: '<ohm>' is not among the parameters of this block; nearest: 'ohms'."
                                + " Allowed: n, ohms.");
    }

    @Test
    void unfitParameterIsToldWithBothPlaces() throws IOException {
        assertThat(told("  - {file: blocks/load.yaml, with: {n: 1, ohms: 8}}"))
                .containsExactly("blocks/load.yaml:4: R2<n> value: '8' has no unit: write '8 ohm' or '8R' (filled in by"
                        + " bench.yaml:6). Allowed: a resistance such as 4k7, 0R47 or 0.47 ohm, a tolerance may"
                        + " follow: ±10 %.");
    }

    @Test
    void mistakeInABlockUsedTwiceIsToldOnce() throws IOException {
        block("load.yaml", BLOCK.replace("note:", "nota:"));

        assertThat(told("  - {file: blocks/load.yaml, with: {n: 1, ohms: 8 ohm}}\n"
                        + "  - {file: blocks/load.yaml, with: {n: 2, ohms: 8 ohm}, at: [3, 0]}"))
                .containsExactly("blocks/load.yaml:4: R2<n>: key 'nota' is not known here; nearest: 'note'."
                        + " Allowed: is, between, value, tolerance, watts, style, note, mounting.");
    }

    @Test
    void blockUsedTwiceWithOneNameIsTold() throws IOException {
        assertThat(told("  - {file: blocks/load.yaml, with: {n: 1, ohms: 8 ohm}}\n"
                        + "  - {file: blocks/load.yaml, with: {n: 1, ohms: 8 ohm}, at: [3, 0]}"))
                .contains("blocks/load.yaml:4: R21: this name is already taken at blocks/load.yaml:4 (filled in by"
                        + " bench.yaml:7).");
    }

    @Test
    void blockThatIncludesItselfIsTold() throws IOException {
        block("load.yaml", BLOCK.replace("parts:\n", "include:\n  - {file: other.yaml}\nparts:\n"));
        block(
                "other.yaml",
                "format: 1\ninclude: [{file: load.yaml, with: {n: 2, ohms: 1 ohm}}]\nparts: {}\ndrawing: {}\n");

        assertThat(told("  - {file: blocks/load.yaml, with: {n: 1, ohms: 8 ohm}}"))
                .containsExactly("blocks/other.yaml:2: include: this block includes itself: bench.yaml ->"
                        + " blocks/load.yaml -> blocks/other.yaml -> blocks/load.yaml.");
    }

    @Test
    void blockThatDoublesWithoutEndIsCutOff() throws IOException {
        StringBuilder many = new StringBuilder("format: 1\nparts: {}\ndrawing: {}\ninclude:\n");
        for (int i = 0; i < 100; i++) {
            many.append("  - {file: none.yaml}\n");
        }
        block("none.yaml", "format: 1\nparts: {}\ndrawing: {}\n");
        block("many.yaml", many.toString());

        assertThat(told("  - {file: blocks/many.yaml}\n".repeat(3)))
                .containsExactly(
                        "blocks/many.yaml:103: include: the blocks of this circuit are used more than 200 times in"
                                + " all.");
    }

    @Test
    void pathOutOfTheFolderIsRefused() throws IOException {
        assertThat(told("  - {file: ../../secret.yaml}"))
                .containsExactly("bench.yaml:6: include: '../../secret.yaml' leads outside the circuit's folder."
                        + " Allowed: a path from this file's folder, as blocks/coil-driver.yaml, no further up than one"
                        + " folder.");
    }

    @Test
    void textWithoutAFolderCannotInclude() {
        String text = Sample.with("parts:\n", "include:\n  - {file: blocks/load.yaml}\nparts:\n");

        assertThat(Sample.read(text).problems())
                .extracting(Problem::toString)
                .containsExactly("bench.yaml:6: include: a text that lies in no folder cannot include blocks.");
    }
}
