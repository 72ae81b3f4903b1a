package fusetale.match;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitReader;
import fusetale.fault.FailureMode;
import fusetale.fault.Fault;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Parts counted by hand on the drawing of Night Ferry, from the output that commands the trough kicker to its coil. */
class NearnessTest {
    private static final Circuit FERRY = Objects.requireNonNull(CircuitReader.withShippedParts()
            .read(Path.of("circuits/night-ferry.yaml"))
            .circuit());

    private static int parts(Nearness from, String part) {
        return from.parts(open(part));
    }

    @Test
    void aDriverIsAChainFromItsOutputToItsCoil() {
        Nearness driver = new Asks(FERRY).nearDriver("L205");

        assertThat(List.of("U205", "R215", "Q215", "Q205", "L205"))
                .extracting(p -> parts(driver, p))
                .containsExactly(0, 0, 1, 2, 4);
        assertThat(parts(driver, "R401")).isGreaterThan(4);
    }

    /** What a command may harm: the driver, what it drives and the diode across that, and not the ones beside. */
    @Test
    void whatIsDrivenAndTheDiodeAcrossItLieInTheChain() {
        Asks asks = new Asks(FERRY);

        assertThat(List.of("Q215", "Q205", "J2", "L205", "D205")).allMatch(p -> asks.isInChain("L205", open(p)));
        assertThat(List.of("Q206", "L206", "D206", "BR201", "R401")).noneMatch(p -> asks.isInChain("L205", open(p)));
    }

    private static List<Fault> open(String part) {
        return List.of(new Fault(part, "", FailureMode.OPEN, null));
    }

    @Test
    void whatDidNotAnswerAndItsDriverEncloseOneChannel() {
        Nearness driver = new Asks(FERRY).nearDriver("L205");
        Nearness coil = new Nearness(FERRY, Set.of("L205"));

        assertThat(List.of("U205", "R215", "Q215", "Q205", "J2", "L205", "D205"))
                .allMatch(p -> parts(driver, p) + parts(coil, p) <= 4);
        assertThat(List.of("Q206", "Q216", "L206", "U206", "BR201", "C101"))
                .allMatch(p -> parts(driver, p) + parts(coil, p) > 4);
    }

    /** All drivers hang on one rail, a part or two from each other: what fails in one still lies nearest to its own output. */
    @Test
    void whatFailsInADriverCountsMostThere() {
        Asks asks = new Asks(FERRY);
        for (String part : List.of("U204", "R214", "Q214", "Q204")) {
            List<Fault> fault = List.of(new Fault(part, "", FailureMode.OPEN, null));
            double own = asks.nearDriver("L204").ratio(fault);
            assertThat(List.of("L201", "L202", "L203", "L205", "L206", "L207", "L208", "E301"))
                    .allMatch(d -> asks.nearDriver(d).ratio(fault) < own);
        }
    }
}
