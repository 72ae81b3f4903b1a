package fusetale.mna;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Structural errors are found before numbers are, and name nets and elements. */
class StructureTest {
    private static final SourceShape ONE = new SourceShape.Constant(1);

    private static NotSolved only(List<NotSolved> flaws) {
        assertThat(flaws).hasSize(1);
        return flaws.get(0);
    }

    @Test
    void sectionJoinedToNothingIsNamed() {
        Network n = Network.builder("gnd")
                .voltage("E", "a", "gnd", ONE)
                .resistor("R1", "a", "gnd", 10)
                .resistor("R2", "lost1", "lost2", 10)
                .build();
        NotSolved flaw = only(new Solver(n).flaws());
        assertThat(flaw.kind()).isEqualTo(NotSolved.Kind.FLOATING);
        assertThat(flaw.names()).containsExactlyInAnyOrder("lost1", "lost2");
        assertThat(flaw.detail()).contains("lost1").contains("gnd");
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY})
    void sourceOfNoValueIsNamed(double volts) {
        Network n = Network.builder("gnd")
                .voltage("E", "a", "gnd", new SourceShape.Constant(volts))
                .resistor("R1", "a", "gnd", 10)
                .build();

        NotSolved flaw = only(new Solver(n).flaws());

        assertThat(flaw.kind()).isEqualTo(NotSolved.Kind.BAD_VALUE);
        assertThat(flaw.names()).containsExactly("E");
    }

    @Test
    void ringOfVoltageSourcesIsNamed() {
        Network n = Network.builder("gnd")
                .voltage("E1", "a", "gnd", ONE)
                .voltage("E2", "b", "a", ONE)
                .voltage("E3", "b", "gnd", ONE)
                .resistor("R", "b", "gnd", 10)
                .build();
        NotSolved flaw = only(new Solver(n).flaws());
        assertThat(flaw.kind()).isEqualTo(NotSolved.Kind.SOURCE_LOOP);
        assertThat(flaw.names()).containsExactlyInAnyOrder("E1", "E2", "E3");
    }

    @Test
    void nodeFedByCurrentSourcesOnlyIsACutSet() {
        Network n = Network.builder("gnd")
                .resistor("R", "a", "gnd", 10)
                .current("I1", "a", "b", ONE)
                .current("I2", "b", "gnd", ONE)
                .build();
        NotSolved flaw = only(new Solver(n).flaws());
        assertThat(flaw.kind()).isEqualTo(NotSolved.Kind.CUT_SET);
        assertThat(flaw.names()).containsExactly("b");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -5, Double.NaN, Double.POSITIVE_INFINITY})
    void valueThatIsNoneIsNamed(double ohms) {
        Network n = Network.builder("gnd")
                .voltage("E", "a", "gnd", ONE)
                .resistor("R7", "a", "gnd", ohms)
                .build();
        NotSolved flaw = only(new Solver(n).flaws());
        assertThat(flaw.kind()).isEqualTo(NotSolved.Kind.BAD_VALUE);
        assertThat(flaw.detail()).contains("R7");
    }

    @Test
    void atRestACapacitorJoinsNothing() {
        Network n = Network.builder("gnd")
                .voltage("E", "a", "gnd", ONE)
                .capacitor("C1", "a", "b", 1e-6)
                .capacitor("C2", "b", "gnd", 1e-6)
                .build();
        Solved<OperatingPoint> p = new Solver(n).operatingPoint(null);
        assertThat(p).isInstanceOf(Solved.Failed.class);
        assertThat(((Solved.Failed<OperatingPoint>) p).reason().names()).containsExactly("b");
    }

    @Test
    void atRestAWindingAcrossAnIdealSourceIsARing() {
        Network n = Network.builder("gnd")
                .voltage("E", "a", "gnd", ONE)
                .inductor("L", "a", "gnd", 1)
                .build();
        Solved<OperatingPoint> p = new Solver(n).operatingPoint(null);
        assertThat(p).isInstanceOf(Solved.Failed.class);
        NotSolved reason = ((Solved.Failed<OperatingPoint>) p).reason();
        assertThat(reason.kind()).isEqualTo(NotSolved.Kind.SOURCE_LOOP);
        assertThat(reason.names()).containsExactlyInAnyOrder("E", "L");
    }

    @Test
    void allFlawsAreToldAtOnce() {
        Network n = Network.builder("gnd")
                .voltage("E", "a", "gnd", ONE)
                .voltage("F", "a", "gnd", ONE)
                .resistor("R", "a", "gnd", 0)
                .resistor("S", "x", "y", 1)
                .build();
        assertThat(new Solver(n).flaws())
                .extracting(NotSolved::kind)
                .containsExactlyInAnyOrder(
                        NotSolved.Kind.BAD_VALUE, NotSolved.Kind.FLOATING, NotSolved.Kind.SOURCE_LOOP);
    }
}
