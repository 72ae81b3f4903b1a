package fusetale.mna;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** A meter laid across two nodes by a rank-one update reads what it reads as part of the network. */
class NortonTest {
    @Test
    void loadByUpdateEqualsLoadAsAnElementAtRest() {
        Network.Builder b = Network.builder("0")
                .voltage("E", "a", "0", new SourceShape.Constant(12))
                .resistor("R1", "a", "b", 1e6)
                .port("D", "b", "c", new PlainJunction(1e-9, 0.05, 0))
                .resistor("R2", "c", "0", 1e6);
        Network n = b.build();
        OperatingPoint updated = Solve.found(
                new Solver(n).with(new Norton(n.node("c"), 0, 1e-7, 2e-6)).operatingPoint(null));
        b.resistor("meter", "c", "0", 1e7).current("test", "0", "c", new SourceShape.Constant(2e-6));
        OperatingPoint built = Solve.rest(b.build());
        assertThat(updated.volts(n.node("c"), 0)).isCloseTo(built.volts(n.node("c"), 0), within(1e-9));
    }

    @Test
    void loadByUpdateEqualsLoadAsAnElementInThePeriodicState() {
        Network n = Supplies.bridge(28, 20, 0);
        int plus = n.node("plus");
        PeriodicState updated = Solve.found(new Solver(n)
                .with(new Norton(plus, 0, 0.05, 0))
                .periodicState(PeriodicSettings.mains(60), null, () -> false));
        PeriodicState built = Solve.periodic(Supplies.bridge(28, 10, 0));
        assertThat(updated.volts(plus, 0).mean()).isCloseTo(built.volts(plus, 0).mean(), within(1e-4));
    }
}
