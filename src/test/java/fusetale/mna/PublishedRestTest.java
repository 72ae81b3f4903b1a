package fusetale.mna;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Operating points that textbooks publish or that close in a formula; citations from memory, numbers derived again. */
class PublishedRestTest {
    private static final double VT = 1.380649e-23 * 298.15 / 1.602176634e-19;
    private static final double NONE = Double.POSITIVE_INFINITY;

    private static SourceShape steady(double value) {
        return new SourceShape.Constant(value);
    }

    private static PortLaw npn(double is, double gain, double earlyVolts) {
        return BipolarLaw.of(BipolarLaw.Polarity.NPN, is, gain, 2, earlyVolts, 0, NONE);
    }

    /** Maximum power transfer: P = V²·RL/(RS + RL)², 0.72 W at RL = RS (Boylestad, Introductory Circuit Analysis, ch. 9). */
    @ParameterizedTest
    @CsvSource({"25, 0.64", "50, 0.72", "100, 0.64"})
    void loadTakesMostWhenItMatches(double load, double watts) {
        Network n = Network.builder("0")
                .voltage("E", "a", "0", steady(12))
                .resistor("RS", "a", "b", 50)
                .resistor("RL", "b", "0", load)
                .build();

        OperatingPoint p = Solve.rest(n);

        assertThat(p.volts(n.node("b"), 0) * p.amps("RL")).isCloseTo(watts, within(1e-12));
    }

    /** R-2R ladder of four bits: V·code/16 (Horowitz and Hill, The Art of Electronics, 2nd ed., §9.16). */
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 6, 11, 15})
    void ladderWeighsItsBits(int code) {
        Network.Builder b = Network.builder("0");
        b.resistor("end", "n0", "0", 20e3);
        for (int bit = 0; bit < 4; bit++) {
            b.voltage("B" + bit, "b" + bit, "0", steady((code >> bit & 1) * 10));
            b.resistor("R2" + bit, "b" + bit, "n" + bit, 20e3);
            if (bit > 0) {
                b.resistor("R" + bit, "n" + (bit - 1), "n" + bit, 10e3);
            }
        }
        Network n = b.build();

        assertThat(Solve.rest(n).volts(n.node("n3"), 0)).isCloseTo(10.0 * code / 16, within(1e-12));
    }

    /**
     * Current mirror, IO = IREF/(1 + 2/β)·(1 + (VO − VBE)/VA) (Sedra and Smith, Microelectronic Circuits, 5th ed., §6.3);
     * exact where Early's effect leaves the base current alone.
     * Nothing but
     * junctions holds the base here: through their 10¹² ohm rounding shows as up to 0.7 μV, 3e-5 of VT; hence the bounds.
     */
    @ParameterizedTest
    @ValueSource(doubles = {1, 5, 20})
    void mirrorCopiesItsCurrent(double outVolts) {
        double early = 80;
        double gain = 60;
        Network n = Network.builder("0")
                .current("REF", "0", "b", steady(1e-3))
                .ports("Q1", "b", "0", "b", "b2", npn(1e-14, gain, early))
                .voltage("tie", "b", "b2", steady(0))
                .ports("Q2", "b", "0", "b", "c", npn(1e-14, gain, early))
                .voltage("VO", "c", "0", steady(outVolts))
                .build();

        OperatingPoint p = Solve.rest(n);

        double vbe = p.volts(n.node("b"), 0);
        double expected = 1e-3 / (1 + 2 / gain) * (1 + (outVolts - vbe) / early);
        assertThat(vbe).isCloseTo(VT * Math.log(1e-3 / (1 + 2 / gain) / 1e-14), within(1e-6));
        assertThat(-p.amps("VO")).isCloseTo(expected, within(4e-5 * expected));
    }

    /**
     * Three diodes as a regulator behind 1 kohm (Sedra and Smith, 5th ed., Ex. 3.7): n = 2, 0.7 V at 7.9 mA, VT 25 mV. From
     * 9 to 11 V the output moves 37.1 mV by the book's linear model; a linear model leaves out curvature,
     * here 1 %.
     */
    @Test
    void diodeStringMovesAsPublished() {
        double is = 7.9e-3 / Math.expm1(0.7 / 0.05);

        assertThat(stringVolts(10, is)).isCloseTo(2.1, within(1e-6));
        assertThat(stringVolts(11, is) - stringVolts(9, is)).isCloseTo(37.1e-3, within(0.4e-3));
    }

    private static double stringVolts(double supply, double is) {
        Network n = Network.builder("0")
                .voltage("E", "a", "0", steady(supply))
                .resistor("R", "a", "k", 1e3)
                .port("D1", "k", "l", new PlainJunction(is, 0.05, 0))
                .port("D2", "l", "m", new PlainJunction(is, 0.05, 0))
                .port("D3", "m", "0", new PlainJunction(is, 0.05, 0))
                .build();
        return Solve.rest(n).volts(n.node("k"), 0);
    }

    /**
     * Widlar's source, R·IO = VT·ln(IREF/IO): 10 μA from 1 mA (Sedra and Smith, 5th ed., Ex. 6.14: 11.5 kohm at VT 25 mV,
     * 11.8 kohm at 25 °C).
     */
    @Test
    void widlarSourceDividesByTheLogarithm() {
        double ohms = VT * Math.log(100) / 10e-6;
        Network n = Network.builder("0")
                .current("REF", "0", "b", steady(1e-3))
                .ports("Q1", "b", "0", "b", "b2", npn(1e-14, 1e7, NONE))
                .voltage("tie", "b", "b2", steady(0))
                .ports("Q2", "b", "e", "b", "c", npn(1e-14, 1e7, NONE))
                .resistor("R", "e", "0", ohms)
                .voltage("VO", "c", "0", steady(5))
                .build();

        assertThat(ohms).isCloseTo(11.83e3, within(5.0));
        assertThat(-Solve.rest(n).amps("VO")).isCloseTo(10e-6, within(1e-5 * 10e-6));
    }

    /**
     * Emitter-coupled pair: iC1/iC2 = exp(vid/VT), the tail shared as a logistic curve (Gray and Meyer, Analysis and Design
     * of Analog Integrated Circuits, §3.4; Sedra and Smith, 5th ed., §7.3).
     */
    @ParameterizedTest
    @ValueSource(doubles = {0, 10e-3, 25.6926e-3, 100e-3})
    void pairSharesItsTail(double volts) {
        Network n = Network.builder("0")
                .voltage("V", "c", "0", steady(5))
                .voltage("ID", "in", "0", steady(volts))
                .resistor("RB1", "in", "b1", 10)
                .resistor("RB2", "0", "b2", 10)
                .ports("Q1", "b1", "e", "b1", "c1", npn(1e-14, 1e7, NONE))
                .ports("Q2", "b2", "e", "b2", "c2", npn(1e-14, 1e7, NONE))
                .resistor("A1", "c", "c1", 100)
                .resistor("A2", "c", "c2", 100)
                .current("TAIL", "e", "0", steady(1e-3))
                .build();

        double expected = 1e-3 / (1 + Math.exp(-volts / VT));
        assertThat(Solve.rest(n).amps("A1")).isCloseTo(expected, within(4e-5 * expected));
    }
}
