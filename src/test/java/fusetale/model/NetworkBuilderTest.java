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
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class NetworkBuilderTest {
    private static final Circuit FERRY = Objects.requireNonNull(CircuitReader.withShippedParts()
            .read(Path.of("circuits/night-ferry.yaml"))
            .circuit());
    private static final Circuit BELL = Objects.requireNonNull(CircuitReader.withShippedParts()
            .read(Path.of("circuits/fog-bell.yaml"))
            .circuit());

    private static final Circuit FILTER = Objects.requireNonNull(CircuitReader.withShippedParts()
            .read(Path.of("benchmarks/sallen-key-a.yaml"))
            .circuit());

    /** The three together have all kinds: the builds below have gone through every builder. */
    @Test
    void theMachinesOfTheNextTestsHoldEveryKindOfPart() {
        Set<Class<?>> kinds = Stream.of(FERRY, BELL, FILTER)
                .flatMap(machine -> machine.parts().stream())
                .map(Object::getClass)
                .collect(Collectors.toSet());

        assertThat(kinds).containsExactlyInAnyOrderElementsOf(Arrays.asList(Part.class.getPermittedSubclasses()));
    }

    @Test
    void everyKindOfPartBuildsASoundNetwork() {
        for (Circuit machine : List.of(FERRY, BELL, FILTER)) {
            Modelled m = NetworkBuilder.build(machine, Conditions.mains(120));

            assertThat(new Solver(m.network()).flaws()).as(machine.name()).isEmpty();
        }
    }

    @Test
    void everyPartHasACurrentToAskFor() {
        Modelled m = NetworkBuilder.build(FERRY, Conditions.mains(120));

        assertThat(FERRY.parts())
                .filteredOn(
                        p -> !(p instanceof fusetale.circuit.Bridge) && !(p instanceof fusetale.circuit.Transformer))
                .allSatisfy(p -> assertThat(m.element(p.name())).as(p.name()).isPresent());
        Modelled bell = NetworkBuilder.build(BELL, Conditions.mains(120));
        assertThat(List.of("Q1", "Q1.gate", "Q2", "K1", "K1.contact"))
                .allSatisfy(name -> assertThat(bell.element(name)).as(name).isPresent());
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
