package fusetale.mna;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Operating points against closed forms and textbook examples; the source stands beside each. */
class RestReferenceTest {
    private static SourceShape volts(double v) {
        return new SourceShape.Constant(v);
    }

    // Exact by hand: unbalanced bridge, 10 V; 100/200 ohm left, 300/400 ohm right, 500 ohm across.
    @Test
    void unbalancedBridgeDividesAsKirchhoffSays() {
        Network n = Network.builder("gnd")
                .voltage("E", "top", "gnd", volts(10))
                .resistor("R1", "top", "left", 100)
                .resistor("R2", "left", "gnd", 200)
                .resistor("R3", "top", "right", 300)
                .resistor("R4", "right", "gnd", 400)
                .resistor("R5", "left", "right", 500)
                .build();
        OperatingPoint p = Solve.rest(n);
        assertThat(p.volts(n.node("left"), 0)).isCloseTo(6.5806452, within(1e-7));
        assertThat(p.volts(n.node("right"), 0)).isCloseTo(5.9354839, within(1e-7));
    }

    // Nilsson and Riedel, Electric Circuits, Ex. 4.2 (citation from memory, numbers derived again): v1 = 100/11, v2 =
    // 120/11.
    @Test
    void nodeVoltageExampleWithVoltageAndCurrentSource() {
        Network n = Network.builder("0")
                .voltage("E", "in", "0", volts(10))
                .resistor("R1", "in", "n1", 1)
                .resistor("R2", "n1", "0", 5)
                .resistor("R3", "n1", "n2", 2)
                .resistor("R4", "n2", "0", 10)
                .current("I", "0", "n2", volts(2))
                .build();
        OperatingPoint p = Solve.rest(n);
        assertThat(p.volts(n.node("n1"), 0)).isCloseTo(100.0 / 11, within(1e-12));
        assertThat(p.volts(n.node("n2"), 0)).isCloseTo(120.0 / 11, within(1e-12));
    }

    // Hayt and Kemmerly, Engineering Circuit Analysis, Ex. 4.1 (citation from memory, numbers derived again): 5 V, 2 V.
    @Test
    void nodeVoltageExampleWithTwoCurrentSources() {
        Network n = Network.builder("0")
                .current("I1", "0", "n1", volts(3.1))
                .resistor("R1", "n1", "0", 2)
                .resistor("R2", "n1", "n2", 5)
                .resistor("R3", "n2", "0", 1)
                .current("I2", "0", "n2", volts(1.4))
                .build();
        OperatingPoint p = Solve.rest(n);
        assertThat(p.volts(n.node("n1"), 0)).isCloseTo(5, within(1e-12));
        assertThat(p.volts(n.node("n2"), 0)).isCloseTo(2, within(1e-12));
    }

    // Exact by hand, stamps of Ho, Ruehli and Brennan 1975: v = (10, 12, 36) V; currents into the plus terminals +1 A,
    // −4 A.
    @Test
    void controlledVoltageSourceStampsAsPublished() {
        Network.Builder b = Network.builder("0");
        b.voltage("E", "n1", "0", volts(10));
        b.resistor("R1", "n1", "n2", 2);
        b.resistor("R2", "n2", "0", 4);
        b.resistor("R3", "n2", "n3", 6);
        b.add(new Element.VoltageByVoltage("A", b.node("n3"), 0, b.node("n2"), 0, 3));
        Network n = b.build();
        OperatingPoint p = Solve.rest(n);
        assertThat(p.volts(n.node("n2"), 0)).isCloseTo(12, within(1e-12));
        assertThat(p.volts(n.node("n3"), 0)).isCloseTo(36, within(1e-12));
        assertThat(p.amps("E")).isCloseTo(1, within(1e-12));
        assertThat(p.amps("A")).isCloseTo(-4, within(1e-12));
    }

    // Exact by hand: 2 A through R 3 ohm senses; transresistance 4 gives 8 V, gain 5 gives 10 A into 1 ohm, 0.5 S of 8
    // V 4 A.
    @Test
    void otherThreeControlledSourcesFollowTheirControl() {
        Network.Builder b = Network.builder("0");
        b.voltage("S", "a", "0", volts(6));
        b.resistor("R", "a", "0", 3);
        b.add(new Element.VoltageByCurrent("H", b.node("h"), 0, "S", -4));
        b.resistor("RH", "h", "0", 100);
        b.add(new Element.CurrentByCurrent("F", 0, b.node("f"), "S", -5));
        b.resistor("RF", "f", "0", 1);
        b.add(new Element.CurrentByVoltage("G", 0, b.node("g"), b.node("h"), 0, 0.5));
        b.resistor("RG", "g", "0", 2);
        Network n = b.build();
        OperatingPoint p = Solve.rest(n);
        assertThat(p.volts(n.node("h"), 0)).isCloseTo(8, within(1e-12));
        assertThat(p.volts(n.node("f"), 0)).isCloseTo(10, within(1e-12));
        assertThat(p.volts(n.node("g"), 0)).isCloseTo(8, within(1e-12));
    }

    // Closed form with Lambert's W: I = (nVt/R)·W0[(IS·R/nVt)·exp((V + IS·R)/nVt)] − IS, computed to all digits shown.
    @ParameterizedTest
    @CsvSource({
        "5, 1e3, 1e-14, 25.852e-3, 4.307456367e-3",
        "5, 1e3, 1e-14, 25e-3, 4.330149050e-3",
        "1, 1e3, 1e-14, 25.852e-3, 0.370853141e-3",
        "3, 1e4, 2.52e-9, 45.292704e-3, 0.247928576e-3",
        "0.7, 1e-2, 1e-9, 51.704e-3, 0.758013473e-3",
    })
    void diodeAndResistorMeetWhereLambertsWSays(double v, double r, double is, double nvt, double amps) {
        Network n = Network.builder("0")
                .voltage("E", "a", "0", volts(v))
                .resistor("R", "a", "k", r)
                .port("D", "k", "0", new PlainJunction(is, nvt, 0))
                .build();
        OperatingPoint p = Solve.rest(n);
        assertThat(p.amps("R")).isCloseTo(amps, within(2e-9 * amps + 1e-11));
    }

    /**
     * One current all round, and the junctions' law solved for the voltage: n·VT·ln(1 + I/IS). What lies between the two hangs on
     * 10 pS each, where 0.2 A are 10 GV, and 2⁻⁵³ of that is a microvolt.
     */
    @Test
    void oneCurrentFlowsInARingAndItsVoltagesAddUp() {
        Network n = Network.builder("0")
                .voltage("E", "a", "0", volts(12))
                .resistor("R", "a", "k", 47)
                .port("D1", "k", "m", new PlainJunction(1e-9, 0.05, 0))
                .port("D2", "m", "0", new PlainJunction(1e-14, 0.026, 0))
                .build();
        OperatingPoint p = Solve.rest(n);

        double amps = p.amps("R");
        assertThat(p.amps("D1")).isCloseTo(amps, within(1e-10));
        assertThat(p.amps("D2")).isCloseTo(amps, within(1e-10));
        assertThat(47 * amps + 0.05 * Math.log1p(amps / 1e-9) + 0.026 * Math.log1p(amps / 1e-14))
                .isCloseTo(12, within(5e-6));
    }

    /**
     * Kirchhoff's first law: what a winding that floats between two junctions carries came in through the one and leaves by the other.
     * Each junction's current alone would lift it by a gigavolt an ampere, and 2⁻⁵³ of that over 0.2 ohm is 50 nA.
     */
    @Test
    void windingThatFloatsBetweenJunctionsCarriesWhatComesIn() {
        Network n = Network.builder("0")
                .voltage("E", "a", "0", volts(6))
                .resistor("R", "a", "k", 47)
                .port("D1", "k", "one", new PlainJunction(1e-9, 0.05, 0))
                .resistor("winding", "one", "two", 0.2)
                .port("D2", "two", "0", new PlainJunction(1e-9, 0.05, 0))
                .resistor("leak", "one", "0", 1e9)
                .build();

        OperatingPoint p = Solve.rest(n);

        double leaking = p.volts(n.node("one"), 0) / 1e9;
        assertThat(p.amps("R")).isGreaterThan(0.08);
        assertThat(p.amps("winding")).isCloseTo(p.amps("R") - leaking, within(1e-13));
        assertThat(p.amps("D2")).isCloseTo(p.amps("winding"), within(1e-13));
        assertThat(p.work().residual()).isLessThan(1e-12);
    }
}
