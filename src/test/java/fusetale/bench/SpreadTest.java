package fusetale.bench;

import static fusetale.model.PartsBox.about;
import static fusetale.model.PartsBox.circuit;
import static fusetale.model.PartsBox.net;
import static fusetale.model.PartsBox.quantity;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fusetale.circuit.About;
import fusetale.circuit.Circuit;
import fusetale.circuit.MeterFunction;
import fusetale.circuit.Resistor;
import fusetale.mna.Solved;
import fusetale.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class SpreadTest {
    private static final Meter METER = Meter.trueRms4000();
    private static final Check VOLTS = new Check("a", "gnd", MeterFunction.AC_VOLTS);
    private static final Check OHMS = new Check("a", "gnd", MeterFunction.OHMS);

    private static Resistor resistor(String name, String one, String two, double ohms, double ratio) {
        return new Resistor(
                name, net(one), net(two), about(ohms, Unit.OHM, ratio), quantity(1, Unit.WATT), About.NOTHING);
    }

    /** Two equal resistors across the mains of 100 V ±10 %, the lower one measured. */
    private static Circuit divider(double ratio) {
        return circuit(100, 1e-3, resistor("R1", "line", "a", 1000, ratio), resistor("R2", "a", "gnd", 1000, ratio));
    }

    private static Spread spread(Circuit circuit, Arrangement arrangement, Check check, Spread.Settings settings) {
        try {
            return Spread.of(
                            circuit,
                            Bench.of(circuit, arrangement, METER),
                            null,
                            List.of(check),
                            settings,
                            p -> {},
                            () -> false)
                    .orElse(reason -> {
                        throw new AssertionError(reason);
                    });
        } catch (UnfitArrangement e) {
            throw new AssertionError(e);
        }
    }

    private static Spread.Range powered(double ratio, Spread.Settings settings) {
        Circuit circuit = divider(ratio);
        return spread(circuit, Arrangement.powered(circuit), VOLTS, settings)
                .ranges()
                .get(0);
    }

    /** Exact parts: the mains' ends and the meter's accuracy alone, 45 and 55 V ± (1 % of 50 V + 5 counts of 10 or 100 mV). */
    @Test
    void exactPartsLeaveMainsAndMeter() {
        Spread.Range range = powered(0, new Spread.Settings(2, 1));

        assertThat(range.low()).isCloseTo(45 - 1.0, within(0.05));
        assertThat(range.high()).isCloseTo(55 + 1.0, within(0.05));
    }

    /**
     * A uniform tolerance ±t has the deviation t/√3; of two resistors in a divider by two each moves the voltage by a quarter
     * of its own deviation: s = V·t/(4·√3)·√2·2 = 0.5·V/2·t·√(2/3). JCGM 100:2008, 4.3.7 and 5.1.2.
     */
    @Test
    void tolerancesAddAsRootSumOfSquares() {
        double ratio = 0.1;
        double deviation = 50 * ratio / Math.sqrt(3) * 0.5 * Math.sqrt(2);
        double half = Math.hypot(2 * deviation, 1.0);

        Spread.Range range = powered(ratio, new Spread.Settings(400, 7));

        // the deviation of 400 draws is itself known to about 3.5 %
        assertThat(range.high() - 55).isCloseTo(half, within(0.1 * half));
        assertThat(45 - range.low()).isCloseTo(half, within(0.1 * half));
    }

    @Test
    void sameSeedGivesTheSameSpread() {
        assertThat(powered(0.05, new Spread.Settings(5, 3))).isEqualTo(powered(0.05, new Spread.Settings(5, 3)));
    }

    @Test
    void otherSeedGivesAnotherSpread() {
        assertThat(powered(0.05, new Spread.Settings(5, 3))).isNotEqualTo(powered(0.05, new Spread.Settings(5, 4)));
    }

    /** Power off: nothing depends on the mains; 1 kohm alone, ±(0.8 % + 2 of 1 ohm). */
    @Test
    void mainsDoesNotSpreadOhms() {
        Circuit circuit = circuit(100, 1, resistor("R1", "a", "gnd", 1000, 0));

        Spread.Range range = spread(circuit, Arrangement.unpowered(), OHMS, new Spread.Settings(2, 1))
                .ranges()
                .get(0);

        assertThat(range.high() - range.low()).isCloseTo(2 * (0.008 * 1000.2 + 2), within(1e-3));
    }

    @Test
    void overRangeOfEveryMachineIsSaid() {
        Circuit circuit = circuit(100, 1, resistor("R1", "a", "gnd", 1e9, 0.05));

        Spread spread = spread(circuit, Arrangement.unpowered(), OHMS, new Spread.Settings(3, 1));

        assertThat(spread.ranges().get(0).over()).isEqualTo(Spread.Over.ALWAYS);
        assertThat(spread.ranges().get(0).holds(spread.nominal().readings().get(0)))
                .isTrue();
    }

    @Test
    void overRangeOfSomeMachinesIsSaid() {
        Circuit circuit = circuit(100, 1, resistor("R1", "a", "gnd", 39.9e6, 0.2));

        assertThat(spread(circuit, Arrangement.unpowered(), OHMS, new Spread.Settings(20, 1))
                        .ranges()
                        .get(0)
                        .over())
                .isEqualTo(Spread.Over.SOMETIMES);
    }

    @Test
    void nominalMachineLiesWithinItsSpread() {
        Circuit circuit = divider(0.05);
        Spread spread = spread(circuit, Arrangement.powered(circuit), VOLTS, Spread.Settings.USUAL);

        assertThat(spread.ranges().get(0).holds(spread.nominal().readings().get(0)))
                .isTrue();
    }

    @Test
    void progressRisesToOne() throws UnfitArrangement {
        Circuit circuit = divider(0.05);
        List<Double> told = new ArrayList<>();

        Spread.of(
                circuit,
                Bench.of(circuit, Arrangement.powered(circuit), METER),
                null,
                List.of(VOLTS),
                new Spread.Settings(4, 1),
                told::add,
                () -> false);

        assertThat(told).isSorted().last().isEqualTo(1.0);
    }

    @Test
    void stopsWhenAsked() throws UnfitArrangement {
        Circuit circuit = divider(0.05);
        int[] asked = {0};

        Solved<Spread> spread = Spread.of(
                circuit,
                Bench.of(circuit, Arrangement.powered(circuit), METER),
                null,
                List.of(VOLTS),
                Spread.Settings.USUAL,
                p -> {},
                () -> asked[0]++ > 5);

        assertThat(spread).isInstanceOf(Solved.Failed.class);
    }

    @Test
    void oneDrawIsNoSpread() {
        assertThatThrownBy(() -> new Spread.Settings(1, 1)).hasMessageContaining("2 or more");
    }
}
