package fusetale.model;

import static fusetale.model.PartsBox.circuit;
import static fusetale.model.PartsBox.fed;
import static fusetale.model.PartsBox.net;
import static fusetale.model.PartsBox.quantity;
import static fusetale.model.PartsBox.resistor;
import static fusetale.model.PartsBox.wire;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fusetale.circuit.About;
import fusetale.circuit.Circuit;
import fusetale.circuit.Mains;
import fusetale.circuit.OpAmp;
import fusetale.circuit.OpAmpModel;
import fusetale.circuit.Part;
import fusetale.fault.Catalogue;
import fusetale.fault.FailureMode;
import fusetale.fault.Fault;
import fusetale.fault.Supposition;
import fusetale.fault.UnfitSupposition;
import fusetale.mna.PeriodicSettings;
import fusetale.mna.PeriodicState;
import fusetale.mna.Solver;
import fusetale.quantity.Unit;
import fusetale.signal.Waveform;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Operational amplifiers beside the closed forms of Sedra and Smith, Microelectronic Circuits, chapter 2 (from memory). */
class OpAmpTest {
    private static final OpAmpModel IDEAL = new OpAmpModel("ideal", 1e6, 1e12, 0.01, 1, null);

    private static OpAmp amplifier(String plus, String minus, OpAmpModel model) {
        return new OpAmp(
                "U1",
                net(plus),
                net(minus),
                net("out"),
                quantity(-12, Unit.VOLT),
                quantity(15, Unit.VOLT),
                OpAmp.State.WORKS,
                model,
                About.NOTHING);
    }

    private static Circuit inverting(OpAmpModel model, double ohms, double feedbackOhms) {
        return circuit(
                1,
                0.001,
                resistor("R1", "in", "minus", ohms),
                resistor("R2", "minus", "out", feedbackOhms),
                amplifier("gnd", "minus", model));
    }

    private static Circuit nonInverting(OpAmpModel model, double ohms, double feedbackOhms) {
        return circuit(
                1,
                0.001,
                resistor("R1", "gnd", "minus", ohms),
                resistor("R2", "minus", "out", feedbackOhms),
                amplifier("in", "minus", model));
    }

    private static double out(Circuit circuit, double volts) {
        Modelled m = NetworkBuilder.build(circuit, Conditions.mains(1));
        return fed(m, "in", volts).volts(m.node(net("out")), 0);
    }

    private static double supposed(FailureMode mode, String place, double volts) throws UnfitSupposition {
        Fault fault = new Fault("U1", place, mode, null);
        return out(Catalogue.apply(nonInverting(IDEAL, 1e3, 9e3), new Supposition(List.of(fault))), volts);
    }

    /** −R2/R1. */
    @ParameterizedTest
    @CsvSource({"1e3, 10e3, 0.5", "10e3, 10e3, -3", "47e3, 4.7e3, 20"})
    void invertingAmplifier(double ohms, double feedbackOhms, double volts) {
        double gain = -feedbackOhms / ohms;

        assertThat(out(inverting(IDEAL, ohms, feedbackOhms), volts))
                .isCloseTo(gain * volts, within(3e-5 * Math.abs(gain * volts)));
    }

    /** 1 + R2/R1. */
    @ParameterizedTest
    @CsvSource({"1e3, 9e3, 0.5", "4e3, 4e3, -3", "1e3, 99e3, 0.1"})
    void nonInvertingAmplifier(double ohms, double feedbackOhms, double volts) {
        double gain = 1 + feedbackOhms / ohms;

        assertThat(out(nonInverting(IDEAL, ohms, feedbackOhms), volts))
                .isCloseTo(gain * volts, within(1.5e-4 * Math.abs(gain * volts)));
    }

    /** Finite gain A: −(R2/R1)/(1 + (1 + R2/R1)/A); the book's table for 1 kΩ and 100 kΩ: 90.83, 99.00, 99.90. */
    @ParameterizedTest
    @CsvSource({"1e3, 90.83", "1e4, 99.00", "1e5, 99.90"})
    void finiteGainGivesLess(double openLoop, double gain) {
        OpAmpModel model = new OpAmpModel("finite", openLoop, 1e13, 0.01, 1, null);

        assertThat(out(inverting(model, 1e3, 100e3), 0.01)).isCloseTo(-0.01 * gain, within(0.006 * 0.01));
    }

    /** Output of 15 V less 1 V of headroom upwards, −12 V plus 1 V downwards; the limits give by 30 mV at most. */
    @ParameterizedTest
    @CsvSource({"3, 14", "-3, -11", "50, 14"})
    void outputStopsShortOfItsRails(double volts, double limit) {
        assertThat(out(nonInverting(IDEAL, 1e3, 9e3), volts)).isCloseTo(limit, within(0.03));
    }

    /** Voltage divider of the output resistance without feedback: a follower's output resistance RO/(1 + A) is next to none. */
    @Test
    void feedbackTakesTheOutputResistanceAway() {
        OpAmpModel model = new OpAmpModel("soft", 1e5, 1e12, 100, 1, null);
        Circuit loaded = circuit(
                1,
                0.001,
                wire("W1", "minus", "out", 1e-3),
                resistor("R1", "out", "gnd", 100),
                amplifier("in", "minus", model));

        assertThat(out(loaded, 2)).isCloseTo(2, within(5e-5));
    }

    /** One pole: a gain of 10 made of a unity gain frequency of 1 MHz has fallen to 10/√2 at 100 kHz; at 1 kHz to 10. */
    @ParameterizedTest
    @CsvSource({"100e3, 7.0711", "1e3, 9.9995", "200e3, 4.4721"})
    void gainFallsWithFrequency(double hertz, double gain) {
        OpAmpModel model = new OpAmpModel("one pole", 1e6, 1e12, 0.01, 1, 1e6);
        Circuit fed = circuit(
                        0.1,
                        0.001,
                        wire("W1", "neutral", "gnd", 1e-3),
                        resistor("R1", "gnd", "minus", 1e3),
                        resistor("R2", "minus", "out", 9e3),
                        amplifier("line", "minus", model))
                .withMains(new Mains(
                        quantity(0.1, Unit.VOLT),
                        quantity(0.1, Unit.VOLT),
                        quantity(0.1, Unit.VOLT),
                        quantity(hertz, Unit.HERTZ),
                        quantity(0.001, Unit.OHM)));

        assertThat(outputOf(fed, 0.1, hertz).rms()).isCloseTo(0.1 * gain, within(1e-3 * 0.1 * gain));
    }

    /**
     * A sine of 20 V peak between limits of 14 V and −11 V: mean of a clipped sine, (peak·cos a − upper·a' …)/π in closed
     * form: (1/2π)·[2·P·(cos l − cos u) + U·(π − 2u) − L·(π − 2l)] with u = asin(U/P), l = asin(L/P).
     */
    @Test
    void sineIsClippedAtBothLimits() {
        Circuit fed = circuit(
                1.4142136,
                0.001,
                wire("W1", "neutral", "gnd", 1e-3),
                resistor("R1", "gnd", "minus", 1e3),
                resistor("R2", "minus", "out", 9e3),
                amplifier("line", "minus", IDEAL));
        Waveform out = outputOf(fed, 1.4142136, 60);
        double u = Math.asin(14.0 / 20);
        double l = Math.asin(11.0 / 20);
        double mean = (2 * 20 * (Math.cos(l) - Math.cos(u)) + 14 * (Math.PI - 2 * u) - 11 * (Math.PI - 2 * l))
                / (2 * Math.PI);

        assertThat(out.mean()).isCloseTo(mean, within(0.02));
        assertThat(out.highest()).isCloseTo(14, within(0.03));
        assertThat(out.lowest()).isCloseTo(-11, within(0.03));
    }

    private static Waveform outputOf(Circuit fed, double volts, double hertz) {
        Modelled m = NetworkBuilder.build(fed, Conditions.mains(volts));
        PeriodicState state = new Solver(m.network())
                .periodicState(PeriodicSettings.mains(hertz), null, () -> false)
                .orElse(reason -> {
                    throw new AssertionError(reason);
                });
        return state.volts(m.node(net("out")), 0);
    }

    /** By definition of the words; headroom of 1 V to rails of −12 V and 15 V. */
    @ParameterizedTest
    @CsvSource({"STUCK_HIGH, 14", "STUCK_LOW, -11", "SHORT, 0", "OPEN, 0"})
    void deadOutputStandsWhereItsFailureSays(FailureMode mode, double volts) throws UnfitSupposition {
        assertThat(supposed(mode, "", 0)).isCloseTo(volts, within(1e-2));
    }

    /** Gain of 1e6 down to 1e-4 of it is 100: 10/(1 + 10/100) of the input. */
    @Test
    void lostGainIsFiniteGain() throws UnfitSupposition {
        assertThat(supposed(FailureMode.WEAK, "", 0.2)).isCloseTo(0.2 * 10 / 1.1, within(1e-3));
    }

    /** 1 Mohm of leak against 100 Mohm leaves a hundredth of the feedback, a gain of 1010: 0.5 V is far too much. */
    @Test
    void openMinusInputSendsTheOutputToARail() throws UnfitSupposition {
        assertThat(supposed(FailureMode.OPEN, "minus", 0.5)).isCloseTo(14, within(0.03));
    }

    /** 1 Mohm of leak against 100 Mohm: a hundredth of 0.5 V arrives, ten times that leaves. */
    @Test
    void openPlusInputHearsNothing() throws UnfitSupposition {
        assertThat(supposed(FailureMode.OPEN, "plus", 0.5)).isCloseTo(0.5 * 10 / 101, within(1e-3));
    }

    /** Without power it is its input resistance and nothing else: what is fed to the output stays there. */
    @Test
    void unpoweredItDrivesNothing() {
        Part divider = resistor("R3", "in", "out", 10e3);
        Modelled m = PartsBox.unplugged(
                divider,
                resistor("R4", "out", "gnd", 10e3),
                amplifier("gnd", "minus", IDEAL),
                resistor("R5", "minus", "gnd", 1e3));

        assertThat(fed(m, "in", 5).volts(m.node(net("out")), 0)).isCloseTo(2.5, within(1e-5));
    }
}
