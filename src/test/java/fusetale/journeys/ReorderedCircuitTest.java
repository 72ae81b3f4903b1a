package fusetale.journeys;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fusetale.bench.Arrangement;
import fusetale.bench.Bench;
import fusetale.bench.Check;
import fusetale.bench.Meter;
import fusetale.bench.Reading;
import fusetale.bench.Seen;
import fusetale.bench.UnfitArrangement;
import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitFile;
import fusetale.circuit.CircuitReader;
import fusetale.circuit.Part;
import fusetale.mna.Solved;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a meter shows does not depend on the order of a circuit file's parts, nor on what its nets are called. */
class ReorderedCircuitTest {
    /** Two searches that end within 9e-7 of full scale each and would go no further than 1e-5, with steps of their own. */
    private static final double FOUND_RATIO = 2e-5;

    private static final double FLOOR_VOLTS = 1e-5;

    @ParameterizedTest
    @CsvSource({
        "first-light, true, 1",
        "first-light, true, 2",
        "first-light, false, 3",
        "night-ferry, true, 4",
        "night-ferry, false, 5"
    })
    void orderOfPartsDoesNotMatter(String machine, boolean powered, long seed) throws UnfitArrangement {
        Circuit circuit = circuit(CircuitReader.withShippedParts().read(Path.of("circuits", machine + ".yaml")));
        List<Part> parts = new ArrayList<>(circuit.parts());
        Collections.shuffle(parts, new Random(seed));

        same(readings(circuit.withParts(parts), powered), readings(circuit, powered));
    }

    @ParameterizedTest
    @CsvSource({"true", "false"})
    void namesOfNetsDoNotMatter(boolean powered) throws UnfitArrangement {
        String text = text();
        // not the prose, and not BR1.ac1, which is a pin
        String renamed = text.replaceAll("\\braw\\b(?! supply)", "z9")
                .replaceAll("(?<!\\.)\\bac1\\b", "first")
                .replaceAll("\\bs2\\b", "m5");

        assertThat(renamed).isNotEqualTo(text);
        same(readings(read("renamed.yaml", renamed), powered), readings(read("first-light.yaml", text), powered));
    }

    private static void same(List<Reading> found, List<Reading> expected) {
        assertThat(found).hasSameSizeAs(expected);
        for (int k = 0; k < found.size(); k++) {
            Reading one = expected.get(k);
            assertThat(found.get(k).check().function()).isEqualTo(one.check().function());
            assertThat(found.get(k).overRange()).as(one.check().words()).isEqualTo(one.overRange());
            assertThat(found.get(k).value())
                    .as(one.check().words())
                    .isCloseTo(one.value(), within(FLOOR_VOLTS + FOUND_RATIO * Math.abs(one.value())));
        }
    }

    private static List<Reading> readings(Circuit circuit, boolean powered) throws UnfitArrangement {
        Arrangement arrangement = powered ? Arrangement.powered(circuit) : Arrangement.unpowered();
        Bench bench = Bench.of(circuit, arrangement, Meter.trueRms4000());
        Solved<Seen> seen = bench.look(Check.all(circuit, powered), null, () -> false);
        return seen.orElse(reason -> {
                    throw new AssertionError(reason);
                })
                .readings();
    }

    private static Circuit read(String name, String text) {
        return circuit(CircuitReader.withShippedParts().readText(name, text));
    }

    private static Circuit circuit(CircuitFile read) {
        assertThat(read.errors()).isEmpty();
        return Objects.requireNonNull(read.circuit());
    }

    private static String text() {
        try {
            return Files.readString(Path.of("circuits", "first-light.yaml"));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }
}
