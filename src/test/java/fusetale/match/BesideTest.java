package fusetale.match;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fusetale.bench.Check;
import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitReader;
import fusetale.circuit.MeterFunction;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Counted by hand on the drawing of Fog Bell: the switch in the booth and what feeds the thyristor's gate. */
class BesideTest {
    private static final Circuit BELL = Objects.requireNonNull(CircuitReader.withShippedParts()
            .read(Path.of("circuits/fog-bell.yaml"))
            .circuit());

    private static final Check SWITCH = new Check("S1.one", "S1.two", MeterFunction.OHMS);
    private static final Check SHUNT = new Check("R3.one", "R3.two", MeterFunction.OHMS);

    private final Beside beside = new Beside(BELL, new Asks(BELL));

    /** R2 and S1 alone meet at "booth"; R2, R3 and Q1 at "gate". */
    @Test
    void whatAloneMeetsAPartIsNearest() {
        Map<Check, Double> near = beside.of(List.of("R2"), Set.of());

        assertThat(near.get(SWITCH)).isEqualTo(1);
        assertThat(near.get(SHUNT)).isCloseTo(Math.sqrt(2.0 / 3), within(1e-12));
    }

    /** C1 and Q2 share ground with R2, and nothing else; R2 is not beside itself. */
    @Test
    void groundBringsNothingTogether() {
        assertThat(beside.of(List.of("R2"), Set.of()).keySet())
                .extracting(c -> c.from().split("\\.", -1)[0])
                .contains("S1", "R3", "Q1")
                .doesNotContain("C1", "Q2", "R2");
    }

    @Test
    void whatWasMeasuredAcrossLeavesLessForMore() {
        Check firing = new Check("Q1.gate", "Q1.cathode", MeterFunction.DIODE_TEST);
        Check blocking = new Check("Q1.cathode", "Q1.gate", MeterFunction.DIODE_TEST);
        double before = beside.of(List.of("R2"), Set.of()).getOrDefault(blocking, 0.0);

        assertThat(beside.of(List.of("R2"), Set.of(firing)).get(blocking)).isEqualTo(before / 2);
    }
}
