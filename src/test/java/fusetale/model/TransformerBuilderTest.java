package fusetale.model;

import static fusetale.model.PartsBox.circuit;
import static fusetale.model.PartsBox.exactly;
import static fusetale.model.PartsBox.net;
import static fusetale.model.PartsBox.quantity;
import static fusetale.model.PartsBox.resistor;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fusetale.circuit.About;
import fusetale.circuit.Circuit;
import fusetale.circuit.Net;
import fusetale.circuit.Transformer;
import fusetale.mna.PeriodicSettings;
import fusetale.mna.PeriodicState;
import fusetale.mna.Solver;
import fusetale.quantity.Unit;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A transformer of 120 : 28 V, 200 VA: n 4.285714, rated currents 1.6667 and 7.1429 A, base impedance of the secondary 3.92
 * ohm. Figures by the textbook equivalent circuit.
 */
class TransformerBuilderTest {
    private static final double TURNS = 120.0 / 28;

    /** Winding resistance on the secondary only, as the table the figures are from has it. */
    private static Transformer transformer(
            double primaryOhms, double regulation, double secondaryOhms, double leakage, String... nets) {
        Transformer.Winding primary = new Transformer.Winding(
                "primary",
                List.of(net("line"), net("neutral")),
                quantity(120, Unit.VOLT),
                exactly(primaryOhms, Unit.OHM),
                quantity(200.0 / 120, Unit.AMPERE));
        Transformer.Winding secondary = new Transformer.Winding(
                "sec",
                Stream.of(nets).map(Net::new).toList(),
                quantity(28, Unit.VOLT),
                exactly(secondaryOhms, Unit.OHM),
                quantity(200.0 / 28, Unit.AMPERE));
        return new Transformer(
                "T1",
                primary,
                List.of(secondary),
                new Transformer.Magnetics(
                        quantity(regulation, Unit.RATIO),
                        quantity(0.1, Unit.AMPERE),
                        quantity(6, Unit.WATT),
                        quantity(leakage, Unit.RATIO)),
                About.NOTHING);
    }

    private static PeriodicState solved(Modelled m) {
        return new Solver(m.network())
                .periodicState(PeriodicSettings.mains(60).withAccuracy(1e-5), null, () -> false)
                .orElse(reason -> {
                    throw new AssertionError(reason);
                });
    }

    private static Modelled loaded(Transformer t, double ohms) {
        return NetworkBuilder.build(circuit(120, 1e-3, t, resistor("R1", "s", "gnd", ohms)), Conditions.mains(120));
    }

    /** 5, 10 and 15 % of regulation: shorted secondary about 150, 78.6, 54.8 A, its e.m.f. raised by the regulation. */
    @ParameterizedTest
    @CsvSource({"0.05, 0.196, 150", "0.10, 0.392, 78.6", "0.15, 0.588, 54.8"})
    void shortedSecondaryIsLimitedByItsResistance(double regulation, double ohms, double amps) {
        Modelled m = loaded(transformer(1e-3, regulation, ohms - 1e-3, 1e-3, "s", "gnd"), 1e-3);

        assertThat(solved(m).amps("T1.sec").rms()).isCloseTo(amps, within(0.005 * amps));
    }

    /**
     * A core keeps its inductance whatever it is fed with: at four times the frequency the magnetising current of 0.1 A is a
     * quarter, what the iron takes stays. With I² the sum of both squares, I(60)² − I(240)² = 0.1²·(1 − 1/16).
     */
    @Test
    void coreKeepsItsInductanceAtAnotherFrequency() {
        Transformer idle = transformer(1e-3, 0.1, 0.1, 1e-3, "s", "gnd");
        Circuit usual = circuit(120, 1e-3, idle, resistor("R1", "s", "gnd", 1e9));
        Circuit higher = usual.withMains(usual.mains().at(quantity(240, Unit.HERTZ)));

        assertThat(Math.pow(primaryAmps(usual), 2) - Math.pow(primaryAmps(higher), 2))
                .isCloseTo(0.01 * 15 / 16, within(2e-5));
    }

    private static double primaryAmps(Circuit circuit) {
        Modelled m = NetworkBuilder.build(circuit, Conditions.mains(120));
        double hertz = circuit.mains().hertz().si();
        PeriodicState state = new Solver(m.network())
                .periodicState(PeriodicSettings.mains(hertz).withAccuracy(1e-5), null, () -> false)
                .orElse(reason -> {
                    throw new AssertionError(reason);
                });
        return state.amps("T1.primary").alternatingRms();
    }

    /** Rated load brings the voltage from 28 V raised by the regulation back to 28 V: definition of regulation. */
    @Test
    void ratedLoadBringsRatedVoltage() {
        Modelled m = loaded(transformer(1e-3, 0.10, 0.392, 1e-3, "s", "gnd"), 3.92);

        assertThat(solved(m).volts(m.node(net("s")), 0).rms()).isCloseTo(28, within(0.01));
    }

    @Test
    void unloadedSecondaryIsRaisedByTheRegulation() {
        Modelled m = loaded(transformer(1e-3, 0.10, 0.392, 1e-3, "s", "gnd"), 1e6);

        assertThat(solved(m).volts(m.node(net("s")), 0).rms()).isCloseTo(30.8, within(0.005));
    }

    /** Iron loss and magnetising current are in quadrature: √(0.1² + (6/120)²) A, and 0.2 % less for what 3.6 ohm drop. */
    @Test
    void unloadedPrimaryDrawsMagnetisingCurrentAndIronLoss() {
        Modelled m = loaded(transformer(3.6, 0.10, 0.392, 1e-3, "s", "gnd"), 1e6);

        assertThat(solved(m).amps("T1.primary").rms()).isCloseTo(Math.hypot(0.1, 0.05), within(3e-4));
    }

    /** Open-circuit test (M.I.T. staff, ch. XII): the wattmeter shows the iron loss alone, 6 W; copper adds 45 mW. */
    @Test
    void openCircuitTestMeasuresTheIronLoss() {
        Modelled m = loaded(transformer(3.6, 0.10, 0.392, 1e-3, "s", "gnd"), 1e6);
        PeriodicState state = solved(m);

        assertThat(watts(m, state)).isCloseTo(6.045, within(0.03));
    }

    /** The same test: what is left of the volt-amperes, √(S² − P²)/V, is the magnetising current, 0.1 A. */
    @Test
    void openCircuitTestMeasuresTheMagnetisingCurrent() {
        Modelled m = loaded(transformer(1e-3, 0.10, 0.392, 1e-3, "s", "gnd"), 1e6);
        PeriodicState state = solved(m);
        double apparent = 120 * state.amps("T1.primary").rms();

        assertThat(Math.sqrt(apparent * apparent - Math.pow(watts(m, state), 2)) / 120)
                .isCloseTo(0.1, within(5e-4));
    }

    /** Short-circuit test: the wattmeter shows the copper, I²·R of both windings; core and eddies add less than 1 %. */
    @Test
    void shortCircuitTestMeasuresTheCopper() {
        Modelled m = loaded(transformer(3.6, 0.10, 0.392, 0.02, "s", "gnd"), 1e-3);
        PeriodicState state = solved(m);
        double copper = 3.6 * Math.pow(state.amps("T1.primary").rms(), 2)
                + 0.393 * Math.pow(state.amps("T1.sec").rms(), 2);

        assertThat(watts(m, state)).isBetween(copper, 1.01 * copper);
    }

    private static double watts(Modelled m, PeriodicState state) {
        return state.volts(m.node(net("line")), m.node(net("neutral")))
                .times(state.amps("T1.primary"))
                .mean();
    }

    /** An ideal transformer: load current over the ratio, here with the no-load ratio 120 : 30.8. */
    @Test
    void loadCurrentComesBackThroughTheTurnsRatio() {
        Modelled m = loaded(transformer(1e-3, 0.10, 0.392, 1e-3, "s", "gnd"), 3.92);
        PeriodicState state = solved(m);
        double load = state.amps("R1").rms();

        // active part: load and iron loss; reactive part: magnetising
        double expected = Math.hypot(load * 1.1 / TURNS + 0.05, 0.1);
        assertThat(state.amps("T1.primary").rms()).isCloseTo(expected, within(0.005 * expected));
    }

    /** Short-circuit reactance of both windings at 10 % leakage each, on the secondary side: 2·0.1·3.92 ohm, ×1.1² for the primary's. */
    @Test
    void leakageLimitsAShortToo() {
        Modelled m = loaded(transformer(1e-3, 0.10, 0.392 - 1e-3, 0.1, "s", "gnd"), 1e-3);
        double reactance = 0.392 + 0.392 * 1.1 * 1.1;

        assertThat(solved(m).amps("T1.sec").rms()).isCloseTo(30.8 / Math.hypot(0.392, reactance), within(0.3));
    }

    @Test
    void tapDividesTheWindingEvenly() {
        Transformer t = transformer(1e-3, 0.10, 0.392, 1e-3, "s", "tap", "gnd");
        Modelled m = loaded(t, 1e6);
        PeriodicState state = solved(m);

        assertThat(state.volts(m.node(net("tap")), 0).rms())
                .isCloseTo(state.volts(m.node(net("s")), 0).rms() / 2, within(1e-3));
    }

    /** No mean current can pass a transformer: a winding that feeds no d.c. carries none. */
    @Test
    void windingsCarryNoSteadyCurrent() {
        PeriodicState state = solved(loaded(transformer(3.6, 0.10, 0.392, 0.02, "s", "gnd"), 3.92));

        assertThat(Math.abs(state.amps("T1.primary").mean()))
                .isLessThan(1e-4 * state.amps("T1.primary").rms());
    }

    @Test
    void secondaryThatReachesNothingIsTiedByInsulation() {
        Modelled m = NetworkBuilder.build(
                circuit(120, 1e-3, transformer(1e-3, 0.1, 0.4, 0.02, "s1", "s2")), Conditions.mains(120));

        assertThat(m.ties()).singleElement().satisfies(tie -> {
            assertThat(tie.nets()).containsExactlyInAnyOrder(net("s1"), net("s2"));
            assertThat(tie.ohms()).isEqualTo(1e9);
        });
    }
}
