package fusetale.bench;

import static fusetale.model.PartsBox.bridge;
import static fusetale.model.PartsBox.circuit;
import static fusetale.model.PartsBox.electrolytic;
import static fusetale.model.PartsBox.resistor;
import static fusetale.model.PartsBox.wire;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fusetale.circuit.Circuit;
import fusetale.circuit.MeterFunction;
import fusetale.circuit.Part;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * 28 V 60 Hz behind 0.40 ohm, a bridge of 35 A, 12 000 µF with 30 mΩ, a load of 20 ohm: an independent nodal integration by
 * the trapezoidal rule with 5 000 to 20 000 steps a cycle gave the figures, good to ±0.1 %. The mains plays the winding here;
 * the d.c. side floats.
 */
class BridgeSupplyTest {
    private static final Check DC = new Check("plus", "minus", MeterFunction.DC_VOLTS);
    private static final Check AC = new Check("plus", "minus", MeterFunction.AC_VOLTS);
    private static final Check WINDING = new Check("line", "neutral", MeterFunction.AC_VOLTS);

    static Seen look(Circuit circuit, Arrangement arrangement, Meter meter, List<Check> checks) {
        try {
            return Bench.of(circuit, arrangement, meter)
                    .look(checks, null, () -> false)
                    .orElse(reason -> {
                        throw new AssertionError(reason);
                    });
        } catch (UnfitArrangement e) {
            throw new AssertionError(e);
        }
    }

    private static Seen look(Meter meter, double volts, double sourceOhms, List<Part> parts) {
        Circuit circuit = circuit(volts, sourceOhms, parts.toArray(Part[]::new));
        return look(circuit, Arrangement.powered(circuit), meter, List.of(DC, AC, WINDING));
    }

    private static List<Part> supply(double loadOhms, Part... more) {
        List<Part> parts = new ArrayList<>(List.of(
                bridge("BR1", "line", "neutral", "plus", "minus"),
                electrolytic("C1", "plus", "minus", 0.012, 0.03),
                resistor("R1", "plus", "minus", loadOhms)));
        parts.addAll(List.of(more));
        return parts;
    }

    @Test
    void healthySupplyReads() {
        Seen seen = look(Meter.trueRms4000(), 28, 0.40, supply(20));

        assertThat(seen.readings().get(0).value()).isCloseTo(33.857, within(0.034));
        assertThat(seen.readings().get(1).value()).isCloseTo(0.2773, within(0.0004));
        assertThat(seen.readings().get(2).value()).isCloseTo(27.081, within(0.027));
        assertThat(seen.readings()).extracting(Reading::shows).containsExactly("33.86 V", "0.277 V", "27.08 V");
    }

    @Test
    void averageRespondingMeterReadsTheRippleLower() {
        Seen seen = look(Meter.averageResponding(), 28, 0.40, supply(20));

        assertThat(seen.readings().get(1).value()).isCloseTo(0.2667, within(0.0004));
    }

    @Test
    void healthySupplyCarries() {
        Seen seen = look(Meter.trueRms4000(), 28, 0.40, supply(20));

        assertThat(seen.volts("plus", "minus").peakToPeak()).isCloseTo(0.934, within(0.003));
        assertThat(seen.amps("mains").rms()).isCloseTo(3.429, within(0.0035));
        assertThat(seen.amps("mains").highest()).isCloseTo(8.745, within(0.02));
        assertThat(seen.amps("BR1.leg1").mean()).isCloseTo(0.8464, within(0.0009));
        assertThat(seen.amps("C1").rms()).isCloseTo(2.977, within(0.003));
    }

    @Test
    void lightLoadReads() {
        Seen seen = look(Meter.trueRms4000(), 28, 0.40, supply(1000));

        assertThat(seen.readings().get(0).value()).isCloseTo(37.72, within(0.038));
        assertThat(seen.amps("mains").rms()).isCloseTo(0.1305, within(0.0003));
    }

    @Test
    void lowVoltageSupplyReads() {
        Seen seen = look(Meter.trueRms4000(), 10, 0.15, supply(5));

        assertThat(seen.readings().get(0).value()).isCloseTo(10.465, within(0.0105));
        assertThat(seen.readings().get(1).value()).isCloseTo(0.321, within(0.001));
        assertThat(seen.amps("mains").rms()).isCloseTo(3.896, within(0.004));
    }

    /** The rail still reads nearly right while the winding burns: leg 2 carries 29.7 A on average. */
    @Test
    void shortedLegHidesInTheRailButNotInTheWinding() {
        Seen seen = look(Meter.trueRms4000(), 28, 0.40, supply(20, wire("W1", "line", "plus", 1e-3)));

        assertThat(seen.readings().get(0).value()).isCloseTo(32.61, within(0.04));
        assertThat(seen.readings().get(1).value()).isCloseTo(0.575, within(0.002));
        assertThat(seen.amps("mains").rms()).isCloseTo(47.11, within(0.05));
        assertThat(Math.abs(seen.amps("mains").mean())).isCloseTo(28.03, within(0.05));
        assertThat(seen.amps("BR1.leg2").mean()).isCloseTo(29.66, within(0.04));
        assertThat(seen.amps("BR1.leg3").mean()).isCloseTo(0, within(0.001));
        assertThat(seen.readings().get(2).value()).isCloseTo(14.8, within(0.1));
    }

    @Test
    void withoutItsCapacitorTheRailIsAllRipple() {
        List<Part> parts = supply(20);
        parts.remove(1);
        Seen seen = look(Meter.trueRms4000(), 28, 0.40, parts);

        assertThat(seen.readings().get(0).value()).isCloseTo(23.09, within(0.023));
        assertThat(seen.readings().get(1).value()).isCloseTo(11.82, within(0.012));
        assertThat(seen.amps("mains").rms()).isCloseTo(1.297, within(0.0013));
    }
}
