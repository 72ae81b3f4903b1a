package fusetale.model;

import static fusetale.model.PartsBox.circuit;
import static fusetale.model.PartsBox.net;
import static fusetale.model.PartsBox.resistor;
import static fusetale.model.PartsBox.wire;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fusetale.circuit.About;
import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitReader;
import fusetale.circuit.Diode;
import fusetale.circuit.Part;
import fusetale.mna.Solver;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class NetworkBuilderTest {
    private static final Circuit FERRY = Objects.requireNonNull(CircuitReader.withShippedParts()
            .read(Path.of("circuits/night-ferry.yaml"))
            .circuit());

    /** The shipped machine has all kinds: the build below has gone through every builder. */
    @Test
    void theMachineOfTheNextTestsHoldsEveryKindOfPart() {
        Set<Class<?>> kinds = FERRY.parts().stream().map(Object::getClass).collect(Collectors.toSet());

        assertThat(kinds).containsExactlyInAnyOrderElementsOf(Arrays.asList(Part.class.getPermittedSubclasses()));
    }

    @Test
    void everyKindOfPartBuildsASoundNetwork() {
        Modelled m = NetworkBuilder.build(FERRY, Conditions.mains(120));

        assertThat(new Solver(m.network()).flaws()).isEmpty();
    }

    @Test
    void everyPartHasACurrentToAskFor() {
        Modelled m = NetworkBuilder.build(FERRY, Conditions.mains(120));

        assertThat(FERRY.parts())
                .filteredOn(
                        p -> !(p instanceof fusetale.circuit.Bridge) && !(p instanceof fusetale.circuit.Transformer))
                .allSatisfy(p -> assertThat(m.element(p.name())).as(p.name()).isPresent());
        assertThat(m.element("BR201.leg4")).isPresent();
        assertThat(m.element("T101.sol")).isPresent();
        assertThat(m.element("mains")).isPresent();
    }

    @Test
    void everyNetHasANode() {
        Modelled m = NetworkBuilder.build(FERRY, Conditions.unplugged());

        assertThat(m.nodes().keySet()).containsAll(FERRY.nets());
    }

    @Test
    void groundIsTheReference() {
        assertThat(NetworkBuilder.build(FERRY, Conditions.unplugged()).node(FERRY.ground()))
                .isZero();
    }

    @Test
    void aWireOfAHundredMegohmsDoesNotJoin() {
        Modelled m = PartsBox.unplugged(wire("W1", "a", "gnd", 1e8), resistor("R1", "b", "gnd", 1e6));

        assertThat(m.joined(net("a"), net("gnd"))).isFalse();
        assertThat(m.joined(net("b"), net("gnd"))).isTrue();
    }

    @Test
    void aModelOutOfBoundsNamesItsPart() {
        Circuit circuit =
                circuit(120, 1, new Diode("D7", net("a"), net("gnd"), PartsBox.junction(0, 2, 0.1), About.NOTHING));

        assertThatThrownBy(() -> NetworkBuilder.build(circuit, Conditions.unplugged()))
                .hasMessageContaining("D7")
                .hasMessageContaining("saturation current");
    }
}
