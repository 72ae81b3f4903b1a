package fusetale.model;

import static fusetale.model.PartsBox.VT;
import static fusetale.model.PartsBox.diode;
import static fusetale.model.PartsBox.exactly;
import static fusetale.model.PartsBox.fed;
import static fusetale.model.PartsBox.junction;
import static fusetale.model.PartsBox.lamp;
import static fusetale.model.PartsBox.net;
import static fusetale.model.PartsBox.npn;
import static fusetale.model.PartsBox.resistor;
import static fusetale.model.PartsBox.unplugged;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fusetale.circuit.About;
import fusetale.circuit.Darlington;
import fusetale.circuit.DarlingtonModel;
import fusetale.circuit.DiodeModel;
import fusetale.circuit.Part;
import fusetale.circuit.Ratings;
import fusetale.circuit.Transistor;
import fusetale.circuit.TransistorModel;
import fusetale.circuit.Zener;
import fusetale.mna.OperatingPoint;
import fusetale.quantity.Unit;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Small circuits that textbooks work out by hand, built from parts and solved at rest. */
class TextbookCircuitsTest {
    /**
     * Diode behind a resistor, exact by Lambert's W: I = (nVT/R)·W(IS·R/nVT·exp((V + IS·R)/nVT)) − IS. The last row is Sedra
     * and Smith, Microelectronic Circuits, 5th ed., Ex. 3.4 (book: 4.237 mA, 0.762 V).
     */
    @ParameterizedTest
    @CsvSource({
        "5, 1000, 1e-14, 0.025852, 4.307456367e-3, 0.692543633",
        "5, 1000, 1e-14, 0.025, 4.330149050e-3, 0.669850950",
        "1, 1000, 1e-14, 0.025852, 0.370853141e-3, 0.629146859",
        "3, 10000, 2.52e-9, 0.045292704, 0.247928576e-3, 0.520714241",
        "5, 1000, 1.0e-10, 0.0434294, 4.237291168e-3, 0.762708832"
    })
    void diodeBehindResistor(double volts, double ohms, double is, double emission, double amps, double diodeVolts) {
        // 1 mA at 0.7 V and 0.1 V a decade: IS = 1e-10 in the last row
        DiodeModel model = junction(is, emission / VT, 0);
        Modelled m = unplugged(resistor("R1", "in", "out", ohms), diode("D1", "out", "gnd", model));

        OperatingPoint at = fed(m, "in", volts);

        assertThat(at.amps("D1")).isCloseTo(amps, within(2e-6 * amps));
        assertThat(at.volts(m.node(net("out")), 0)).isCloseTo(diodeVolts, within(5e-6));
    }

    /** Common-emitter bias, Sedra and Smith, 5th ed., Ex. 5.10 (book: IE 1.29 mA, IB 0.0128 mA, VB 4.57, VC 8.6). */
    @Test
    void commonEmitterBias() {
        Part q = new Transistor("Q1", net("c"), net("b"), net("e"), npn(0.7, 1.2785e-3, 100), About.NOTHING);
        Modelled m = unplugged(
                q,
                resistor("R1", "vcc", "b", 100e3),
                resistor("R2", "b", "gnd", 50e3),
                resistor("R3", "vcc", "c", 5e3),
                resistor("R4", "e", "gnd", 3e3));

        OperatingPoint at = fed(m, "vcc", 15);

        assertThat(at.amps("Q1.emitter")).isCloseTo(-1.2913e-3, within(1e-7));
        assertThat(at.amps("Q1.base")).isCloseTo(12.785e-6, within(2e-9));
        assertThat(at.volts(m.node(net("b")), 0)).isCloseTo(4.5738, within(2e-4));
        assertThat(at.volts(m.node(net("c")), 0)).isCloseTo(8.6075, within(5e-4));
    }

    /**
     * Zener of 6.8 V at 5 mA with 20 ohm behind 500 ohm, Sedra and Smith, 5th ed., Ex. 3.8 (book: 6.83 V, 38.5 mV a volt, 5 V
     * with 500 ohm); exact for the straight-line zener.
     */
    @ParameterizedTest
    @CsvSource({"10, 1e9, 6.82692", "11, 1e9, 6.86538", "9, 1e9, 6.78846", "10, 2000, 6.76190", "10, 500, 5.0"})
    void zenerRegulator(double supply, double load, double volts) {
        DiodeModel model = new DiodeModel(
                "test",
                1e-12,
                1.5,
                0,
                1e-10,
                1e12,
                1,
                5e-3,
                20,
                npn(0.7, 1e-3, 100).ratings());
        Modelled m = unplugged(
                resistor("R1", "in", "out", 500),
                new Zener("D1", net("gnd"), net("out"), model, exactly(6.8, Unit.VOLT), About.NOTHING),
                resistor("R2", "out", "gnd", load));

        OperatingPoint at = fed(m, "in", supply);

        assertThat(at.volts(m.node(net("out")), 0)).isCloseTo(volts, within(5e-5));
    }

    /** Lamps in series with a resistor on 120 V by the rerating law I ∝ V^0.55: voltage of the resistor. */
    @ParameterizedTest
    @CsvSource({
        "40, 20, 6.5",
        "60, 20, 9.6",
        "100, 20, 15.4",
        "60, 50, 22.3",
        "100, 100, 58.0",
        "40, 200, 49.7",
        "60, 200, 65.1",
        "100, 500, 109.4"
    })
    void lampInSeriesWithALoad(double watts, double ohms, double volts) {
        Modelled m = unplugged(lamp("E1", "in", "out", 120, watts / 120), resistor("R1", "out", "gnd", ohms));

        OperatingPoint at = fed(m, "in", 120);

        // the law is an approximation itself: two digits of its exponent, lamps to ±10 %
        assertThat(at.volts(m.node(net("out")), 0)).isCloseTo(volts, within(0.02 * volts));
    }

    /**
     * Data sheets of the TIP102 class: saturated at 3 A with 6 mA of base current, collector-emitter below 2.0 V. Values of
     * the two transistors as its part file has them.
     */
    @Test
    void darlingtonSaturatesAsItsSheetSays() {
        double most = Double.POSITIVE_INFINITY;
        Ratings unrated = npn(0.7, 1e-3, 100).ratings();
        TransistorModel first = new TransistorModel(
                "first", TransistorModel.Polarity.NPN, 2e-13, 80, 1, 100, 3, 0.5, 0.05, 3e-11, most, unrated);
        TransistorModel second = new TransistorModel(
                "second", TransistorModel.Polarity.NPN, 3e-12, 50, 1, 100, 0.2, 0.05, 0.03, 1.5e-10, most, unrated);
        DarlingtonModel model = new DarlingtonModel("test", first, second, 5000, 150, junction(5e-8, 2, 0.05), unrated);
        Modelled m = unplugged(
                new Darlington("Q1", net("c"), net("b"), net("gnd"), model, About.NOTHING),
                resistor("R1", "vcc", "c", 15.7),
                resistor("R2", "vcc", "b", 48.5 / 6e-3));

        OperatingPoint at = fed(m, "vcc", 50);

        assertThat(at.amps("Q1.base")).isCloseTo(6e-3, within(0.1e-3));
        assertThat(at.amps("Q1.collector")).isCloseTo(3.1, within(0.1));
        assertThat(at.volts(m.node(net("c")), 0)).isBetween(0.6, 2.0);
    }

    /** Parts of a circuit that is fed nothing carry nothing. */
    @Test
    void unpluggedCircuitIsDead() {
        Modelled m = unplugged(resistor("R1", "line", "neutral", 100), resistor("R2", "line", "gnd", 1e6));

        assertThat(PartsBox.rest(m.network()).amps("R1")).isZero();
        assertThat(List.copyOf(m.ties())).isEmpty();
    }
}
