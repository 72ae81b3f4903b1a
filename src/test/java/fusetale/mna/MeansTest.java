package fusetale.mna;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Means worked out without a curve. */
class MeansTest {
    /** A sine's mean is nothing, so a divider of a half takes half of what it rides on; a capacitor's reactance does not matter. */
    @Test
    void halfOfTheDirectPartOfASource() {
        Network.Builder b = Network.builder("gnd");
        b.voltage("V", "in", "gnd", new SourceShape.Sine(5, 10, 60, 0));
        b.resistor("R1", "in", "out", 1000);
        b.resistor("R2", "out", "gnd", 1000);
        b.capacitor("C", "out", "gnd", 1e-6);
        Network network = b.build();
        PeriodicState state = Solve.periodic(network);
        int out = network.nodes().indexOf("out");

        // steps at most a hundred-and-twenty-eighth of a period, of second order
        assertThat(state.meanVolts(out, 0)).isCloseTo(2.5, within(2.5e-4));
        assertThat(state.meanVolts(out, 0)).isCloseTo(state.volts(out, 0).mean(), within(1e-12));
        assertThat(state.meanVolts(0, out)).isEqualTo(-state.meanVolts(out, 0));
    }

    /** Rounding aside, the same as by a whole curve where steps are of many lengths. Reference: the definition of a mean. */
    @Test
    void thoseOfARectifiersCurves() {
        Network network = Supplies.bridge(28, 20, 0);
        PeriodicState state = Solve.periodic(network);
        for (int node = 1; node < network.nodes().size(); node++) {
            assertThat(state.meanVolts(node, 0))
                    .as(network.nodes().get(node))
                    .isCloseTo(state.volts(node, 0).mean(), within(1e-9));
        }
    }
}
